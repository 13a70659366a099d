package hosewright.line.search;

import java.util.Comparator;
import org.joda.money.Money;

/**
 * What a line costs beside how many of its parts would have to be sourced: a line that can be
 * bought whole is never beaten by one that cannot, whatever either costs.
 *
 * @param units of the currency's major unit
 */
record RankedCost(int toSource, double units) implements Comparable<RankedCost> {
  private static final Comparator<RankedCost> FEWEST_TO_SOURCE_FIRST =
      Comparator.comparingInt(RankedCost::toSource).thenComparingDouble(RankedCost::units);

  /** Dearer than any line. */
  static final RankedCost NONE = new RankedCost(Integer.MAX_VALUE, Double.POSITIVE_INFINITY);

  static RankedCost of(int partsToSource, Money total) {
    return new RankedCost(partsToSource, total.getAmount().doubleValue());
  }

  RankedCost plus(double more) {
    return new RankedCost(toSource, units + more);
  }

  /** The most that a line with so many parts to source may cost that is not to be dearer. */
  double leftFor(int parts) {
    return parts < toSource
        ? Double.POSITIVE_INFINITY
        : parts > toSource ? Double.NEGATIVE_INFINITY : units;
  }

  @Override
  public int compareTo(RankedCost other) {
    return FEWEST_TO_SOURCE_FIRST.compare(this, other);
  }
}
