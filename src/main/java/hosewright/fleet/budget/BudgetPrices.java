package hosewright.fleet.budget;

import hosewright.catalogue.Item;
import hosewright.fleet.record.HoseKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.joda.money.Money;

/** What replacements cost in each year: the break of the year's quantity, changed and escalated. */
final class BudgetPrices {
  private final ReplacementItems items;
  private final BudgetRequest request;

  BudgetPrices(ReplacementItems items, BudgetRequest request) {
    this.items = items;
    this.request = request;
  }

  Optional<Item> item(HoseKind kind) {
    return items.of(kind);
  }

  /** The price of one of so many, rounded half-up to the cent. */
  Money unit(Item item, long quantity, int year) {
    Money changed =
        items
            .unitPrice(item, quantity)
            .multipliedBy(BigDecimal.ONE.add(request.rates().priceChange()), RoundingMode.HALF_UP);
    return PresentValue.escalated(changed, request.rates().escalation(), year);
  }

  /** The price of so many, which may be an expected number that is not whole. */
  Money cost(Item item, double sections, int year) {
    return unit(item, Math.round(sections), year)
        .multipliedBy(BigDecimal.valueOf(sections), RoundingMode.HALF_UP);
  }
}
