package hosewright.quote;

import hosewright.line.LinePlan;
import hosewright.line.LinePlan.PlanItem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** A plan's parts at other prices than it was found at. */
final class PlanPrices {
  private PlanPrices() {}

  /**
   * A plan with its parts at the prices of another day.
   *
   * <p>Its alternatives are left out: they were priced on another day and cannot be compared.
   */
  static LinePlan on(LocalDate date, LinePlan plan, LinePrices prices) {
    List<PlanItem> items = plan.items().stream().map(item -> repriced(item, prices)).toList();
    Money total =
        items.stream()
            .flatMap(item -> item.extended().stream())
            .reduce(Money.zero(plan.total().getCurrencyUnit()), Money::plus);
    return new LinePlan(
        plan.feasible(),
        plan.limitedBy(),
        plan.instead(),
        plan.cautions(),
        plan.summary(),
        plan.sizeIn(),
        plan.couplingSizeIn(),
        plan.hoseSeries(),
        plan.lines(),
        plan.neededFt(),
        plan.laidFt(),
        plan.sections(),
        plan.run(),
        plan.joints(),
        plan.adapters(),
        plan.gaskets(),
        plan.flowGpm(),
        plan.needPsi(),
        plan.hydraulics(),
        plan.checks(),
        items,
        date,
        plan.unpriced().stream().filter(wanted -> !nowPriced(wanted, items)).toList(),
        total,
        List.of(),
        plan.searched(),
        plan.ownSections(),
        plan.spareSections(),
        plan.layout());
  }

  private static PlanItem repriced(PlanItem item, LinePrices prices) {
    Optional<Money> unitPrice =
        prices.of(item.item(), item.quantity()).map(LinePrices.Priced::unitPrice);
    // An item whose price is gone keeps the old one here, so that writing its line refuses it.
    Optional<Money> shown = unitPrice.or(item::unitPrice);
    return new PlanItem(
        item.item(),
        item.description(),
        item.quantity(),
        item.spare(),
        item.unit(),
        shown,
        shown.map(price -> price.multipliedBy(item.quantity())),
        item.weightLb());
  }

  private static boolean nowPriced(String wanted, List<PlanItem> items) {
    return items.stream()
        .filter(item -> item.unitPrice().isPresent())
        .anyMatch(item -> wanted.equals(item.item() + " has no price in force"));
  }
}
