package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.line.assembly.GasketCount;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * Compares what goods cost beside whatever the rest of a layout buys: price breaks are reached
 * together, so neither has a price of its own.
 */
public final class SharedCosts {
  /** Spares are a share rounded up: together they may be one less or one more than apart. */
  private static final int ROUNDED_GASKETS = 1;

  private final BuyingCosts buying;
  private final Gaskets gaskets;
  private final double sealantCost;
  private final ToIntFunction<Item> restMost;
  private final Map<String, PairCosts> known = new HashMap<>();
  private final Map<String, Double> saved = new HashMap<>();
  private final Map<Kind, Integer> kinds = new HashMap<>();
  private final List<Goods> examples = new ArrayList<>();
  private final PairCosts ofKinds = new PairCosts();

  /**
   * @param restMost how many of an item the rest may buy at the most
   */
  public SharedCosts(
      BuyingCosts buying, Gaskets gaskets, Billing billing, ToIntFunction<Item> restMost) {
    this.buying = buying;
    this.gaskets = gaskets;
    this.sealantCost = billing.sealantCost();
    this.restMost = restMost;
  }

  /** Parts of goods that have no price. */
  public int toSource(Goods goods) {
    long pieces =
        goods.wanted().pieces().stream()
            .filter(piece -> piece.count() > 0 && piece.item().isEmpty())
            .count();
    long unpriced =
        goods.counts().values().stream()
            .filter(need -> !buying.priced(need.item(), need.quantity()))
            .count();
    return (int) (goods.wanted().lacking().size() + pieces + unpriced);
  }

  /**
   * What goods cost at the least, each at the lowest price that any quantity has: no layout costs
   * less than the sum of this over its parts. In the currency's major unit.
   */
  public double least(Goods goods) {
    double least = 0;
    for (Basket.Need need : goods.counts().values()) {
      least += buying.leastEach(need.item()) * need.quantity();
    }
    for (GasketCount gasket : goods.gaskets()) {
      least += gaskets.leastEach(gasket.end()) * gasket.bought();
    }
    return least;
  }

  /**
   * Goods as they are compared.
   *
   * @param flatCost what costs the same however many are bought, in the currency's major unit
   * @param kind stands for all else that goods are: those of one kind differ in {@code flatCost}
   *     alone
   */
  public record Compared(double flatCost, int kind) {}

  /**
   * What prices depend on beside how many are bought of what costs the same always.
   *
   * @param counts of each item whose price breaks may be reached, or that there may be too few of
   */
  private record Kind(
      Map<String, Integer> counts, Map<GasketCount.Kind, Seals> seals, boolean sealant) {}

  /** Gaskets of a kind: those to be bought, and all that stand in it. */
  private record Seals(int bought, int all) {}

  /** What one sealant for all threads costs, in the currency's major unit. */
  public double sealantCost() {
    return sealantCost;
  }

  public Compared compared(Goods goods) {
    double flat = 0;
    Map<String, Integer> counts = new HashMap<>();
    for (Basket.Need need : goods.counts().values()) {
      if (buying.isFlat(need.item()) && !buying.isScarce(need.item())) {
        flat += buying.of(need.item(), 1) * need.quantity();
      } else {
        counts.put(need.item().number(), need.quantity());
      }
    }
    Map<GasketCount.Kind, Seals> seals = new HashMap<>();
    for (GasketCount gasket : goods.gaskets()) {
      seals.put(gasket.kind(), new Seals(gasket.bought(), gasket.all()));
    }
    Kind kind = new Kind(counts, seals, goods.sealant());
    int number =
        kinds.computeIfAbsent(
            kind,
            found -> {
              examples.add(goods);
              return kinds.size();
            });
    return new Compared(flat, number);
  }

  /**
   * The most by which one of two goods is dearer than the other, whatever else is bought; zero or
   * below where it is never dearer, in the currency's major unit. Infinite where one takes more of
   * something that there may be too few of.
   */
  public double mostOver(Compared one, Compared other) {
    double flat = one.flatCost - other.flatCost;
    return one.kind == other.kind ? flat : flat + mostOver(one.kind, other.kind);
  }

  /** The same of goods alone, told by what they are. */
  public double mostOver(Goods one, Goods other) {
    return mostOver(compared(one), compared(other));
  }

  /** The same of two kinds of goods, beside what costs the same always. */
  public double mostOver(int one, int other) {
    double over = ofKinds.of(one, other);
    if (Double.isNaN(over)) {
      over = findMostOver(examples.get(one), examples.get(other));
      ofKinds.put(one, other, over);
    }
    return over;
  }

  /** Beside what costs the same always. */
  private double findMostOver(Goods one, Goods other) {
    double over = one.sealant() && !other.sealant() ? sealantCost : 0;
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
    return saved.computeIfAbsent(item.number(), number -> findMostSaved(item));
  }

  private double findMostSaved(Item item) {
    int rest = restMost.applyAsInt(item);
    double leastEach = buying.leastEach(item);
    double most = 0;
    for (int quantity = 1; quantity <= rest && leastEach < buying.of(item, 1); quantity++) {
      most = Math.max(most, buying.of(item, quantity) - quantity * leastEach);
    }
    return most;
  }

  private double most(Item item, int one, int other) {
    if (one == other) {
      return 0;
    }
    if (one > other && buying.isScarce(item)) {
      return Double.POSITIVE_INFINITY;
    }
    if (buying.isFlat(item)) {
      return buying.isScarce(item) ? (one - other) * buying.of(item, 1) : 0;
    }
    PairCosts ofItem = known.computeIfAbsent(item.number(), number -> new PairCosts());
    double so = ofItem.of(one, other);
    if (Double.isNaN(so)) {
      so = Double.NEGATIVE_INFINITY;
      int rest = restMost.applyAsInt(item);
      for (int besides = 0; besides <= rest; besides++) {
        so = Math.max(so, buying.of(item, besides + one) - buying.of(item, besides + other));
      }
      ofItem.put(one, other, so);
    }
    return so;
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
