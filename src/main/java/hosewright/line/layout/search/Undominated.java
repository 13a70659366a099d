package hosewright.line.layout.search;

import hosewright.line.goods.SharedCosts;
import hosewright.line.layout.search.Ample.Enough;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Leaves out what another is as good as: one that needs no more pressure or an ample one, bears no
 * less, lacks no more parts, and is never dearer whatever the rest of the layout buys.
 */
final class Undominated implements Thinning {
  private static final double HAIR = 1e-9;
  private static final Comparator<Sum> CHEAPEST_FIRST =
      Comparator.comparingDouble(Sum::leastCost).thenComparingDouble(Sum::needsPsi);

  private final Function<Set<String>, SharedCosts> beside;
  private final Map<Set<String>, SharedCosts> known = new HashMap<>();

  /**
   * @param beside compares goods of some legs, by name, beside anything that all others may buy
   */
  Undominated(Function<Set<String>, SharedCosts> beside) {
    this.beside = beside;
  }

  /** One that was kept, with its pressures no better than is ample. */
  private record Kept(
      SharedCosts.Compared compared, int toSource, double needsPsi, double bearsPsi) {

    static Kept of(Sum sum, SharedCosts.Compared compared, Enough enough) {
      return new Kept(
          compared,
          sum.toSource(),
          Math.max(sum.needsPsi(), enough.needPsi()),
          Math.min(sum.bearsPsi(), enough.bearsPsi()));
    }

    /**
     * @param kindOver the most that its kind of goods costs more than the other's
     */
    boolean asGoodAs(Kept other, double kindOver) {
      return compared.flatCost() + kindOver <= other.compared.flatCost() + HAIR
          && toSource <= other.toSource
          && needsPsi <= other.needsPsi + HAIR
          && bearsPsi >= other.bearsPsi - HAIR;
    }
  }

  /** Those of one kind of goods that were kept. */
  private static final class OfKind {
    private final List<Kept> kept = new ArrayList<>();
    private double leastFlatCost = Double.POSITIVE_INFINITY;

    void add(Kept one) {
      kept.add(one);
      leastFlatCost = Math.min(leastFlatCost, one.compared.flatCost());
    }

    boolean haveAsGoodAs(Kept one, double kindOver) {
      if (leastFlatCost + kindOver > one.compared.flatCost() + HAIR) {
        return false;
      }
      for (Kept other : kept) {
        if (other.asGoodAs(one, kindOver)) {
          return true;
        }
      }
      return false;
    }
  }

  @Override
  public <T> List<T> of(List<T> all, Function<T, Sum> sum, Set<String> legs, Enough enough) {
    if (all.size() < 2) {
      return all;
    }
    SharedCosts costs = known.computeIfAbsent(legs, beside);
    Map<Integer, OfKind> kinds = new HashMap<>();
    List<T> left = new ArrayList<>();
    for (T one : all.stream().sorted(Comparator.comparing(sum, CHEAPEST_FIRST)).toList()) {
      Kept candidate = Kept.of(sum.apply(one), costs.compared(sum.apply(one).goods()), enough);
      int kind = candidate.compared.kind();
      if (!beaten(candidate, kinds, costs)) {
        kinds.computeIfAbsent(kind, number -> new OfKind()).add(candidate);
        left.add(one);
      }
    }
    return left;
  }

  private static boolean beaten(Kept one, Map<Integer, OfKind> kinds, SharedCosts costs) {
    int kind = one.compared.kind();
    OfKind same = kinds.get(kind);
    if (same != null && same.haveAsGoodAs(one, 0)) {
      return true;
    }
    for (Map.Entry<Integer, OfKind> other : kinds.entrySet()) {
      if (other.getKey() != kind
          && other.getValue().haveAsGoodAs(one, costs.mostOver(other.getKey(), kind))) {
        return true;
      }
    }
    return false;
  }
}
