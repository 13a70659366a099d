package hosewright.hydraulics;

import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Physical;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * A pump known by points of its curve, joined by straight lines. Past the last point it is taken to
 * give nothing, since nobody has said that it does.
 *
 * @param points two or more, flow rising from 0 gpm (shut-off), pressure never rising
 */
public record PumpCurve(List<Point> points) implements Supply {

  /** One point of a curve. */
  public record Point(double flowGpm, double psi) {}

  public PumpCurve {
    points = List.copyOf(points);
    List<Problem> problems = problems(points);
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  @Override
  public double pressurePsi(double flowGpm) {
    Given.flow(flowGpm);
    for (int i = 1; i < points.size(); i++) {
      Point right = points.get(i);
      if (flowGpm <= right.flowGpm) {
        Point left = points.get(i - 1);
        double share = (flowGpm - left.flowGpm) / (right.flowGpm - left.flowGpm);
        return left.psi * (1 - share) + right.psi * share;
      }
    }
    return 0;
  }

  @Override
  public double closedPsi() {
    return points.get(0).psi;
  }

  @Override
  public double mostFlowGpm() {
    return points.get(points.size() - 1).flowGpm;
  }

  private static List<Problem> problems(List<Point> points) {
    List<Problem> problems = new ArrayList<>();
    if (points.size() < 2) {
      problems.add(Problem.of("pump curve", points.size() + " points", "give two points or more"));
    }
    for (int i = 0; i < points.size(); i++) {
      Point point = points.get(i);
      Point before = i == 0 ? null : points.get(i - 1);
      String field = "pump curve point " + (i + 1);
      String given = Given.plain(point.flowGpm) + " gpm at " + Given.plain(point.psi) + " psi";
      if (!(point.flowGpm >= 0 && point.flowGpm <= Physical.MOST_FLOW_GPM)
          || !(point.psi >= 0 && point.psi <= 2_000)) {
        problems.add(
            Problem.of(field, given, "flow is 0 up to 100000 gpm and pressure 0 up to 2000 psi"));
      } else if (before == null && point.flowGpm != 0) {
        problems.add(
            Problem.of(
                field,
                given,
                "the first point is the shut-off pressure, at 0 gpm: the line stands under it when"
                    + " the nozzle is shut"));
      } else if (before != null && !(point.flowGpm > before.flowGpm)) {
        problems.add(Problem.of(field, given, "flow rises from point to point"));
      } else if (before != null && point.psi > before.psi) {
        problems.add(Problem.of(field, given, "pressure never rises with flow"));
      }
    }
    return problems;
  }
}
