package hosewright.hydraulics;

import hosewright.hydraulics.law.Given;

/**
 * A wye, valve, meter or other appliance in the line whose loss is stated in psi: nothing below its
 * threshold flow, the stated loss from there on.
 *
 * <p>Source: Renton Fire Department hydraulics training: no loss below 350 gpm, 10 psi for each
 * appliance from there on, 25 psi for a master stream appliance.
 *
 * @param name what the user calls it
 * @param thresholdGpm the flow from which it counts, gpm; 0 for always
 * @param psi stated loss, psi
 * @param parallelLines equal lines side by side that each have one
 */
public record ApplianceLoss(String name, double thresholdGpm, double psi, int parallelLines)
    implements LineElement {

  /** Flow from which an appliance's loss is counted where nothing else is said, gpm. */
  public static final double USUAL_THRESHOLD_GPM = 350;

  public ApplianceLoss {
    Given.between("threshold flow", thresholdGpm, 0, 20_000, "gpm");
    Given.between("appliance loss", psi, 0, 2_000, "psi");
    Given.between("parallel lines", parallelLines, 1, 100, "");
  }

  /** An appliance the whole flow passes. */
  public ApplianceLoss(String name, double thresholdGpm, double psi) {
    this(name, thresholdGpm, psi, 1);
  }

  @Override
  public Kind kind() {
    return Kind.APPLIANCE;
  }

  @Override
  public double lossPsi(double flowGpm) {
    double throughOne = Given.flow(flowGpm) / parallelLines;
    return throughOne > 0 && throughOne >= thresholdGpm ? psi : 0;
  }
}
