package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import java.util.HashMap;
import java.util.Map;
import org.joda.money.Money;

/** The least that items can cost in a plan, in the currency's major unit. */
final class PriceFloor {
  private final NetPrice prices;
  private final int mostAlike;
  private final Map<String, Double> unitFloors = new HashMap<>();

  /**
   * @param mostAlike no plan uses more of one adapter or device than this
   */
  PriceFloor(NetPrice prices, int mostAlike) {
    this.prices = prices;
    this.mostAlike = mostAlike;
  }

  /** The least one unit of an item can cost that is used up to the most times a plan may. */
  double ofOne(Item item) {
    return unitFloors.computeIfAbsent(item.number(), number -> find(item));
  }

  /** What a quantity costs that no other part of the plan adds to; zero without a price. */
  double ofAll(Item item, int quantity) {
    return Basket.cheapest(item, quantity, prices)
        .extended()
        .map(Money::getAmount)
        .map(Number::doubleValue)
        .orElse(0.0);
  }

  private double find(Item item) {
    double least = Double.POSITIVE_INFINITY;
    for (int quantity = 1; quantity <= mostAlike; quantity++) {
      least = Math.min(least, ofAll(item, quantity) / quantity);
    }
    return least;
  }
}
