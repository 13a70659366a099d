package hosewright.hydraulics;

/**
 * What a pump in the line does to pressure at one flow. Its relief valve, where it has one, lets no
 * more than its setting stand behind it, flowing or shut.
 *
 * @param addsPsi what it adds to its intake at that flow, psi
 * @param churnPsi what it adds with nothing flowing, psi
 * @param leastIntakePsi what its intake must keep while it flows, psi gauge
 * @param reliefPsi setting of its relief valve, psi gauge; infinite where it has none
 */
public record Boost(double addsPsi, double churnPsi, double leastIntakePsi, double reliefPsi) {
  private static final double HAIR_PSI = 1e-6;

  /**
   * A pump at a flow.
   *
   * @param reliefPsi infinite where it has no relief valve
   */
  public static Boost of(Supply curve, double flowGpm, double leastIntakePsi, double reliefPsi) {
    return new Boost(curve.pressurePsi(flowGpm), curve.closedPsi(), leastIntakePsi, reliefPsi);
  }

  /** What stands at its outlet while it flows, psi. */
  public double outletPsi(double intakePsi) {
    return Math.min(intakePsi + addsPsi, reliefPsi);
  }

  /** What stands at its outlet with nothing flowing: intake and churn, or its relief setting. */
  public double closedOutletPsi(double closedIntakePsi) {
    return Math.min(closedIntakePsi + churnPsi, reliefPsi);
  }

  /** What must stand at its intake so that as much stands behind it, psi. */
  public double neededIntakePsi(double neededOutletPsi) {
    return Math.max(leastIntakePsi, neededOutletPsi - addsPsi);
  }

  /**
   * The most that may stand at its intake with nothing flowing, psi.
   *
   * @param bearsPsi the most that what lies behind it bears
   */
  public double bearsAtIntakePsi(double bearsPsi) {
    return reliefPsi <= bearsPsi + HAIR_PSI ? Double.POSITIVE_INFINITY : bearsPsi - churnPsi;
  }

  /** Whether its relief valve stays shut at what is needed behind it. */
  public boolean relieves(double neededOutletPsi) {
    return neededOutletPsi > reliefPsi + HAIR_PSI;
  }
}
