package hosewright.hydraulics;

import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Physical;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * A hydrant known by its flow test. The main follows {@code Q = Qt ((static - p)/(static -
 * residual))^0.54}; between main and outlet stands the hydrant, whose loss grows with the square of
 * the flow.
 *
 * <p>Source: NFPA 291, flow at a residual pressure, exponent 0.54.
 *
 * @param staticPsi with nothing flowing, psi, up to 500
 * @param residualPsi in the main at the test flow, psi, below static
 * @param atFlowGpm the test flow, gpm
 * @param hydrantLossPsi between main and outlet at the test flow, psi; 0 when unknown, which the
 *     caller should warn about
 */
public record Hydrant(double staticPsi, double residualPsi, double atFlowGpm, double hydrantLossPsi)
    implements Supply {

  /** No main is drawn down further. */
  public static final double LEAST_MAIN_PSI = StatedLimit.named("hydrant residual");

  /** A test that draws the main down by less of its static pressure tells nothing. */
  private static final double TEST_DROP = StatedLimit.named("hydrant test drop");

  private static final double EXPONENT = 0.54;

  public Hydrant {
    List<Problem> problems = new ArrayList<>();
    if (!(staticPsi >= 1e-6 && staticPsi <= 500)) {
      problems.add(problem("static pressure", staticPsi, "psi", "over 0 up to 500 psi"));
    }
    if (!(residualPsi >= 0 && residualPsi < staticPsi)) {
      String allowed =
          "the main's pressure drops when water flows, so it is from 0 to below the static "
              + Given.plain(staticPsi)
              + " psi; if the two readings are swapped, exchange them";
      problems.add(problem("residual pressure", residualPsi, "psi", allowed));
    }
    if (!(atFlowGpm >= 1e-6 && atFlowGpm <= 20_000)) {
      problems.add(problem("test flow", atFlowGpm, "gpm", "over 0 up to 20000 gpm"));
    }
    if (!(hydrantLossPsi >= 0 && hydrantLossPsi <= 200)) {
      problems.add(problem("hydrant loss", hydrantLossPsi, "psi", "from 0 up to 200 psi"));
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  /** A hydrant whose own loss is not known. */
  public Hydrant(double staticPsi, double residualPsi, double atFlowGpm) {
    this(staticPsi, residualPsi, atFlowGpm, 0);
  }

  /**
   * Flow of an open outlet, gpm, by a pitot gauge in its stream: {@code 29.83 c d² √p} (NFPA 291).
   *
   * @param coefficient 0.90 smooth and rounded outlet, 0.80 square, 0.70 projecting into the barrel
   * @param outletIn inside diameter of the outlet, in
   * @param pitotPsi velocity pressure read, psi
   */
  public static double pitotFlowGpm(double coefficient, double outletIn, double pitotPsi) {
    Given.between("outlet coefficient", coefficient, 0.5, 1, "");
    Given.positive("outlet diameter", outletIn, 12, "in");
    Given.positive("pitot pressure", pitotPsi, 200, "psi");
    return 29.83 * coefficient * outletIn * outletIn * Math.sqrt(pitotPsi);
  }

  /** Pressure left in the main at a flow, psi; below 0 where the main cannot give that flow. */
  public double mainPsi(double flowGpm) {
    return staticPsi
        - (staticPsi - residualPsi) * Math.pow(Given.flow(flowGpm) / atFlowGpm, 1 / EXPONENT);
  }

  /**
   * The flow that draws the main down to a pressure, gpm.
   *
   * @param mainPsi 0 up to the static pressure
   */
  public double flowGpmAt(double mainPsi) {
    Given.between("residual pressure", mainPsi, 0, staticPsi, "psi");
    return atFlowGpm * Math.pow((staticPsi - mainPsi) / (staticPsi - residualPsi), EXPONENT);
  }

  /** Whether the test drew the main down far enough to tell anything. */
  public boolean testDrewEnough() {
    return staticPsi - residualPsi >= TEST_DROP * staticPsi;
  }

  @Override
  public double pressurePsi(double flowGpm) {
    double share = flowGpm / atFlowGpm;
    return mainPsi(flowGpm) - hydrantLossPsi * share * share;
  }

  @Override
  public double closedPsi() {
    return staticPsi;
  }

  @Override
  public double mostFlowGpm() {
    return Math.min(flowGpmAt(0), Physical.MOST_FLOW_GPM);
  }

  private static Problem problem(String field, double value, String unit, String allowed) {
    return Problem.of(field, Given.plain(value) + " " + unit, allowed);
  }
}
