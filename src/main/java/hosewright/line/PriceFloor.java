package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** The least that items can cost in any plan, whatever quantities it buys. */
final class PriceFloor {
  private final NetPrice prices;
  private final Map<String, Double> unitFloors = new HashMap<>();

  PriceFloor(NetPrice prices) {
    this.prices = prices;
  }

  /** The least one unit can cost, in the currency's major unit; zero when no price is in force. */
  double of(Item item) {
    return unitFloors.computeIfAbsent(item.number(), number -> find(item));
  }

  double of(Map<Item, Integer> bill) {
    double cost = 0;
    for (Map.Entry<Item, Integer> line : bill.entrySet()) {
      cost += of(line.getKey()) * line.getValue();
    }
    return cost;
  }

  private double find(Item item) {
    Optional<Money> least = prices.unitPrice(item, 1);
    for (int breakQuantity : prices.breakQuantities(item)) {
      Optional<Money> price = prices.unitPrice(item, breakQuantity);
      if (price.isPresent() && (least.isEmpty() || price.get().isLessThan(least.get()))) {
        least = price;
      }
    }
    return least.map(Money::getAmount).orElse(BigDecimal.ZERO).doubleValue();
  }
}
