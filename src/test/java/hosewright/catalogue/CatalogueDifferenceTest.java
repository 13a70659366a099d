package hosewright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hosewright.catalogue.CatalogueDifference.FactChange;
import hosewright.catalogue.CatalogueDifference.PriceChange;
import hosewright.catalogue.reading.ItemCells;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

final class CatalogueDifferenceTest {
  private static final LocalDate AUGUST = LocalDate.of(2026, 8, 1);

  private final CatalogueFiles next = new CatalogueFiles();

  @Test
  void the_same_catalogue_differs_in_nothing() {
    assertThat(difference().isEmpty()).isTrue();
  }

  @Test
  void items_come_go_and_are_discontinued() {
    next.with("items.csv", "N95,nozzle", "N100,nozzle")
        .with("items.csv", "no,no,NFPA 1961,yes,PH,5", "no,yes,NFPA 1961,yes,PH,5");

    CatalogueDifference difference = difference();

    assertThat(difference.added()).extracting(Item::number).containsExactly("N100");
    assertThat(difference.dropped()).extracting(Item::number).containsExactly("N95");
    assertThat(difference.discontinued()).extracting(Item::number).containsExactly("H25-50");
    assertThat(difference.facts()).isEmpty();
  }

  @Test
  void a_price_that_rises_is_told_with_its_percentage_of_the_one_before() {
    next.with("prices.csv", ",,1,219.50", ",,1,230.48").with("prices.csv", "205.25", "200.00");

    // 10.98 of 219.50 is 5.002 %, and -5.25 of 205.25 is -2.558 %.
    assertThat(difference().prices())
        .extracting(PriceChange::minimumQuantity, PriceChange::from, PriceChange::percent)
        .containsExactly(
            tuple(1, AUGUST, Optional.of(new BigDecimal("5.0"))),
            tuple(10, AUGUST, Optional.of(new BigDecimal("-2.6"))));
    assertThat(difference().risen()).isEqualTo(1);
    assertThat(difference().fallen()).isEqualTo(1);
  }

  @Test
  void a_price_of_a_day_to_come_differs_from_that_day_on() {
    next.with("prices.csv", "H25-50,2026-07-01,,1,219.50", "H25-50,2026-07-01,2026-12-31,1,219.50")
        .plus("prices.csv", "H25-50,2027-01-01,,1,225.00,USD");

    assertThat(difference().prices())
        .extracting(PriceChange::from, PriceChange::before, PriceChange::after)
        .containsExactly(
            tuple(
                LocalDate.of(2027, 1, 1), Optional.of(usd("219.50")), Optional.of(usd("225.00"))));
  }

  @Test
  void a_price_that_is_history_already_is_not_compared() {
    next.with("prices.csv", ",210.00", ",209.00");

    assertThat(difference().prices()).isEmpty();
  }

  @Test
  void a_break_that_is_gone_leaves_the_price_of_fewer() {
    next.with("prices.csv", "H25-50,2026-07-01,,10,205.25,USD\n", "");

    assertThat(difference().prices())
        .extracting(PriceChange::minimumQuantity, PriceChange::after)
        .containsExactly(tuple(10, Optional.of(usd("219.50"))));
  }

  @Test
  void prices_in_two_currencies_are_not_set_against_each_other() {
    next.with("prices.csv", "USD", "CAD");

    assertThat(difference().prices()).isNotEmpty().allMatch(change -> change.percent().isEmpty());
    assertThat(difference().risen() + difference().fallen()).isZero();
  }

  @Test
  void every_other_fact_is_told_under_the_name_of_its_column() {
    next.with("items.csv", "polyester,water,300,300", "nylon,water,250,300")
        .with(
            "items.csv",
            "2.5 NH male x 2.5 NH female swivel",
            "2.5 NPSH male x 2.5 NPSH female swivel")
        .with("items.csv", "73:250;120:200;180:120.5", "73:250");

    assertThat(difference().facts())
        .containsExactly(
            new FactChange(
                "H25-50",
                "ends",
                "2.5 NH male x 2.5 NH female swivel",
                "2.5 NPSH male x 2.5 NPSH female swivel"),
            new FactChange("H25-50", "material", "polyester", "nylon"),
            new FactChange("H25-50", "working_psi", "300", "250"),
            new FactChange("B15", "derating", "73:250;120:200;180:120.5", "73:250"));
  }

  @Test
  void facts_stand_under_the_columns_of_the_items_file() {
    Item hose = next.read().item("H25-50").orElseThrow();

    assertThat(Stream.concat(ItemCells.COLUMNS.stream(), ItemCells.LATER_COLUMNS.stream()).toList())
        .containsAll(ItemFacts.of(hose).keySet());
    assertThat(ItemFacts.of(hose))
        .containsEntry("hose_size_in", "2.5")
        .containsEntry("on_hand", "40")
        .doesNotContainKey("k_factor");
  }

  private CatalogueDifference difference() {
    return CatalogueDifference.between(new CatalogueFiles().read(), next.read(), AUGUST);
  }

  private static Money usd(String amount) {
    return Money.parse("USD " + amount);
  }
}
