package hosewright.hydraulics;

import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.Given;
import hosewright.problem.BadInputException;
import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Unequal lines between the same two points: the flow divides so that each loses the same pressure.
 *
 * @param name what the user calls them
 * @param lines two or more, all with the same rise
 */
public record ParallelLegs(String name, List<HoseLeg> lines) implements LineElement {

  public ParallelLegs {
    lines = List.copyOf(lines);
    if (lines.size() < 2) {
      throw new BadInputException("parallel lines", lines.size() + " lines", "give two or more");
    }
    double riseFt = lines.get(0).riseFt();
    for (HoseLeg line : lines) {
      if (line.riseFt() != riseFt) {
        throw Given.refused(
            "rise of " + line.name(),
            line.riseFt(),
            "ft",
            "lines between the same two points rise alike, here " + Given.plain(riseFt) + " ft");
      }
    }
  }

  @Override
  public Kind kind() {
    return Kind.FRICTION;
  }

  /** Length of the shortest line, ft. */
  @Override
  public double lengthFt() {
    return lines.stream().mapToDouble(HoseLeg::lengthFt).min().orElseThrow();
  }

  @Override
  public double riseFt() {
    return lines.get(0).riseFt();
  }

  @Override
  public double lossPsi(double flowGpm) {
    // Any one line alone loses more than all together, so the least of those bounds the answer.
    double mostPsi = Double.POSITIVE_INFINITY;
    for (HoseLeg line : lines) {
      mostPsi = Math.min(mostPsi, line.lossPsi(flowGpm));
    }
    if (mostPsi == 0) {
      return 0;
    }
    double conductance = 0;
    for (HoseLeg line : lines) {
      if (!(line.law() instanceof CoefficientLaw)) {
        return new BracketingNthOrderBrentSolver(1e-14, mostPsi * 1e-13, 5)
            .solve(500, psi -> sharedFlowGpm(psi) - flowGpm, 0, mostPsi * (1 + 1e-9));
      }
      conductance += line.flowGpm(1);
    }
    double root = flowGpm / conductance;
    return root * root;
  }

  /** How a flow divides over the lines, gpm, in their order. */
  public double[] flowsGpm(double flowGpm) {
    double lossPsi = lossPsi(flowGpm);
    return lines.stream().mapToDouble(line -> line.flowGpm(lossPsi)).toArray();
  }

  private double sharedFlowGpm(double lossPsi) {
    double sum = 0;
    for (HoseLeg line : lines) {
      sum += line.flowGpm(lossPsi);
    }
    return sum;
  }
}
