package hosewright.line.layout;

import hosewright.job.layout.LegJob;
import java.util.Collection;
import java.util.Map;

/**
 * What a round of the search leaves aside.
 *
 * @param width how many ways of each part are kept: the cheapest, and those that need least
 * @param fewDividers whether only the likeliest dividers are tried
 * @param mostCost what a layout already found costs, in the currency's major unit
 * @param mostToSource how many parts it lacks
 * @param leastOfAll what every leg costs at the least, by its name; empty while nobody knows
 */
record Cut(
    int width,
    boolean fewDividers,
    double mostCost,
    int mostToSource,
    Map<String, Least> leastOfAll) {
  /** Far below a cent, far above what adding up prices may lose. */
  private static final double ROUNDING = 1e-4;

  private static final int A_FEW = 6;

  /**
   * What a leg costs at the least.
   *
   * @param line the leg alone
   * @param divider what divides the water behind it
   * @param behind all that begins behind it
   */
  record Least(double line, double divider, double behind) {
    /** The leg and everything behind it. */
    double limb() {
      return line + divider + behind;
    }
  }

  /** Keeps a few ways of each part. */
  static Cut toAFew(boolean fewDividers) {
    return new Cut(A_FEW, fewDividers, Double.POSITIVE_INFINITY, Integer.MAX_VALUE, Map.of());
  }

  /** Keeps all that may be better than a layout found. */
  static Cut below(double mostCost, int mostToSource, Map<String, Least> leastOfAll) {
    return new Cut(Integer.MAX_VALUE, false, mostCost, mostToSource, leastOfAll);
  }

  boolean toAFew() {
    return width < Integer.MAX_VALUE;
  }

  /** What one leg may cost at the most, all others costing the least. */
  double mostOf(LegJob leg) {
    return leastOfAll.isEmpty()
        ? Double.POSITIVE_INFINITY
        : mostCost - ofAll() + leastOfAll.get(leg.name()).line() + ROUNDING;
  }

  /** What a leg with everything behind it costs at the least; zero while nobody knows. */
  double ofLimb(LegJob leg) {
    return leastOfAll.isEmpty() ? 0 : leastOfAll.get(leg.name()).limb();
  }

  /** What divides the water behind a leg costs at the least. */
  double ofDivider(String leg) {
    return leastOfAll.isEmpty() ? 0 : leastOfAll.get(leg).divider();
  }

  /**
   * Whether a part leaves too little for the rest.
   *
   * @param leastOfPart what a part of its extent costs at the least
   */
  boolean tooDear(double leastCost, int toSource, double leastOfPart) {
    return toSource > mostToSource
        || toSource == mostToSource
            && !leastOfAll.isEmpty()
            && leastCost + ofAll() - leastOfPart > mostCost + ROUNDING;
  }

  private double ofAll() {
    Collection<Least> all = leastOfAll.values();
    return all.stream().mapToDouble(one -> one.line() + one.divider()).sum();
  }
}
