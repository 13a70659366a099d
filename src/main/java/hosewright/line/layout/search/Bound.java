package hosewright.line.layout.search;

/**
 * The most that a layout may cost at the least prices of its parts, and lack.
 *
 * @param cost in the currency's major unit; infinite for any
 * @param toSource how many parts may have no price
 */
public record Bound(double cost, int toSource) {
  static final Bound NONE = new Bound(Double.POSITIVE_INFINITY, Integer.MAX_VALUE);

  /** Far below a cent, far above what adding up prices may lose. */
  private static final double ROUNDING = 1e-4;

  /** With so much more, where what it bounds counts that as well. */
  Bound with(double more) {
    return new Bound(cost + more, toSource);
  }

  public boolean allows(double leastCost) {
    return leastCost <= cost + ROUNDING && leastCost < Double.POSITIVE_INFINITY;
  }

  public boolean allows(double leastCost, int lacks) {
    return allows(leastCost) && lacks <= toSource;
  }

  /** What is left for a part where all else costs so much at the least. */
  double leftBeside(double others) {
    return cost + ROUNDING - others;
  }
}
