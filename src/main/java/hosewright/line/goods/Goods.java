package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.line.assembly.GasketCount;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Goods of a part of a layout, and how many of each item they are. */
public final class Goods {
  public static final Goods NOTHING = of(Wanted.NOTHING, List.of());

  /** Told when it is asked for: a search adds up thousands of goods and prices a few. */
  private final Supplier<Wanted> wanted;

  private final boolean sealant;
  private final List<GasketCount> gaskets;

  /** What was asked for besides the line included. */
  private final Map<String, Basket.Need> counts;

  private Goods(
      Supplier<Wanted> wanted,
      boolean sealant,
      List<GasketCount> gaskets,
      Map<String, Basket.Need> counts) {
    this.wanted = wanted;
    this.sealant = sealant;
    this.gaskets = List.copyOf(gaskets);
    this.counts = counts;
  }

  public static Goods of(Wanted wanted, List<GasketCount> gaskets) {
    Map<String, Basket.Need> counts = new HashMap<>();
    wanted.needs().forEach(need -> count(need, counts));
    for (Piece piece : wanted.pieces()) {
      if (piece.count() > 0) {
        piece.item().ifPresent(item -> count(new Basket.Need(item, piece.count()), counts));
      }
    }
    return new Goods(() -> wanted, wanted.sealant(), gaskets, counts);
  }

  /** Items alone. */
  public static Goods of(List<Basket.Need> needs, List<GasketCount> gaskets) {
    return of(new Wanted(needs, List.of(), false, List.of()), gaskets);
  }

  /** One of an item that stands where lines divide or join. */
  public static Goods one(Item item, List<GasketCount> gaskets) {
    return of(List.of(new Basket.Need(item, 1)), gaskets);
  }

  private static void count(Basket.Need need, Map<String, Basket.Need> counts) {
    counts.merge(
        need.item().number(),
        need,
        (one, other) -> new Basket.Need(one.item(), one.quantity() + other.quantity()));
  }

  public Wanted wanted() {
    return wanted.get();
  }

  public List<GasketCount> gaskets() {
    return gaskets;
  }

  /** Whether some joint is sealed on its threads. */
  boolean sealant() {
    return sealant;
  }

  /** How many of each item, what was asked for besides the line included. */
  public Collection<Basket.Need> needs() {
    return counts.values();
  }

  Map<String, Basket.Need> counts() {
    return counts;
  }

  /** What two parts of a layout take together. */
  public Goods and(Goods other) {
    Map<String, Basket.Need> both = new HashMap<>(counts);
    other.counts.values().forEach(need -> count(need, both));
    return new Goods(
        () -> wanted().and(other.wanted()),
        sealant || other.sealant,
        GasketCount.together(gaskets, other.gaskets),
        both);
  }
}
