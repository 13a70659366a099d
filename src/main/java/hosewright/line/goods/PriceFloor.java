package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.joda.money.Money;

/** The least that items can cost in a plan, in the currency's major unit. */
public final class PriceFloor {
  private final NetPrice prices;
  private final Availability availability;
  private final int mostAlike;
  private final Map<String, Double> unitFloors = new HashMap<>();
  private final Map<String, Ladder> ladders = new HashMap<>();

  /**
   * @param mostAlike no plan uses more of one adapter, device or accessory than this
   */
  public PriceFloor(NetPrice prices, Availability availability, int mostAlike) {
    this.prices = prices;
    this.availability = availability;
    this.mostAlike = mostAlike;
  }

  /** The least one unit of an item can cost that is used up to the most times a plan may. */
  public double ofOne(Item item) {
    return unitFloors.computeIfAbsent(item.number(), number -> find(item));
  }

  /** The least one unit can cost where so many are bought, and no more than that. */
  public double ofOneOf(Item item, int fewest, int most) {
    // Between two breaks a unit costs the same, or less the nearer the dearer break is bought to.
    return IntStream.concat(IntStream.of(Math.max(1, fewest), most), breaks(item))
        .filter(quantity -> fewest <= quantity && quantity <= most)
        .mapToDouble(quantity -> ofAtLeast(item, quantity) / quantity)
        .min()
        .orElse(0);
  }

  private IntStream breaks(Item item) {
    return IntStream.of(ladder(item).quantities());
  }

  private Ladder ladder(Item item) {
    return ladders.computeIfAbsent(item.number(), number -> climb(item));
  }

  /** What exactly this quantity costs; zero without a price. */
  double ofAll(Item item, int quantity) {
    return Basket.cheapest(item, quantity, prices, availability)
        .extended()
        .map(PriceFloor::amount)
        .orElse(0.0);
  }

  /** No purchase of this quantity or more costs less; zero without a price. */
  public double ofAtLeast(Item item, int quantity) {
    Ladder ladder = ladder(item);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ladder.quantities().length; i++) {
      boolean last = i == ladder.quantities().length - 1;
      if (last || quantity < ladder.quantities()[i + 1]) {
        int bought = Math.max(quantity, ladder.quantities()[i]);
        least = Math.min(least, bought * ladder.prices()[i]);
      }
    }
    return least;
  }

  private record Ladder(int[] quantities, double[] prices) {}

  private Ladder climb(Item item) {
    int[] quantities =
        IntStream.concat(
                IntStream.of(1), prices.breakQuantities(item).stream().mapToInt(Integer::intValue))
            .distinct()
            .sorted()
            .toArray();
    double[] each =
        IntStream.of(quantities)
            .mapToDouble(
                quantity -> prices.unitPrice(item, quantity).map(PriceFloor::amount).orElse(0.0))
            .toArray();
    return new Ladder(quantities, each);
  }

  private static double amount(Money money) {
    return money.getAmount().doubleValue();
  }

  private double find(Item item) {
    return ofOneOf(item, 1, mostAlike);
  }
}
