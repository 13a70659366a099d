package hosewright.paper.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.catalogue.Build;
import hosewright.catalogue.Form;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Rating;
import hosewright.catalogue.Selling;
import hosewright.catalogue.Stocking;
import hosewright.catalogue.UnitOfSale;
import hosewright.catalogue.WaterFacts;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Joint;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Owner;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import hosewright.line.model.Unpriced;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.Totals;
import hosewright.quote.terms.Customer;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Gender;
import hosewright.thread.Verdict;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** All figures, items and the buyer are invented. */
final class JsonTest {
  private static final End OUTLET = new End(2.5, "NH", Gender.MALE, false);
  private static final End HOSE_IN = new End(2.5, "NH", Gender.FEMALE, true);
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @Test
  void a_quote_comes_back_as_it_was_written() {
    Quote quote = quote("USD");
    assertThat(Json.readQuote(Json.keep(quote))).isEqualTo(quote);
  }

  @Test
  void bare_amounts_take_the_currency_and_the_decimals_of_the_total() {
    Quote yen = quote("JPY");
    assertThat(Json.readQuote(Json.keep(yen))).isEqualTo(yen);
  }

  @Test
  void the_facts_of_an_item_stand_side_by_side_whatever_records_hold_them() {
    Item item =
        new Item(
            "H25-50",
            "Attack hose",
            Form.of(ItemKind.HOSE, List.of(OUTLET)),
            Optional.of(
                new HoseFacts(
                    HoseType.ATTACK,
                    "mainline",
                    new HoseFacts.Diameters(2.5, OptionalDouble.of(2.56), OptionalDouble.empty()),
                    OptionalDouble.of(50),
                    OptionalDouble.of(2),
                    OptionalDouble.empty())),
            new Build("polyester", 31.5, Set.of("water"), Rating.NONE, false, "NFPA 1961", true),
            WaterFacts.NONE,
            new Selling(UnitOfSale.EACH, false, new Stocking("PH", 1, 10, 4)));

    JsonNode json = JsonMapper.shared().readTree(Json.write(item));

    // The names that 'catalogue load --json' has given its added items from the beginning.
    assertThat(json.propertyNames())
        .contains(
            "number",
            "description",
            "kind",
            "ends",
            "unit",
            "weightLb",
            "material",
            "fluids",
            "rating",
            "hose",
            "lossCoefficient",
            "applianceLossPsi",
            "opening",
            "kFactor",
            "drinkingWater",
            "discontinued",
            "markedTo",
            "comesWithGaskets",
            "stocking");
    assertThat(json.get("hose").propertyNames())
        .containsExactlyInAnyOrder(
            "type",
            "series",
            "sizeIn",
            "boreIn",
            "bowlIn",
            "lengthFt",
            "frictionCoefficient",
            "waveSpeedFtPerS");
    assertThat(json.get("hose").get("type").asString()).isEqualTo("attack");
  }

  @Test
  void hydraulics_stand_beside_the_plan_not_inside_it() {
    JsonNode json = tree(plan("USD"));
    assertThat(json.has("hydraulics")).isFalse();
    assertThat(json.path("frictionLossPsi").asDouble()).isEqualTo(156.9375);
    assertThat(json.path("requiredSourcePsi").asDouble()).isEqualTo(206.9375);
    assertThat(json.path("crossCheck").path(0).path("law").asString()).isEqualTo("hazen-williams");
    assertThat(json.path("crossCheck").path(0).path("roughnessIn").isNull()).isTrue();
  }

  @Test
  void names_ends_and_words_are_those_scripts_rely_on() {
    JsonNode json = tree(plan("USD"));
    JsonNode joint = json.path("joints").path(0);
    assertThat(joint.path("upstream").asString()).isEqualTo("2.5 NH male");
    assertThat(joint.path("downstream").asString()).isEqualTo("2.5 NH female swivel");
    assertThat(joint.path("verdict").asString()).isEqualTo("mates");
    assertThat(joint.path("seal").asString()).isEqualTo("gasket");
    assertThat(json.path("checks").path(0).path("outcome").asString()).isEqualTo("fail");
    assertThat(json.path("date").asString()).isEqualTo("2026-11-25");
    assertThat(json.path("limitedBy").asString()).isEqualTo("source pressure");
    assertThat(json.propertyNames())
        .startsWith("form", "feasible", "limitedBy", "instead", "cautions");
  }

