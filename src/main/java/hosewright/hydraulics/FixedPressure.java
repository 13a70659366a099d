package hosewright.hydraulics;

import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Physical;

/**
 * A source that holds one pressure at any flow, as a throttled or relief-governed pump does within
 * its capacity.
 *
 * @param psi over 0 up to 2,000
 */
public record FixedPressure(double psi) implements Supply {
  public FixedPressure {
    Given.positive("source pressure", psi, 2_000, "psi");
  }

  @Override
  public double pressurePsi(double flowGpm) {
    Given.flow(flowGpm);
    return psi;
  }

  @Override
  public double closedPsi() {
    return psi;
  }

  @Override
  public double mostFlowGpm() {
    return Physical.MOST_FLOW_GPM;
  }
}
