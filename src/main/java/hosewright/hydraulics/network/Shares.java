package hosewright.hydraulics.network;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** How a flow divides over lines between the same two places: so that each loses as much. */
public final class Shares {
  private static final int MOST_STEPS = 500;
  private static final double CLOSE_GPM = 1e-9;

  private Shares() {}

  /**
   * The flow of each line, gpm, in their order. Where a loss sets in at the very flow, just on one
   * side of it.
   *
   * @param lossPsi of each line by its flow, the rise included; none falls as flow grows
   */
  public static double[] gpm(List<DoubleUnaryOperator> lossPsi, double wholeGpm) {
    double[] shares = new double[lossPsi.size()];
    divide(lossPsi, 0, wholeGpm, shares);
    return shares;
  }

  /** Divides a flow over the lines from one of them on. */
  private static void divide(
      List<DoubleUnaryOperator> lossPsi, int first, double gpm, double[] shares) {
    if (first == lossPsi.size() - 1) {
      shares[first] = gpm;
      return;
    }
    shares[first] = ofFirst(lossPsi, first, gpm);
    divide(lossPsi, first + 1, gpm - shares[first], shares);
  }

  private static double ofFirst(List<DoubleUnaryOperator> lossPsi, int first, double gpm) {
    DoubleUnaryOperator one = lossPsi.get(first);
    DoubleUnaryOperator over =
        flow -> one.applyAsDouble(flow) - together(lossPsi, first + 1, gpm - flow);
    if (over.applyAsDouble(0) >= 0) {
      return 0;
    }
    if (over.applyAsDouble(gpm) <= 0) {
      return gpm;
    }
    return new BracketingNthOrderBrentSolver(1e-14, CLOSE_GPM, 1e-12, 5)
        .solve(MOST_STEPS, over::applyAsDouble, 0, gpm, AllowedSolution.ANY_SIDE);
  }

  /** What the lines from one of them on lose together at a flow. */
  private static double together(List<DoubleUnaryOperator> lossPsi, int first, double gpm) {
    double flow = first == lossPsi.size() - 1 ? gpm : ofFirst(lossPsi, first, gpm);
    return flow > 0 || first == lossPsi.size() - 1
        ? lossPsi.get(first).applyAsDouble(flow)
        : together(lossPsi, first + 1, gpm);
  }
}
