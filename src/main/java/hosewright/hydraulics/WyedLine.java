package hosewright.hydraulics;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A supply line that a wye divides into attack lines of their own.
 *
 * @param trunk source to wye, the wye's own loss included
 * @param branches two or more lines that start at the wye
 */
public record WyedLine(List<LineElement> trunk, List<Branch> branches) {

  private static final double PRESSURE_ACCURACY_PSI = 1e-6;

  /** One line from the wye to its appliance. */
  public record Branch(String name, List<LineElement> elements, Demand demand) {
    public Branch {
      elements = List.copyOf(elements);
    }
  }

  /**
   * The source pressure that feeds every branch its flow.
   *
   * @param wyePsi pressure at the wye: what the branch that needs most needs
   * @param trunk the trunk at the flow of all branches
   * @param branches each branch from the wye, with the pressure it needs there as its source
   * @param gateDownPsi how much each branch must be throttled at the wye, psi
   */
  public record Required(
      double wyePsi, Solution trunk, List<Solution> branches, List<Double> gateDownPsi) {
    /** Pressure at the source, psi. */
    public double sourcePsi() {
      return trunk.sourcePsi();
    }
  }

  /**
   * What a source brings with every branch fully open.
   *
   * @param wyePsi pressure at the wye
   * @param flowGpm flow of all branches, gpm
   * @param sourcePsi what the source gives at it, psi
   * @param trunk losses of the trunk
   * @param branches what arrives in each, with the wye as its source
   */
  public record Arriving(
      double wyePsi, double flowGpm, double sourcePsi, Losses trunk, List<Arrival> branches) {}

  public WyedLine {
    trunk = List.copyOf(trunk);
    branches = List.copyOf(branches);
    if (branches.size() < 2) {
      throw new BadInputException("wye", branches.size() + " branches", "give two or more");
    }
  }

  /**
   * The source pressure the branches need for their flows.
   *
   * @param flowsGpm one for each branch, in their order
   */
  public Required required(List<Double> flowsGpm) {
    if (flowsGpm.size() != branches.size()) {
      throw new BadInputException(
          "flows",
          flowsGpm.toString(),
          "give one for each of the " + branches.size() + " branches");
    }
    List<Solution> solutions = new ArrayList<>();
    double wyePsi = 0;
    double totalGpm = 0;
    for (int i = 0; i < branches.size(); i++) {
      Branch branch = branches.get(i);
      Solution one = LineHydraulics.required(branch.elements(), flowsGpm.get(i), branch.demand());
      solutions.add(one);
      wyePsi = Math.max(wyePsi, one.sourcePsi());
      totalGpm += flowsGpm.get(i);
    }
    double atWyePsi = wyePsi;
    return new Required(
        atWyePsi,
        LineHydraulics.required(trunk, totalGpm, atWyePsi),
        List.copyOf(solutions),
        solutions.stream().map(one -> atWyePsi - one.sourcePsi()).toList());
  }

  /**
   * The flows a source brings with every branch open: the wye pressure at which the branches take
   * just what the trunk brings.
   *
   * @throws BadInputException when the source does not lift water to the wye
   */
  public Arriving arriving(Supply supply) {
    Losses closed = LineHydraulics.losses(trunk, 0);
    double mostPsi = supply.closedPsi() - closed.totalPsi();
    if (!(mostPsi > 0 && mostPsi <= 2_000)) {
      String given = String.format(Locale.ROOT, "%.1f psi", mostPsi);
      throw new BadInputException(
          List.of(
              Problem.of(
                  "pressure at the wye with nothing flowing",
                  given,
                  "over 0 up to 2000 psi, or no water reaches the branches")));
    }
    // Higher wye pressure, more flow, less arriving: the spare pressure falls throughout.
    double wyePsi =
        new BracketingNthOrderBrentSolver(1e-14, PRESSURE_ACCURACY_PSI, 1e-10, 5)
            .solve(
                1_000,
                psi -> sparePsi(supply, psi),
                0,
                mostPsi * (1 + 1e-9),
                AllowedSolution.LEFT_SIDE);
    List<Arrival> arrivals = arrivals(wyePsi);
    double flowGpm = totalGpm(arrivals);
    return new Arriving(
        wyePsi,
        flowGpm,
        supply.pressurePsi(flowGpm),
        LineHydraulics.losses(trunk, flowGpm),
        arrivals);
  }

  private double sparePsi(Supply supply, double wyePsi) {
    double flowGpm = totalGpm(arrivals(wyePsi));
    return supply.pressurePsi(flowGpm) - LineHydraulics.lossPsi(trunk, flowGpm) - wyePsi;
  }

  private List<Arrival> arrivals(double wyePsi) {
    // A wye without pressure feeds nothing, but a source must have some: one too small to matter.
    Supply wye = new FixedPressure(Math.max(wyePsi, 1e-9));
    return branches.stream()
        .map(branch -> LineHydraulics.arriving(branch.elements(), wye, branch.demand()))
        .toList();
  }

  private static double totalGpm(List<Arrival> arrivals) {
    return arrivals.stream().mapToDouble(Arrival::flowGpm).sum();
  }
}
