package hosewright.hydraulics.working;

import static hosewright.hydraulics.working.Working.hundredths;
import static hosewright.hydraulics.working.Working.text;

import hosewright.hydraulics.ApplianceLoss;
import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.ParallelLegs;
import hosewright.hydraulics.TaughtLoss;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.FrictionLaw;
import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.HazenWilliams;
import hosewright.hydraulics.law.Physical;
import hosewright.hydraulics.working.Working.Step;
import java.util.ArrayList;
import java.util.List;

/** The working of what each part of a line takes. */
final class WorkedLoss {
  private WorkedLoss() {}

  /** One step for each part, and one more where it rises. */
  static List<Step> of(List<LineElement> elements, double flowGpm) {
    List<Step> steps = new ArrayList<>();
    for (LineElement element : elements) {
      steps.add(loss(element, flowGpm));
      if (element.riseFt() != 0) {
        steps.add(rise(element));
      }
    }
    return steps;
  }

  private static Step rise(LineElement element) {
    return new Step(
        (element.riseFt() < 0 ? "fall of " : "rise of ") + element.name(),
        "0.434 h",
        text("0.434 x %s", hundredths(element.riseFt())),
        element.riseFt() * Physical.PSI_PER_FT,
        "psi",
        "pump operator course notes; 62.4 lb/ft3 over 144 in2/ft2 is 0.433");
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
      return fitting(fitting, flowGpm, psi);
    }
    if (element instanceof TaughtLoss either) {
      return taught(either, flowGpm, psi);
    }
    if (element instanceof ApplianceLoss appliance) {
      return new Step(
          appliance.name() + eachOf(appliance.parallelLines()),
          "stated loss from its threshold flow on, else 0",
          text(
              psi > 0 ? "%s from %s gpm on, at %s gpm" : "0 of %s below %s gpm, at %s gpm",
              hundredths(appliance.psi()),
              hundredths(appliance.thresholdGpm()),
              hundredths(flowGpm / appliance.parallelLines())),
          psi,
          "psi",
          "the appliance's own figure; threshold by Renton Fire Department hydraulics training");
    }
    return new Step(
        element.name(),
        "pressure a pump adds",
        text("-(%.2f at %s gpm)", -psi, hundredths(flowGpm)),
        psi,
        "psi",
        "the pump's own figure");
  }

  private static Step friction(HoseLeg leg, double flowGpm, double psi) {
    FrictionLaw law = leg.law();
    String formula =
        law instanceof CoefficientLaw
            ? "C (Q/100)^2 (L/100)"
            : law instanceof HazenWilliams
                ? "4.52 L Q^1.85/(C^1.85 d^4.87)"
                : "f (L/D) v^2/2g w/144";
    String source =
        law instanceof CoefficientLaw
            ? Working.TAUGHT
            : law instanceof HazenWilliams
                ? "NFPA 13, friction loss formula"
                : "Darcy and Weisbach; Colebrook 1939";
    return new Step(
        leg.name() + eachOf(leg.parallelLines()),
        formula,
        frictionNumbers(leg, flowGpm),
        psi,
        "psi",
        source);
  }

  /** The law's formula with the numbers of one of the leg's lines. */
  private static String frictionNumbers(HoseLeg leg, double flowGpm) {
    String flow = hundredths(flowGpm / leg.parallelLines());
    String length = hundredths(leg.lengthFt());
    if (leg.law() instanceof CoefficientLaw hose) {
      return text("%s x (%s/100)^2 x (%s/100)", Given.plain(hose.c()), flow, length);
    }
    if (leg.law() instanceof HazenWilliams pipe) {
      return text(
          "4.52 x %s x %s^1.85/(%s^1.85 x %s^4.87)",
          length, flow, Given.plain(pipe.c()), Given.plain(pipe.boreIn()));
    }
    DarcyWeisbach pipe = (DarcyWeisbach) leg.law();
    double velocity = leg.velocityFtPerS(flowGpm);
    double reynolds = pipe.reynolds(velocity);
    double factor =
        flowGpm == 0
            ? 0
            : DarcyWeisbach.frictionFactor(reynolds, pipe.roughnessIn() / pipe.boreIn());
    return text(
        "%.5f x (%s x 12/%s) x %.3f^2/64.35 x %.2f/144, with Re %.0f",
        factor,
        length,
        Given.plain(pipe.boreIn()),
        velocity,
        pipe.water().densityLbPerFt3(),
        reynolds);
  }

  private static Step parallel(ParallelLegs legs, double flowGpm, double psi) {
    double[] flows = legs.flowsGpm(flowGpm);
    StringBuilder shares = new StringBuilder();
    for (int i = 0; i < flows.length; i++) {
      HoseLeg leg = legs.lines().get(i);
      shares.append(
          text(
              "%s%s with %.1f gpm: %s",
              i == 0 ? "" : "; ", leg.name(), flows[i], frictionNumbers(leg, flows[i])));
    }
    return new Step(
        legs.name(),
        "the one loss at which the lines' flows add up to the whole",
        shares.toString(),
        psi,
        "psi",
        "lines between the same two points lose the same; each by its own law");
  }

  private static Step fitting(Fitting fitting, double flowGpm, double psi) {
    double velocity = Physical.velocityFtPerS(flowGpm / fitting.parallelLines(), fitting.boreIn());
    return new Step(
        fitting.name() + eachOf(fitting.parallelLines()),
        "0.434 K v^2/2g",
        text("0.434 x %s x %.2f^2/64.35", Given.plain(fitting.lossCoefficient()), velocity),
        psi,
        "psi",
        fitting.source() + ", on the velocity in " + Given.plain(fitting.boreIn()) + " in");
  }

  /** The larger of the two, and the other beside it. */
  private static Step taught(TaughtLoss either, double flowGpm, double psi) {
    double taughtPsi = either.taught().lossPsi(flowGpm);
    boolean byWaterway = either.waterway().lossPsi(flowGpm) >= taughtPsi;
    Step decides = loss(byWaterway ? either.waterway() : either.taught(), flowGpm);
    String other =
        byWaterway
            ? text("; more than the %.1f psi taught for it at this flow", taughtPsi)
            : text("; its waterway takes %.1f psi", either.waterway().lossPsi(flowGpm));
    return new Step(
        decides.what(),
        decides.formula(),
        decides.numbers(),
        psi,
        decides.unit(),
        decides.source() + other);
  }

  private static String eachOf(int lines) {
    return lines == 1 ? "" : ", each of " + lines + " side by side";
  }
}
