package hosewright.line.layout;

import hosewright.line.goods.Goods;
import hosewright.line.goods.SharedCosts;
import java.util.Comparator;

/**
 * What a part of a layout adds up to, seen from where it begins.
 *
 * @param leastCost its goods at their least prices: those of parts add up, in the currency's major
 *     unit
 * @param toSource how many of its parts have no price
 * @param needsPsi pressure it needs there, psi
 * @param bearsPsi the highest pressure with nothing flowing that it stands there, psi
 */
record Sum(Goods goods, double leastCost, int toSource, double needsPsi, double bearsPsi) {
  static final Comparator<Sum> CHEAPEST_FIRST =
      Comparator.comparingInt(Sum::toSource).thenComparingDouble(Sum::leastCost);
  static final Comparator<Sum> LEAST_NEED_FIRST =
      Comparator.comparingDouble(Sum::needsPsi).thenComparing(CHEAPEST_FIRST);

  private static final double HAIR = 1e-9;

  /** Whether it needs no more, bears no less, and is never dearer whatever else is bought. */
  boolean asGoodAs(Sum other, SharedCosts costs) {
    return toSource <= other.toSource
        && needsPsi <= other.needsPsi + HAIR
        && bearsPsi >= other.bearsPsi - HAIR
        && costs.mostOver(goods, other.goods) <= HAIR;
  }
}
