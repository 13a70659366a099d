package hosewright.hydraulics;

import hosewright.hydraulics.law.Physical;

/**
 * What a leg of a layout is fed with where it begins: one pressure while the flow that is planned
 * runs, another with everything shut. Unlike a source it may have less pressure than none.
 *
 * @param flowingPsi psi gauge at the flow planned
 * @param closedPsi psi gauge with nothing flowing
 */
public record Inlet(double flowingPsi, double closedPsi) implements Supply {

  @Override
  public double pressurePsi(double flowGpm) {
    return flowingPsi;
  }

  @Override
  public double mostFlowGpm() {
    return Physical.MOST_FLOW_GPM;
  }
}
