package hosewright.hydraulics;

import hosewright.hydraulics.law.FrictionLaw;
import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Physical;

/**
 * A pump in the line that adds pressure to what arrives at it. The stations before it must keep a
 * positive intake pressure, which the caller checks on the profile.
 *
 * @param name what the user calls it
 * @param boost pressure it adds at a flow, above its intake
 */
public record RelayPump(String name, Supply boost) implements LineElement {

  /** Least intake pressure a relay pump is run at, psi. */
  public static final double LEAST_INTAKE_PSI = StatedLimit.named("relay intake");

  @Override
  public Kind kind() {
    return Kind.PUMP;
  }

  @Override
  public double lossPsi(double flowGpm) {
    return -boost.pressurePsi(flowGpm);
  }

  @Override
  public double closedBoostPsi() {
    return boost.closedPsi();
  }

  /**
   * The longest hose between two relay pumps, ft: what is left of the discharge pressure above the
   * next pump's least intake, over the loss per foot and the rise.
   *
   * @param dischargePsi pressure at the first pump's outlet, psi
   * @param law friction of the hose between
   * @param flowGpm over 0
   * @param riseFt total height gained, ft
   * @return 0 when the rise alone takes it all
   */
  public static double spacingFt(
      double dischargePsi, FrictionLaw law, double flowGpm, double riseFt) {
    Given.positive("discharge pressure", dischargePsi, 2_000, "psi");
    Given.positive("flow", flowGpm, Physical.MOST_FLOW_GPM, "gpm");
    Given.between("rise", riseFt, -10_000, 10_000, "ft");
    double left = dischargePsi - LEAST_INTAKE_PSI - riseFt * Physical.PSI_PER_FT;
    return Math.max(0, left) / law.lossPsi(flowGpm, 1);
  }
}
