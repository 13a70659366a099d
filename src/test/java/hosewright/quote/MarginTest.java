package hosewright.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.catalogue.CatalogueFiles;
import hosewright.csv.CsvText;
import hosewright.problem.BadInputException;
import hosewright.quote.Margin.Floor;
import hosewright.quote.Margin.Part;
import hosewright.quote.terms.CustomerFiles;
import hosewright.quote.terms.CustomerReader;
import hosewright.quote.terms.Customers;
import hosewright.quote.terms.MarginFloorReader;
import hosewright.quote.terms.MarginFloors;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

final class MarginTest {

  @Test
  void a_margin_is_what_is_left_of_the_net_price() {
    // By hand: (25.00 - 15.00) / 25.00 = 0.4, and a sale under cost loses (20 - 25) / 20.
    assertThat(Margin.of(usd("25.00"), Optional.of(usd("15.00"))).fraction())
        .contains(new BigDecimal("0.400000"));
    assertThat(Margin.of(usd("20.00"), Optional.of(usd("25.00"))).fraction())
        .contains(new BigDecimal("-0.250000"));
  }

  @Test
  void no_cost_makes_it_unknown_and_never_all_of_the_price() {
    Margin margin = Margin.of(usd("25.00"), Optional.empty());

    assertThat(margin.fraction()).isEmpty();
    assertThat(margin.unknownBecause()).containsExactly("no cost is in force");
  }

  @Test
  void a_cost_in_another_currency_is_never_set_against_the_price() {
    Margin margin = Margin.of(usd("25.00"), Optional.of(Money.parse("CAD 15.00")));

    assertThat(margin.fraction()).isEmpty();
    assertThat(margin.unknownBecause()).containsExactly("the cost is in CAD and the price in USD");
  }

  @Test
  void a_price_of_nothing_has_no_margin() {
    assertThat(Margin.of(usd("0.00"), Optional.of(usd("1.00"))).unknownBecause())
        .containsExactly("the price is zero");
  }

  @Test
  void the_margin_of_several_things_is_that_of_their_sums() {
    // 10 at 9.00 costing 6.00 and 1 at 10.00 costing 9.00: (100 - 69) / 100.
    Margin margin =
        Margin.of(
            List.of(
                new Part("A", usd("90.00"), Optional.of(usd("60.00"))),
                new Part("B", usd("10.00"), Optional.of(usd("9.00")))));

    assertThat(margin.fraction()).contains(new BigDecimal("0.310000"));
  }

  @Test
  void one_unknown_part_makes_the_whole_unknown_and_is_named() {
    Margin margin =
        Margin.of(
            List.of(
                new Part("A", usd("90.00"), Optional.of(usd("60.00"))),
                new Part("B", usd("10.00"), Optional.empty())));

    assertThat(margin.fraction()).isEmpty();
    assertThat(margin.unknownBecause()).containsExactly("B: no cost is in force");
  }

  @Test
  void a_margin_just_under_the_floor_is_never_rounded_up_to_it() {
    // (1,000,000.00 - 800,000.01) / 1,000,000.00 = 0.19999999
    Margin margin = Margin.of(usd("1000000.00"), Optional.of(usd("800000.01")));

    assertThat(margin.against(Optional.of(new BigDecimal("0.2")))).isEqualTo(Floor.BELOW);
    assertThat(
            Margin.of(usd("10.00"), Optional.of(usd("8.00")))
                .against(Optional.of(new BigDecimal("0.2"))))
        .isEqualTo(Floor.KEPT);
  }

  @Test
  void without_a_floor_every_margin_is_kept_and_against_one_an_unknown_stays_unknown() {
    Margin unknown = Margin.of(usd("25.00"), Optional.empty());

    assertThat(unknown.against(Optional.empty())).isEqualTo(Floor.KEPT);
    assertThat(unknown.against(Optional.of(BigDecimal.ZERO))).isEqualTo(Floor.UNKNOWN);
  }

  @Test
  void a_customer_has_the_floor_of_its_class() {
    MarginFloors floors = floors("class,margin_floor\nagency,0.15\nretail,0.3\n");
    Customers customers =
        CustomerReader.readTables(
            CsvText.all(new CustomerFiles().readers()), new CatalogueFiles().read(), floors);

    assertThat(floors.of(customers.byId().get("PHFD"))).contains(new BigDecimal("0.15"));
    assertThat(floors.classes()).containsExactly("agency", "retail");
  }

  @Test
  void where_classes_are_kept_a_customer_is_of_one_of_them() {
    MarginFloors floors = floors("class,margin_floor\nagency,0.15\nretial,0.3\n");

    assertThatThrownBy(
            () ->
                CustomerReader.readTables(
                    CsvText.all(new CustomerFiles().readers()),
                    new CatalogueFiles().read(),
                    floors))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("column class cannot be 'retail': it must stand in classes.csv")
        .hasMessageContaining("Did you mean 'retial'?");
  }

  @Test
  void a_floor_of_everything_or_of_words_is_refused() {
    assertThatThrownBy(() -> floors("class,margin_floor\nagency,1\nretail,30 %\nAgency,0.2\n"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("line 2 column margin_floor")
        .hasMessageContaining("line 3 column margin_floor")
        .hasMessageContaining("line 4 column class");
  }

  private static MarginFloors floors(String text) {
    return MarginFloorReader.read(CsvText.all(Map.of("classes.csv", new StringReader(text))));
  }

  private static Money usd(String amount) {
    return Money.parse("USD " + amount);
  }
}
