package hosewright.hydraulics.suction;

import hosewright.hydraulics.law.Physical;
import java.util.OptionalDouble;

/**
 * A pump that draws its water from below: how much lift and loss together it bears.
 *
 * @param liftFt height of the pump above the water, ft
 * @param altitudeFt height of the place above the sea, ft
 * @param waterF how warm the water is, °F
 * @param npshRequiredFt net positive suction head its maker states for the flow, ft; empty where
 *     that is not known
 */
public record Drafting(
    double liftFt, double altitudeFt, double waterF, OptionalDouble npshRequiredFt) {

  /** What the atmosphere could hold, ft: no lift and loss together come to more. */
  public double limitFt() {
    return Suction.limitFt(altitudeFt, waterF);
  }

  /**
   * The most that lift and loss may come to together, ft: what leaves the pump the head it needs,
   * or the dependable share of the limit where nobody stated one.
   */
  public double mostFt() {
    return npshRequiredFt.isPresent()
        ? limitFt() - npshRequiredFt.getAsDouble()
        : Suction.dependableLiftFt(altitudeFt, waterF);
  }

  /** The least that may stand at the pump's intake, psi gauge: below 0 by what it draws. */
  public double leastIntakePsi() {
    return -mostFt() * Physical.PSI_PER_FT;
  }

  /** Lift and loss together, ft. */
  public double drawnFt(double intakePsi) {
    return -intakePsi / Physical.PSI_PER_FT;
  }

  /** Net positive suction head available at the pump, ft. */
  public double npshAvailableFt(double intakePsi) {
    return limitFt() - drawnFt(intakePsi);
  }

  /** The lift that still works with as much lost as now, ft. */
  public double workingLiftFt(double intakePsi) {
    return liftFt + mostFt() - drawnFt(intakePsi);
  }
}
