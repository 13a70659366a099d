package hosewright.hydraulics.working;

import hosewright.hydraulics.Arrival;
import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Solution;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.Given;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes out how an answer was reached, so that an engineer can check it by hand. */
public final class Working {
  static final String TAUGHT = "City of Rohnert Park training slides, Calculating Friction Loss";

  private Working() {}

  /**
   * One line of the working. Formulas are in US units, as they are taught.
   *
   * @param what the part or the quantity
   * @param formula in symbols
   * @param numbers the same with the numbers put in
   * @param result what comes out
   * @param unit unit of the result, for example psi
   * @param source where the formula comes from
   */
  public record Step(
      String what, String formula, String numbers, double result, String unit, String source) {
    /** The step on one line. */
    public String sentence() {
      return text("%s: %s = %s = %s %s [%s]", what, formula, numbers, rounded(), unit, source);
    }

    /** The result to a hundredth, without zeros that say nothing. */
    public String rounded() {
      return hundredths(result);
    }
  }

  /** Every part's loss, the rise, and the sum, from appliance need to source pressure. */
  public static List<Step> of(Solution solution) {
    List<Step> steps = WorkedLoss.of(solution.elements(), solution.flowGpm());
    StringBuilder sum = new StringBuilder(text("%.2f", solution.needPsi()));
    for (Step step : steps) {
      sum.append(text(" %s %.2f", step.result() < 0 ? "-" : "+", Math.abs(step.result())));
    }
    steps.add(
        new Step(
            "pressure at the source",
            "need + losses + rise",
            sum.toString(),
            solution.sourcePsi(),
            "psi",
            TAUGHT));
    return steps;
  }

  /** What the source gives, every part's loss, what is left, and what the appliance takes of it. */
  public static List<Step> of(Arrival arrival, Demand demand) {
    List<Step> steps = new ArrayList<>(supply(arrival.supply(), arrival.flowGpm()));
    List<Step> losses = WorkedLoss.of(arrival.elements(), arrival.flowGpm());
    StringBuilder rest = new StringBuilder(text("%.2f", arrival.pressures().sourcePsi()));
    for (Step step : losses) {
      rest.append(text(" %s %.2f", step.result() < 0 ? "+" : "-", Math.abs(step.result())));
    }
    steps.addAll(losses);
    steps.add(
        new Step(
            "pressure that arrives",
            "source - losses - rise",
            rest.toString(),
            arrival.pressures().deliveredPsi(),
            "psi",
            TAUGHT));
    steps.add(WorkedEnds.demand(demand, arrival.flowGpm()));
    return steps;
  }

  /** What a source gives at a flow. */
  public static List<Step> supply(Supply supply, double flowGpm) {
    return WorkedEnds.supply(supply, flowGpm);
  }

  /** The number to a hundredth, without zeros that say nothing. */
  static String hundredths(double value) {
    return Given.plain(Math.round(value * 100) / 100.0);
  }

  static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
