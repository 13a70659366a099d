package hosewright.hydraulics.network;

import hosewright.hydraulics.law.Physical;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * One way for water between two places: what pressure a flow takes in it, and what flow a pressure
 * brings. Nothing runs back through it.
 *
 * @param from number of the place it leaves; {@link #OUTSIDE} for a source
 * @param to number of the place it reaches; {@link #OUTSIDE} for an end
 * @param lossPsi pressure at its beginning less pressure at its end, by flow, gpm; never falls
 * @param mostGpm no more flows whatever the pressure
 */
record Arc(int from, int to, DoubleUnaryOperator lossPsi, double mostGpm) {

  /** The air around, at no pressure. */
  static final int OUTSIDE = -1;

  /**
   * A source that holds its pressure takes any flow at it. This much more pressure for each gpm
   * makes the flow follow from the pressure everywhere; at 1,000 gpm it is a hundred thousandth of
   * a psi.
   */
  private static final double LEAN_PSI_PER_GPM = 1e-8;

  private static final int MOST_STEPS = 2_000;

  /** As much as any. */
  static final double ANY_GPM = Physical.MOST_FLOW_GPM;

  /** An arc for what is known at any flow. */
  static Arc of(int from, int to, DoubleUnaryOperator lossPsi) {
    return new Arc(from, to, lossPsi, ANY_GPM);
  }

  double takesPsi(double flowGpm) {
    return lossPsi.applyAsDouble(flowGpm) + LEAN_PSI_PER_GPM * flowGpm;
  }

  /**
   * The flow, gpm, that takes this pressure; 0 where it is too little to run at all. Where a loss
   * sets in at the very flow, just below it.
   */
  double flowGpm(double psi) {
    if (psi <= takesPsi(0)) {
      return 0;
    }
    if (psi >= takesPsi(mostGpm)) {
      return mostGpm;
    }
    double lowGpm = 0;
    double highGpm = Math.min(1, mostGpm);
    while (takesPsi(highGpm) < psi) {
      lowGpm = highGpm;
      highGpm = Math.min(4 * highGpm, mostGpm);
    }
    return new BracketingNthOrderBrentSolver(1e-15, 1e-13, 1e-14, 5)
        .solve(
            MOST_STEPS, flow -> takesPsi(flow) - psi, lowGpm, highGpm, AllowedSolution.LEFT_SIDE);
  }

  /** How many gpm more flow for each psi more, at a flow it has. */
  double gpmPerPsi(double flowGpm) {
    if (flowGpm <= 0 || flowGpm >= mostGpm) {
      return 0;
    }
    double stepGpm = 1e-6 * Math.max(1, flowGpm);
    double lowGpm = Math.max(0, flowGpm - stepGpm);
    double highGpm = Math.min(mostGpm, flowGpm + stepGpm);
    double psi = takesPsi(highGpm) - takesPsi(lowGpm);
    return (highGpm - lowGpm) / Math.max(psi, LEAN_PSI_PER_GPM * (highGpm - lowGpm));
  }
}
