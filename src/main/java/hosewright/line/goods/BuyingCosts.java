package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * What any quantity of an item costs a buyer, in the currency's major unit, worked out once: a
 * search compares the same quantities thousands of times.
 */
public final class BuyingCosts {
  /** Far below a cent, far above what adding up prices may lose. */
  private static final double HAIR = 1e-7;

  private final NetPrice prices;
  private final Availability availability;
  private final ToIntFunction<Item> allMost;
  private final Map<String, double[]> ofQuantity = new HashMap<>();
  private final Map<String, Double> leastEach = new HashMap<>();
  private final Map<String, Boolean> flat = new HashMap<>();
  private final Map<String, Boolean> scarce = new HashMap<>();

  /**
   * @param allMost how many of an item a whole layout may buy at the most
   */
  public BuyingCosts(NetPrice prices, Availability availability, ToIntFunction<Item> allMost) {
    this.prices = prices;
    this.availability = availability;
    this.allMost = allMost;
  }

  /** What so many cost in all, bought ahead to a price break where that is cheaper. */
  double of(Item item, int quantity) {
    double[] known = ofQuantity.computeIfAbsent(item.number(), number -> unknown(16));
    if (quantity >= known.length) {
      int before = known.length;
      known = Arrays.copyOf(known, 2 * quantity);
      Arrays.fill(known, before, known.length, Double.NaN);
      ofQuantity.put(item.number(), known);
    }
    if (Double.isNaN(known[quantity])) {
      known[quantity] =
          quantity == 0
              ? 0
              : Basket.cheapest(item, quantity, prices, availability)
                  .extended()
                  .map(BuyingCosts::amount)
                  .orElse(0.0);
    }
    return known[quantity];
  }

  private static double[] unknown(int quantities) {
    double[] costs = new double[quantities];
    Arrays.fill(costs, Double.NaN);
    return costs;
  }

  /** Whether a layout may want more of an item than can be had. */
  boolean isScarce(Item item) {
    return scarce.computeIfAbsent(
        item.number(),
        number -> !availability.toBeHad(item, Math.max(1, allMost.applyAsInt(item))));
  }

  /** Whether each of an item costs the same, however many of it a layout buys. */
  boolean isFlat(Item item) {
    return flat.computeIfAbsent(item.number(), number -> findFlat(item));
  }

  private boolean findFlat(Item item) {
    int most = Math.max(1, allMost.applyAsInt(item));
    double each = of(item, 1);
    boolean flat = leastEach(item) >= each - HAIR;
    for (int quantity = 2; quantity <= most && flat; quantity++) {
      flat = Math.abs(of(item, quantity) - quantity * each) < HAIR;
    }
    return flat;
  }

  boolean priced(Item item, int quantity) {
    return prices.unitPrice(item, quantity).isPresent();
  }

  /** The least that one of an item can cost in the whole layout; zero without a price. */
  public double leastEach(Item item) {
    return leastEach.computeIfAbsent(
        item.number(), number -> leastPrice(item).map(BuyingCosts::amount).orElse(0.0));
  }

  /**
   * The same as a price, rounded down; empty without one. A break beyond what the layout may need
   * may be bought up to, and costs what it costs in all.
   */
  private Optional<Money> leastPrice(Item item) {
    int most = Math.max(1, allMost.applyAsInt(item));
    return Stream.concat(Stream.of(1), prices.breakQuantities(item).stream())
        .flatMap(
            quantity ->
                prices.unitPrice(item, quantity).stream()
                    .map(
                        each ->
                            quantity <= most
                                ? each
                                : each.multipliedBy(quantity).dividedBy(most, RoundingMode.DOWN)))
        .min(Comparator.naturalOrder());
  }

  private static double amount(Money money) {
    return money.getAmount().doubleValue();
  }

  /** Prices as if everything were bought by the most: no purchase has any of it for less. */
  public NetPrice atLeast() {
    return new NetPrice() {
      @Override
      public Optional<Money> unitPrice(Item item, int quantity) {
        return leastPrice(item);
      }

      @Override
      public List<Integer> breakQuantities(Item item) {
        return List.of();
      }
    };
  }
}
