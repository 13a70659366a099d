package hosewright.line.search;

import hosewright.line.assembly.Assembly;
import hosewright.line.model.Hydraulics;
import org.joda.money.Money;

/**
 * What a buyer would have less of, in units as they are printed: what looks the same is the same.
 *
 * @param cents goods subtotal, in the currency's minor unit
 * @param tenthsPsi pressure the source must hold, tenths of a psi; where a source is stated, less
 *     of it is as much more delivered
 * @param chargedLb weight of all hose full of water, lb
 * @param sections sections to couple
 */
record TradeOff(long cents, long tenthsPsi, long chargedLb, int sections) {
  /** Far below a tenth of a psi, far above what adding up losses may lose. */
  private static final double ROUNDING = 1e-6;

  static TradeOff of(Evaluated plan) {
    return of(plan.total(), plan.hydraulics(), plan.assembly());
  }

  static TradeOff of(Money total, Hydraulics hydraulics, Assembly line) {
    return new TradeOff(
        total.getAmountMinorLong(),
        Math.round(10 * hydraulics.requiredSourcePsi()),
        Math.round(hydraulics.chargedWeightLb()),
        line.sections());
  }

  /**
   * What no plan can undercut.
   *
   * @param leastCost the least such plans can cost, in the currency's major unit
   * @param centsPerUnit minor units in a major one
   * @param leastPsi the least their source must hold, psi
   */
  static TradeOff atLeast(
      double leastCost, int centsPerUnit, double leastPsi, double chargedLb, int sections) {
    return new TradeOff(
        (long) Math.ceil(leastCost * centsPerUnit - ROUNDING * centsPerUnit),
        Math.round(10 * (leastPsi - ROUNDING)),
        Math.round(chargedLb - ROUNDING),
        sections);
  }

  /** Whether it asks for no more of anything. */
  boolean asGoodAs(TradeOff other) {
    return cents <= other.cents
        && tenthsPsi <= other.tenthsPsi
        && chargedLb <= other.chargedLb
        && sections <= other.sections;
  }
}
