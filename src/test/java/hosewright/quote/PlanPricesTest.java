package hosewright.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.line.goods.GoodsPlan;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Part;
import hosewright.line.model.Unpriced;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** All items and prices are invented. */
final class PlanPricesTest {
  private static final LocalDate THEN = LocalDate.of(2026, 3, 2);
  private static final LocalDate LATER = LocalDate.of(2027, 1, 4);

  private static LinePlan plan(Bill bill) {
    LinePlan goods = GoodsPlan.of("", List.of(), List.of(), List.of(), THEN, CurrencyUnit.USD);
    return goods.priced(bill);
  }

  @Test
  void a_plan_priced_anew_still_says_which_sections_are_spare_and_what_is_laid() {
    Bill.Spare spare =
        new Bill.Spare(
            "H-1",
            1.5,
            new Part.Ends(Optional.empty(), Optional.empty()),
            new Part.Section(50, Optional.empty()),
            1);
    LinePlan plan =
        plan(
            new Bill(
                List.of(),
                List.of(),
                Money.zero(CurrencyUnit.USD),
                THEN,
                new Bill.Gaskets(1, 2, 3),
                List.of(spare),
                List.of()));
    LinePlan later = PlanPrices.on(LATER, plan, (item, quantity) -> Optional.empty());
    assertThat(later.bill().spares()).containsExactly(spare);
    assertThat(later.bill().gaskets()).isEqualTo(new Bill.Gaskets(1, 2, 3));
    assertThat(later.layout()).isEqualTo(plan.layout());
    assertThat(later.bill().date()).isEqualTo(LATER);
  }

  @Test
  void an_item_that_has_a_price_now_is_no_longer_to_be_sourced() {
    Money price = Money.parse("USD 4.50");
    Bill.Item wrench = new Bill.Item("W-1", "a wrench", 2, 0, "each", Optional.empty(), 3);
    Unpriced noPrice = new Unpriced(Optional.of("W-1"), "W-1 has no price in force", 2);
    Unpriced adapter = Unpriced.part(1, "adapter to be sourced");
    LinePlan plan =
        GoodsPlan.of(
            "", List.of(wrench), List.of(noPrice, adapter), List.of(), THEN, CurrencyUnit.USD);
    LinePlan later =
        PlanPrices.on(
            LATER,
            plan,
            (item, quantity) ->
                Optional.of(
                    new LinePrices.Priced("a wrench", "each", "EA", 1.5, price, price, List.of())));
    assertThat(later.bill().unpriced()).containsExactly(adapter);
    assertThat(later.total()).isEqualTo(Money.parse("USD 9.00"));
  }
}
