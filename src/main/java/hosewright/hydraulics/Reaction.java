package hosewright.hydraulics;

import hosewright.hydraulics.law.Given;

/**
 * How hard a nozzle pushes back, lbf.
 *
 * <p>Source of both formulas: Montgomery County Fire and Rescue Service, Driver Certification
 * Program, Module 8, Hydraulics References (2019). A nozzle pushes harder while it opens.
 */
public final class Reaction {
  public static final String SOURCE =
      "Montgomery County Fire and Rescue Service, Hydraulics References (2019)";

  private Reaction() {}

  /**
   * Reaction of a solid stream, lbf: {@code 1.57 d² p}, twice the pressure times the area of the
   * tip by the law of momentum.
   *
   * @param tipIn bore of the tip, in
   * @param nozzlePsi pressure at the nozzle, psi
   */
  public static double solidLbf(double tipIn, double nozzlePsi) {
    Given.positive("tip", tipIn, Demand.SmoothBore.LARGEST_TIP_IN, "in");
    Given.between("nozzle pressure", nozzlePsi, 0, 1e6, "psi");
    return 1.57 * tipIn * tipIn * nozzlePsi;
  }

  /**
   * Reaction of a fog stream, lbf: {@code 0.0505 Q √p}.
   *
   * @param flowGpm flow of the nozzle, gpm
   * @param nozzlePsi pressure at the nozzle, psi
   */
  public static double fogLbf(double flowGpm, double nozzlePsi) {
    Given.between("nozzle pressure", nozzlePsi, 0, 1e6, "psi");
    return 0.0505 * Given.flow(flowGpm) * Math.sqrt(nozzlePsi);
  }
}