  @Test
  void lines_show_bare_amounts_and_totals_name_the_currency() {
    JsonNode json = tree(plan("USD"));
    assertThat(json.path("items").path(0).path("unitPrice").asString()).isEqualTo("212.50");
    assertThat(json.path("items").path(0).path("extended").asString()).isEqualTo("1912.50");
    assertThat(json.path("items").path(1).path("unitPrice").isNull()).isTrue();
    assertThat(json.path("total").asString()).isEqualTo("1912.50 USD");
  }

  @Test
  void a_verdict_is_named_verdict() {
    Verdict verdict =
        new Verdict(Verdict.Outcome.JAMS, Verdict.Seal.NONE, false, "grabs", "Same pitch.", "s");
    assertThat(tree(verdict).path("verdict").asString()).isEqualTo("jams");
  }

  @Test
  void every_kind_of_end_comes_back_as_it_was_written() {
    assertThat(Families.ends())
        .allSatisfy(end -> assertThat(Json.read(Json.write(end), End.class)).isEqualTo(end));
  }

  @Test
  void text_that_is_no_quote_is_refused_as_such() {
    assertThatThrownBy(() -> Json.readQuote("{\"form\":"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("not a stored Quote");
    assertThatThrownBy(() -> Json.readQuote("{\"form\":2,\"total\":\"twelve\"}"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Json.readQuote("{\"form\":3}"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  // Read with a mapper of its own, so that ours does not vouch for itself.
  private static JsonNode tree(Object document) {
    return JsonMapper.shared().readTree(Json.write(document));
  }

  private static Money money(String currency, double amount) {
    CurrencyUnit unit = CurrencyUnit.of(currency);
    return Money.of(unit, BigDecimal.valueOf(amount), RoundingMode.HALF_UP);
  }

  private static LinePlan plan(String currency) {
    return new LinePlan(
        new LinePlan.Asked("A line for a hand nozzle.", 150, 50, List.of("narrow-fitting")),
        new LinePlan.Answer(
            false,
            Optional.of("source pressure"),
            List.of("give 206.9 psi at the source"),
            List.of("Follow local codes.")),
        layout(),
        hydraulics(),
        List.of(
            new Check(
                CheckId.DELIVERED_PRESSURE,
                Check.Outcome.FAIL,
                new Check.Figure(-6.9, 50, "psi"),
                "n",
                "s")),
        new Bill(
            List.of(
                new Bill.Item(
                    "H-1", "hose", 9, 0, "each", Optional.of(money(currency, 212.5)), 180),
                new Bill.Item("A-1", "a", 1, 0, "each", Optional.empty(), 1)),
            List.of(Unpriced.part(1, "A-1")),
            money(currency, 1912.5),
            DAY,
            new Bill.Gaskets(9, 0, 1),
            List.of(),
            List.of()),
        new LinePlan.Weighed(
            List.of(
                new LinePlan.Alternative(
                    new LinePlan.HoseChoice(2.5, 2.5, "Greyfin supply", 1),
                    true,
                    money(currency, 2400),
                    90.5,
                    "costs more")),
            new LinePlan.Searched(4, 1, 1, 9)));
  }

  private static Layout layout() {
    Part hydrant = part(Role.SOURCE, "", "hydrant", Optional.empty(), Optional.of(OUTLET), 1);
    Part hose = part(Role.HOSE, "H-1", "hose", Optional.of(HOSE_IN), Optional.of(OUTLET), 9);
    Part nozzle = part(Role.APPLIANCE, "", "nozzle", Optional.of(HOSE_IN), Optional.empty(), 1);
    return new Layout(
        List.of(new Node("source", hydrant, 1), new Node("appliance", nozzle, 1)),
        List.of(
            new Leg(
                "line",
                "source",
                "appliance",
                1,
                Optional.of(new Leg.Hose(1.75, 1.5, "Greyfin attack", 1.75, 420, 450)),
                new Leg.Water(
                    150, 150, -6.9, new Leg.Friction(156.9, "C", Optional.of(15.5)), 20, 56.2),
                List.of(hose))),
        List.of(
            new Joint(
                "line",
                new Joint.Side(OUTLET, "hydrant", ""),
                new Joint.Side(HOSE_IN, "section 1", "H-1"),
                1,
                new Joint.Fit(
                    Verdict.Outcome.MATES,
                    Verdict.Seal.GASKET,
                    true,
                    "Same thread.",
                    "a standard"))),
        List.of(new Layout.StationDevice("V-1", 150, 150)));
  }

  private static Part part(
      Role role,
      String item,
      String description,
      Optional<End> upstream,
      Optional<End> downstream,
      int count) {
    return new Part(
        role,
        item.isEmpty() ? Owner.BUYER : Owner.DEALER,
        new Part.Goods(Optional.of(item).filter(number -> !number.isEmpty()), description),
        new Part.Ends(upstream, downstream),
        count,
        role == Role.HOSE ? Optional.of(new Part.Section(50, Optional.of(51))) : Optional.empty(),
        new Part.Flow(1.75, 20, 156.9));
  }

  private static Hydraulics hydraulics() {
    return new Hydraulics(
        new Hydraulics.Pressures(206.9375, Optional.of(150.0), -6.9375),
        new Hydraulics.Losses(156.9375, 0, 0, 0),
        new Hydraulics.Friction(
            "coefficient law",
            Optional.of(15.5),
            List.of(
                new Hydraulics.CrossCheck(
                    "hazen-williams",
                    Optional.of(135.0),
                    Optional.empty(),
                    Optional.empty(),
                    1.75,
                    148.2),
                new Hydraulics.CrossCheck(
                    "darcy-weisbach",
                    Optional.empty(),
                    Optional.of(0.0003),
                    Optional.of(60.0),
                    1.75,
                    151.1)),
            List.of()),
        new Hydraulics.Forces(20.0, Optional.of(70.5), 100, 200),
        new Hydraulics.Filled(56.2, 180, 649, 0.4),
        List.of(new Hydraulics.Station("hydrant", 0, 0, 150, 150)),
        List.of());
  }

  private static Quote quote(String currency) {
    Money subtotal = money(currency, 1912.5);
    Money zero = money(currency, 0);
    return new Quote(
        new Quote.Name("Q-000001", 1),
        Quote.Status.DRAFT,
        new Customer(
            "PHFD",
            "Port Harlow Fire",
            "1 Quay Street",
            new Customer.Pricing(
                "agency", new BigDecimal("0.10"), Map.of("H-1", money(currency, 200))),
            new Customer.Taxation(
                "county",
                new BigDecimal("0.0625"),
                Optional.of(new Customer.Exemption("EX-1", DAY))),
            "collect"),
        new Quote.Validity(DAY, DAY.plusDays(30), 14, Instant.parse("2026-11-25T12:00:00Z")),
        new Basis("Hand line", "from: 2.5 NH male\n", plan(currency), Optional.empty()),
        new Quote.Offer(
            List.of(
                new QuoteLine(
                    1,
                    new QuoteLine.Goods("H-1", "hose", "each", "EA", 180, true),
                    9,
                    new QuoteLine.Price(
                        money(currency, 250),
                        money(currency, 212.5),
                        subtotal,
                        List.of(new QuoteLine.Break(10, money(currency, 200))),
                        Optional.empty()),
                    Optional.of("note"))),
            List.of(),
            Amendments.NONE),
        new Totals(
            subtotal,
            zero,
            zero,
            subtotal,
            new Totals.Charging("collected", false, new BigDecimal("0.0625"), "exempt")));
  }
}
