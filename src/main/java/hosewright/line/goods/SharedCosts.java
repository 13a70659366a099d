package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import hosewright.line.assembly.GasketCount;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import org.joda.money.Money;

/**
 * Compares what goods cost beside whatever the rest of a layout buys: price breaks are reached
 * together, so neither has a price of its own.
 */
public final class SharedCosts {
  /** Spares are a share rounded up: together they may be one less or one more than apart. */
  private static final int ROUNDED_GASKETS = 1;

  private final NetPrice prices;
  private final Availability availability;
  private final Gaskets gaskets;
  private final double sealantCost;
  private final ToIntFunction<Item> restMost;
  private final Map<Counts, Double> known = new HashMap<>();
  private final Map<String, Map<Integer, Double>> costs = new HashMap<>();

  /**
   * @param restMost how many of an item the rest may buy at the most
   */
  public SharedCosts(
      NetPrice prices,
      Availability availability,
      Gaskets gaskets,
      Billing billing,
      ToIntFunction<Item> restMost) {
    this.prices = prices;
    this.availability = availability;
    this.gaskets = gaskets;
    this.sealantCost = billing.sealantCost();
    this.restMost = restMost;
  }

  /** Goods of a part of a layout. */
  public record Goods(Wanted wanted, List<GasketCount> gaskets) {
    public static final Goods NOTHING = new Goods(Wanted.NOTHING, List.of());

    public Goods and(Goods other) {
      return new Goods(wanted.and(other.wanted), GasketCount.together(gaskets, other.gaskets));
    }

    /** How many of each item, what was asked for besides the line included. */
    Map<String, Basket.Need> counts() {
      Map<String, Basket.Need> counts = new TreeMap<>();
      wanted.needs().forEach(need -> merge(counts, need.item(), need.quantity()));
      for (Piece piece : wanted.pieces()) {
        piece.item().ifPresent(item -> merge(counts, item, piece.count()));
      }
      return counts;
    }

    private static void merge(Map<String, Basket.Need> counts, Item item, int quantity) {
      counts.merge(
          item.number(),
          new Basket.Need(item, quantity),
          (a, b) -> new Basket.Need(item, a.quantity() + b.quantity()));
    }
  }

  /** Parts of goods that have no price. */
  public int toSource(Goods goods) {
    long pieces =
        goods.wanted().pieces().stream()
            .filter(piece -> piece.count() > 0 && piece.item().isEmpty())
            .count();
    long unpriced =
        goods.counts().values().stream()
            .filter(need -> prices.unitPrice(need.item(), need.quantity()).isEmpty())
            .count();
    return (int) (goods.wanted().lacking().size() + pieces + unpriced);
  }

  /**
   * The most by which one of two goods is dearer than the other, whatever else is bought; zero or
   * below where it is never dearer, in the currency's major unit.
   */
  public double mostOver(Goods one, Goods other) {
    double over = one.wanted().sealant() && !other.wanted().sealant() ? sealantCost : 0;
    Map<String, Basket.Need> ours = one.counts();
    Map<String, Basket.Need> theirs = other.counts();
    for (Map.Entry<String, Basket.Need> our : ours.entrySet()) {
      Basket.Need their = theirs.get(our.getKey());
      int quantity = their == null ? 0 : their.quantity();
      over += most(our.getValue().item(), our.getValue().quantity(), quantity);
    }
    for (Map.Entry<String, Basket.Need> their : theirs.entrySet()) {
      if (!ours.containsKey(their.getKey())) {
        over += most(their.getValue().item(), 0, their.getValue().quantity());
      }
    }
    return over + gasketsOver(one.gaskets(), other.gaskets());
  }

  /** The most that buying some of an item may save on what the rest buys of it. */
  public double mostSaved(Item item) {
    int rest = restMost.applyAsInt(item);
    double leastEach = Double.POSITIVE_INFINITY;
    for (int quantity : prices.breakQuantities(item)) {
      leastEach = Math.min(leastEach, cost(item, quantity) / quantity);
    }
    double most = 0;
    for (int quantity = 1; quantity <= rest && leastEach < cost(item, 1); quantity++) {
      most = Math.max(most, cost(item, quantity) - quantity * leastEach);
    }
    return most;
  }

  private record Counts(String item, int one, int other) {}

  private double most(Item item, int one, int other) {
    if (one == other) {
      return 0;
    }
    Counts counts = new Counts(item.number(), one, other);
    Double so = known.get(counts);
    if (so == null) {
      double most = Double.NEGATIVE_INFINITY;
      int rest = restMost.applyAsInt(item);
      for (int besides = 0; besides <= rest; besides++) {
        most = Math.max(most, cost(item, besides + one) - cost(item, besides + other));
      }
      so = most;
      known.put(counts, so);
    }
    return so;
  }

  private double cost(Item item, int quantity) {
    return quantity == 0
        ? 0
        : costs
            .computeIfAbsent(item.number(), number -> new HashMap<>())
            .computeIfAbsent(
                quantity,
                count ->
                    Basket.cheapest(item, count, prices, availability)
                        .extended()
                        .map(Money::getAmount)
                        .map(Number::doubleValue)
                        .orElse(0.0));
  }

  private double gasketsOver(List<GasketCount> ours, List<GasketCount> theirs) {
    double over = 0;
    for (GasketCount our : ours) {
      GasketCount their = of(our.kind(), theirs);
      if (their == null) {
        over += costOfMore(our, our.bought() + our.spare() + ROUNDED_GASKETS);
      } else if (our.bought() != their.bought() || our.all() != their.all()) {
        over +=
            costOfMore(
                our,
                our.bought() + our.spare() + ROUNDED_GASKETS - their.bought() - their.spare() + 1);
      }
    }
    for (GasketCount their : theirs) {
      if (of(their.kind(), ours) == null) {
        over += costOfMore(their, ROUNDED_GASKETS + 1 - their.bought() - their.spare());
      }
    }
    return over;
  }

  private static GasketCount of(GasketCount.Kind kind, List<GasketCount> counts) {
    return counts.stream().filter(count -> count.kind().equals(kind)).findFirst().orElse(null);
  }

  /** What so many more of a gasket cost at the most; below zero for fewer. */
  private double costOfMore(GasketCount gasket, int more) {
    return more > 0
        ? more * gaskets.mostEach(gasket.end())
        : more * gaskets.leastEach(gasket.end());
  }
}
