package hosewright.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes out how an answer was reached, so that an engineer can check it by hand. */
public final class Working {
  private static final String TAUGHT = "City of Rohnert Park training slides";

  private Working() {}

  /**
   * One line of the working.
   *
   * @param what the part or the quantity
   * @param formula in symbols
   * @param numbers the same with the numbers put in
   * @param psi the result, psi
   * @param source where the formula comes from
   */
  public record Step(String what, String formula, String numbers, double psi, String source) {
    /** The step on one line. */
    public String sentence() {
      return text(
          "%s: %s = %s = %s psi [%s]", what, formula, numbers, Given.plain(round(psi)), source);
    }

    private static double round(double psi) {
      return Math.round(psi * 100) / 100.0;
    }
  }

  /** Every part's loss, the rise, and the sum, from appliance need to source pressure. */
  public static List<Step> of(Solution solution) {
    List<Step> steps = new ArrayList<>();
    StringBuilder sum = new StringBuilder(text("%.2f", solution.needPsi()));
    for (LineElement element : solution.elements()) {
      Step step = loss(element, solution.flowGpm());
      steps.add(step);
      sum.append(text(" %s %.2f", step.psi() < 0 ? "-" : "+", Math.abs(step.psi())));
      if (element.riseFt() != 0) {
        double psi = element.riseFt() * Physical.PSI_PER_FT;
        steps.add(
            new Step(
                "rise of " + element.name(),
                "0.434 h",
                text("0.434 x %s", Given.plain(element.riseFt())),
                psi,
                "pump operator course notes; 62.4 lb/ft3 over 144 in2/ft2 is 0.433"));
        sum.append(text(" %s %.2f", psi < 0 ? "-" : "+", Math.abs(psi)));
      }
    }
    steps.add(
        new Step(
            "pressure at the source",
            "need + losses + rise",
            sum.toString(),
            solution.sourcePsi(),
            TAUGHT));
    return steps;
  }

  private static Step loss(LineElement element, double flowGpm) {
    double psi = element.lossPsi(flowGpm);
    if (element instanceof HoseLeg leg) {
      return friction(leg, flowGpm, psi);
    }
    if (element instanceof ParallelLegs legs) {
      return parallel(legs, flowGpm, psi);
    }
    if (element instanceof Fitting fitting) {
      double velocity =
          Physical.velocityFtPerS(flowGpm / fitting.parallelLines(), fitting.boreIn());
      return new Step(
          fitting.name(),
          "0.434 K v^2/2g",
          text("0.434 x %s x %.2f^2/64.35", Given.plain(fitting.lossCoefficient()), velocity),
          psi,
          "loss coefficient on the velocity in " + Given.plain(fitting.boreIn()) + " in");
    }
    if (element instanceof ApplianceLoss appliance) {
      return new Step(
          appliance.name(),
          "stated loss from its threshold flow on, else 0",
          text(
              "%s psi from %s gpm, at %s gpm",
              Given.plain(appliance.psi()),
              Given.plain(appliance.thresholdGpm()),
              Given.plain(flowGpm / appliance.parallelLines())),
          psi,
          "the appliance's own figure, or common practice, no source");
    }
    return new Step(
        element.name(),
        "pressure a pump adds",
        text("-(%.2f at %s gpm)", -psi, Given.plain(flowGpm)),
        psi,
        "the pump's own figure");
  }

  private static Step friction(HoseLeg leg, double flowGpm, double psi) {
    String flow = Given.plain(flowGpm / leg.parallelLines());
    String length = Given.plain(leg.lengthFt());
    FrictionLaw law = leg.law();
    if (law instanceof CoefficientLaw hose) {
      return new Step(
          leg.name(),
          "C (Q/100)^2 (L/100)",
          text("%s x (%s/100)^2 x (%s/100)", Given.plain(hose.c()), flow, length),
          psi,
          TAUGHT);
    }
    if (law instanceof HazenWilliams pipe) {
      return new Step(
          leg.name(),
          "4.52 L Q^1.85/(C^1.85 d^4.87)",
          text(
              "4.52 x %s x %s^1.85/(%s^1.85 x %s^4.87)",
              length, flow, Given.plain(pipe.c()), Given.plain(pipe.boreIn())),
          psi,
          "NFPA 13, friction loss formula");
    }
    return darcy(leg, (DarcyWeisbach) law, flowGpm, psi);
  }

  private static Step darcy(HoseLeg leg, DarcyWeisbach pipe, double flowGpm, double psi) {
    double velocity = leg.velocityFtPerS(flowGpm);
    double reynolds = pipe.reynolds(velocity);
    double factor = DarcyWeisbach.frictionFactor(reynolds, pipe.roughnessIn() / pipe.boreIn());
    return new Step(
        leg.name(),
        "f (L/D) v^2/2g w/144",
        text(
            "%.5f x (%s x 12/%s) x %.3f^2/64.35 x %.2f/144, with Re %.0f",
            factor,
            Given.plain(leg.lengthFt()),
            Given.plain(pipe.boreIn()),
            velocity,
            pipe.water().densityLbPerFt3(),
            reynolds),
        psi,
        "Darcy and Weisbach; Colebrook 1939");
  }

  private static Step parallel(ParallelLegs legs, double flowGpm, double psi) {
    double[] flows = legs.flowsGpm(flowGpm);
    StringBuilder shares = new StringBuilder();
    for (int i = 0; i < flows.length; i++) {
      shares.append(
          text("%s%s %.1f gpm", i == 0 ? "" : ", ", legs.lines().get(i).name(), flows[i]));
    }
    return new Step(
        legs.name(),
        "the loss at which the lines' flows add up",
        shares.toString(),
        psi,
        "equal loss");
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
