package hosewright.line.layout.search;

import hosewright.line.goods.Goods;
import hosewright.line.search.LegWays.Way;
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
public record Sum(Goods goods, double leastCost, int toSource, double needsPsi, double bearsPsi) {
  public static final Comparator<Sum> CHEAPEST_FIRST =
      Comparator.comparingInt(Sum::toSource).thenComparingDouble(Sum::leastCost);
  static final Comparator<Sum> LEAST_NEED_FIRST =
      Comparator.comparingDouble(Sum::needsPsi).thenComparing(CHEAPEST_FIRST);

  /**
   * A leg's line alone.
   *
   * @param needsPsi what it needs where it begins, psi
   */
  static Sum of(Way way, double needsPsi) {
    return new Sum(way.goods(), way.leastCost(), way.toSource(), needsPsi, way.levels().bearsPsi());
  }

  /** The same with another pressure that it bears. */
  Sum bearing(double otherPsi) {
    return new Sum(goods, leastCost, toSource, needsPsi, otherPsi);
  }

  /**
   * A line with what lies behind it.
   *
   * @param risePsi how much less stands on what lies behind, psi
   */
  Sum before(Sum behind, double risePsi) {
    return new Sum(
        goods.and(behind.goods),
        leastCost + behind.leastCost,
        toSource + behind.toSource,
        needsPsi,
        Math.min(bearsPsi, behind.bearsPsi + risePsi));
  }

  /**
   * With a part that begins at the same place.
   *
   * @param lossPsi what is lost on the way to it, psi
   */
  Sum beside(Sum other, double lossPsi) {
    return new Sum(
        goods.and(other.goods),
        leastCost + other.leastCost,
        toSource + other.toSource,
        Math.max(needsPsi, other.needsPsi + lossPsi),
        Math.min(bearsPsi, other.bearsPsi));
  }
}
