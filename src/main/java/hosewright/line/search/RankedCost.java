package hosewright.line.search;

import org.joda.money.Money;

/**
 * What a line costs, in the currency's major unit, with so much for each part to be sourced that no
 * price outweighs it: a line that can be bought whole is never beaten by one that cannot.
 */
final class RankedCost {
  /** Above the price of any line; its sums keep a thousandth of a unit. */
  static final double EACH_TO_SOURCE = 1e9;

  private RankedCost() {}

  static double of(int partsToSource, Money total) {
    return partsToSource * EACH_TO_SOURCE + total.getAmount().doubleValue();
  }
}
