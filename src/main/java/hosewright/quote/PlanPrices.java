package hosewright.quote;

import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** A plan's parts at other prices than it was found at. */
final class PlanPrices {
  private PlanPrices() {}

  /**
   * The plan priced anew.
   *
   * <p>Its alternatives are left out: they were priced on another day and cannot be compared.
   */
  static LinePlan on(LocalDate date, LinePlan plan, LinePrices prices) {
    List<Bill.Item> items = plan.items().stream().map(item -> repriced(item, prices)).toList();
    return plan.priced(plan.bill().priced(items, date));
  }

  private static Bill.Item repriced(Bill.Item item, LinePrices prices) {
    Optional<Money> unitPrice =
        prices.of(item.item(), item.quantity()).map(LinePrices.Priced::unitPrice);
    // An item whose price is gone keeps the old one here, so that writing its line refuses it.
    return item.at(unitPrice.or(item::unitPrice));
  }
}
