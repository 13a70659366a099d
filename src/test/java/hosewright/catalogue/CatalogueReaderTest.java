package hosewright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.thread.End;
import hosewright.thread.Gender;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CatalogueReaderTest {
  private final CatalogueFiles files = new CatalogueFiles();

  @Test
  void every_column_of_a_hose_arrives() {
    assertThat(files.read().item("H25-50"))
        .contains(
            new Item(
                "H25-50",
                "Attack hose 2.5 in, 50 ft",
                Form.of(
                    ItemKind.HOSE,
                    List.of(
                        new End(2.5, "NH", Gender.MALE, false),
                        new End(2.5, "NH", Gender.FEMALE, true))),
                Optional.of(
                    new HoseFacts(
                        HoseType.UNKNOWN,
                        "mainline",
                        new HoseFacts.Diameters(
                            2.5, OptionalDouble.of(2.5), OptionalDouble.of(2.72)),
                        OptionalDouble.of(50),
                        OptionalDouble.of(2),
                        OptionalDouble.of(1400))),
                new Build(
                    "polyester",
                    31.5,
                    Set.of("water"),
                    new Rating(
                        OptionalDouble.of(300),
                        OptionalDouble.of(300),
                        List.of(),
                        OptionalDouble.empty()),
                    false,
                    "NFPA 1961",
                    true),
                WaterFacts.NONE,
                new Selling(UnitOfSale.EACH, false, new Stocking("PH", 5, 10, 40))));
  }

  @Test
  void every_column_of_a_fitting_arrives() {
    Catalogue catalogue = files.read();

    Item valve = catalogue.item("V40").orElseThrow();
    assertThat(valve.rating().vacuumInHg()).hasValue(26);
    assertThat(valve.applianceLossPsi()).hasValue(4);
    assertThat(valve.opening()).hasValue(3.5);
    assertThat(valve.hose()).isEmpty();
    Item reducer = catalogue.item("R25-15").orElseThrow();
    assertThat(reducer.lossCoefficient()).hasValue(0.35);
    assertThat(reducer.drinkingWater()).isTrue();
    assertThat(reducer.discontinued()).isTrue();
    assertThat(catalogue.item("N95").orElseThrow().kFactor()).hasValue(9.5);
  }

  @Test
  void derating_steps_and_fluids_are_told_apart() {
    Item bulk = files.read().item("B15").orElseThrow();

    assertThat(bulk.rating().derating())
        .containsExactly(
            new Rating.Derating(73, 250),
            new Rating.Derating(120, 200),
            new Rating.Derating(180, 120.5));
    assertThat(bulk.fluids()).containsExactlyInAnyOrder("water", "foam");
  }

  @Test
  void a_file_from_before_the_later_columns_loads_and_what_they_would_say_is_unknown() {
    Catalogue catalogue = files.read();

    Item nozzle = catalogue.item("N95").orElseThrow();
    assertThat(nozzle.sort()).isEqualTo(Sort.UNKNOWN);
    assertThat(nozzle.form().shutoff()).isEqualTo(Stated.UNKNOWN);
    assertThat(nozzle.water().ratedFlowGpm()).isEmpty();
    assertThat(catalogue.item("H25-50").orElseThrow().hoseType()).isEqualTo(HoseType.UNKNOWN);
    assertThat(catalogue.item("H25-50").orElseThrow().sort()).isEqualTo(Sort.NONE);
    assertThat(catalogue.item("R25-15").orElseThrow().waterway())
        .contains(new Waterway(1.5, false));
  }

  @Test
  void the_later_columns_say_what_an_item_is_and_gives() {
    Item nozzle =
        later(
            "N95",
            Map.of(
                "sort", "fog-nozzle",
                "shutoff", "yes",
                "rated_flow_gpm", "95",
                "rated_pressure_psi", "100",
                "waterway_in", "1.4"));

    assertThat(nozzle.sort()).isEqualTo(Sort.FOG_NOZZLE);
    assertThat(nozzle.form().shutoff()).isEqualTo(Stated.YES);
    assertThat(nozzle.water().ratedFlowGpm()).hasValue(95);
    assertThat(nozzle.water().ratedPressurePsi()).hasValue(100);
    assertThat(nozzle.waterway()).contains(new Waterway(1.4, true));
    assertThat(later("H25-50", Map.of("hose_type", "occupant-use")).hoseType())
        .isEqualTo(HoseType.OCCUPANT_USE);
  }

  private static Item later(String item, Map<String, String> facts) {
    return new CatalogueFiles().withLater(item, facts).read().item(item).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # item  | column             | cell       | allowed
          N95     | sort               | gate-valve | one of fog-nozzle, rack-nozzle
          H25-50  | sort               | fog-nozzle | hose has no sorts
          N95     | gated              | yes        | said of a wye or siamese only
          V40     | shutoff            | yes        | said of a nozzle only
          N95     | shutoff            | perhaps    | yes or no
          N95     | channels           | 2          | said of a ramp only
          H25-50  | hose_type          | atack      | attack, supply, forestry
          N95     | hose_type          | attack     | the hose size in inches
          N95     | waterway_in        | 0          | in
          N95     | rated_pressure_psi | 100        | the flow in gpm that the rated pressure gives
          """)
  void a_later_column_takes_only_what_can_be_so(
      String item, String column, String cell, String allowed) {
    files.withLater(item, Map.of(column, cell));

    assertThatThrownBy(files::read)
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining(allowed);
  }

  @Test
  void what_is_left_unsaid_is_counted_with_what_that_costs() {
    List<MissingFacts> missing =
        MissingFacts.of(
            files.withLater("N95", Map.of("sort", "fog-nozzle", "rated_flow_gpm", "95")).read());

    // The valve and the reducer say no sort; nothing says its bore; the nozzle has its flow.
    assertThat(missing)
        .extracting(MissingFacts::column, MissingFacts::missing, MissingFacts::items)
        .containsExactly(
            tuple("sort", 2, 3),
            tuple("shutoff", 1, 1),
            tuple("hose_type", 2, 2),
            tuple("waterway_in", 2, 2),
            tuple("rated_pressure_psi", 1, 1));
    assertThat(missing.get(3).sentence()).contains("2 of 2").contains("stands in for the bore");
  }

  @Test
  void an_empty_lead_time_is_the_suppliers_and_work_of_our_own_has_no_supplier() {
    Catalogue catalogue = files.read();

    assertThat(catalogue.item("N95").orElseThrow().stocking())
        .isEqualTo(new Stocking("GW", 1, 21, 6));
    assertThat(catalogue.item("B15").orElseThrow().stocking().leadDays()).isEqualTo(30);
    assertThat(catalogue.item("TEST").orElseThrow().stocking())
        .isEqualTo(new Stocking("", 1, 0, 0));
  }

  @Test
  void prices_hold_from_the_first_to_the_last_day_and_from_their_quantity_up() {
    Catalogue catalogue = files.read();

    assertThat(catalogue.listPrice("H25-50", 10, day("2026-06-30"))).contains(usd("210.00"));
    assertThat(catalogue.listPrice("H25-50", 9, day("2026-07-01"))).contains(usd("219.50"));
    assertThat(catalogue.listPrice("H25-50", 10, day("2026-07-01"))).contains(usd("205.25"));
    assertThat(catalogue.listPrice("R25-15", 1, day("2027-01-01"))).isEmpty();
    assertThat(catalogue.cost("H25-50", day("2026-04-01"))).contains(usd("140.00"));
    assertThat(catalogue.cost("V40", day("2026-04-01"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          items.csv  | ,hose,           | ,hoze,            | items.csv line 2 column kind         | hoze
          items.csv  | N95,nozzle       | N95,nozzel        | items.csv line 7 column kind         | nozzel
          items.csv  | x 2.5 NH female  | x nonsense        | items.csv line 2 column ends         | nonsense swivel
          items.csv  | ,each,31.5       | ,piece,31.5       | items.csv line 2 column unit         | piece
          items.csv  | ,each,31.5       | ,each,-31.5       | items.csv line 2 column weight_lb    | -31.5
          items.csv  | ,each,31.5       | ,each,            | items.csv line 2 column weight_lb    | ``
          items.csv  | water,300,300    | water,300 psi,300 | items.csv line 2 column working_psi  | 300 psi
          items.csv  | water,300,300    | water,0,300       | items.csv line 2 column working_psi  | 0
          items.csv  | water,300,300    | water,1e400,300   | items.csv line 2 column working_psi  | 1e400
          items.csv  | water,300,300    | water,NaN,300     | items.csv line 2 column working_psi  | NaN
          items.csv  | 73:250;120:200   | 73:250;120        | items.csv line 3 column derating     | 120
          items.csv  | 73:250;120:200   | 73:250;120:260    | items.csv line 3 column derating     | 73:250;120:260;180:120.5
          items.csv  | 73:250;120:200   | 130:250;120:200   | items.csv line 3 column derating     | 130:250;120:200;180:120.5
          items.csv  | ,26,             | ,31,              | items.csv line 6 column vacuum_inhg  | 31
          items.csv  | ,2.5,50,         | ,,50,             | items.csv line 2 column hose_size_in | ``
          items.csv  | ,2.5,50,         | ,2.5,,            | items.csv line 2 column length_ft    | ``
          items.csv  | mainline         | ``                | items.csv line 2 column series       | ``
          items.csv  | ,foot,           | ,each,            | items.csv line 3 column unit         | each
          items.csv  | yes,yes,,yes     | yes,maybe,,yes    | items.csv line 5 column discontinued | maybe
          items.csv  | NFPA 1961,yes,PH | NFPA 1961,yes,PX  | items.csv line 2 column supplier     | PX
          items.csv  | PH,5,            | PH,2.5,           | items.csv line 2 column pack         | 2.5
          items.csv  | C15-M,coupling   | h25-50,coupling   | items.csv line 4 column number       | h25-50
          prices.csv | B15,2026         | B51,2026          | prices.csv line 5 column item        | B51
          prices.csv | 219.50,USD       | -219.50,USD       | prices.csv line 3 column unit_price  | -219.50
          prices.csv | 219.50,USD       | 219.505,USD       | prices.csv line 3 column unit_price  | 219.505
          prices.csv | 219.50,USD       | 219.50,USX        | prices.csv line 3 column currency    | USX
          prices.csv | 219.50,USD       | 219.50,CAD        | prices.csv line 3 column currency    | CAD
          prices.csv | ,,10,205.25      | ,,0,205.25        | prices.csv line 4 column min_quantity | 0
          prices.csv | 2026-06-30       | 2026-02-29        | prices.csv line 2 column until       | 2026-02-29
          prices.csv | 2026-06-30       | 2025-06-30        | prices.csv line 2 column until       | 2025-06-30
          prices.csv | 2026-06-30       | 2026-07-01        | prices.csv line 3 column from        | 2026-07-01
          prices.csv | ,,10,205.25      | ,,1,205.25        | prices.csv line 4 column from        | 2026-07-01
          costs.csv  | 1.95             | 0                 | costs.csv line 4 column unit_cost    | 0
          costs.csv  | B15,GW           | B15,PW            | costs.csv line 4 column supplier     | PW
          suppliers.csv | PH,Port       | GW,Port           | suppliers.csv line 3 column code     | GW
          suppliers.csv | Mill,10       | Mill,             | suppliers.csv line 2 column lead_days | ``
          """)
  void a_bad_cell_is_named_with_its_file_line_column_and_value(
      String file, String piece, String replacement, String field, String value) {
    files.with(file, piece, replacement);

    assertThat(problems())
        .anySatisfy(
            p -> {
              assertThat(p.field()).isEqualTo(field);
              assertThat(p.value()).isEqualTo(value);
              assertThat(p.allowed()).isNotEmpty();
            });
  }

  @Test
  void every_bad_cell_of_every_file_is_told_at_once_with_what_was_meant() {
    files
        .with("items.csv", "B15,bulk-hose", "B15,bulk_hose")
        .with("items.csv", "water,300,300", "water,\"1,300\",300")
        .with("prices.csv", "H25-50,2026-01-01", "H2550,2026-01-01")
        .with("costs.csv", "139.99,USD", "139.99,usd");

    assertThat(problems())
        .extracting(Problem::field, Problem::value, Problem::nearest)
        .containsExactly(
            tuple("items.csv line 2 column working_psi", "1,300", "1300"),
            tuple("items.csv line 3 column kind", "bulk_hose", "bulk-hose"),
            tuple("prices.csv line 2 column item", "H2550", "H25-50"),
            tuple("costs.csv line 3 column currency", "usd", "USD"));
  }

  @Test
  void a_bad_item_does_not_make_its_prices_look_orphaned() {
    files.with("items.csv", "water,300,300", "water,many,300");

    assertThat(problems())
        .extracting(Problem::field)
        .containsExactly("items.csv line 2 column working_psi");
  }

  @Test
  void text_too_long_for_the_store_is_refused() {
    files.with("items.csv", "Fog nozzle", "x".repeat(201));

    assertThat(problems())
        .extracting(Problem::sentence)
        .singleElement()
        .asString()
        .endsWith("at most 200 characters, not 201.");
  }

  @Test
  void a_file_that_is_missing_is_named() {
    files.without("costs.csv");

    assertThat(problems()).extracting(Problem::field).containsExactly("costs.csv");
  }

  @Test
  void periods_of_different_quantities_may_overlap() {
    files.plus("prices.csv", "B15,2026-03-01,2026-04-30,100,2.75,USD");

    assertThat(files.read().listPrice("B15", 100, day("2026-04-30"))).contains(usd("2.75"));
  }

  @Test
  void a_supplier_may_charge_in_another_currency_than_the_dealer() {
    files.with("costs.csv", "1.95,USD", "1.95,CAD");

    assertThat(files.read().cost("B15", day("2026-04-01"))).contains(Money.parse("CAD 1.95"));
  }

  private List<Problem> problems() {
    BadInputException refused = catchThrowableOfType(BadInputException.class, files::read);
    assertThat(refused).as("the catalogue is refused").isNotNull();
    return refused.problems();
  }

  private static LocalDate day(String date) {
    return LocalDate.parse(date);
  }

  private static Money usd(String amount) {
    return Money.parse("USD " + amount);
  }
}
