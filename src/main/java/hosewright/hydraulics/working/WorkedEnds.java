package hosewright.hydraulics.working;

import static hosewright.hydraulics.law.Given.plain;
import static hosewright.hydraulics.working.Working.hundredths;
import static hosewright.hydraulics.working.Working.text;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Hydrant;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.Physical;
import hosewright.hydraulics.working.Working.Step;
import java.util.ArrayList;
import java.util.List;

/** The working of what a source gives and what an appliance takes. */
final class WorkedEnds {
  private static final String AT_THE_SOURCE = "the source gives";

  private WorkedEnds() {}

  static List<Step> supply(Supply supply, double flowGpm) {
    if (supply instanceof Hydrant hydrant) {
      return hydrant(hydrant, flowGpm);
    }
    if (supply instanceof PumpCurve pump) {
      return List.of(pump(pump, flowGpm));
    }
    double psi = supply.pressurePsi(flowGpm);
    return List.of(
        new Step(
            AT_THE_SOURCE, "P", text("%s at any flow", hundredths(psi)), psi, "psi", "as stated"));
  }

  private static List<Step> hydrant(Hydrant hydrant, double flowGpm) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            "the main holds",
            "S - (S - R)(Q/Qt)^(1/0.54)",
            text(
                "%s - (%s - %s) x (%s/%s)^1.852",
                hundredths(hydrant.staticPsi()),
                hundredths(hydrant.staticPsi()),
                hundredths(hydrant.residualPsi()),
                hundredths(flowGpm),
                hundredths(hydrant.atFlowGpm())),
            hydrant.mainPsi(flowGpm),
            "psi",
            "NFPA 291, flow at a residual pressure, exponent 0.54"));
    double psi = hydrant.pressurePsi(flowGpm);
    steps.add(
        new Step(
            AT_THE_SOURCE,
            "main - h (Q/Qt)^2",
            text(
                "%.2f - %s x (%s/%s)^2",
                hydrant.mainPsi(flowGpm),
                hundredths(hydrant.hydrantLossPsi()),
                hundredths(flowGpm),
                hundredths(hydrant.atFlowGpm())),
            psi,
            "psi",
            "loss in the hydrant as stated at the test flow, by the square of the flow"));
    return steps;
  }

  private static Step pump(PumpCurve pump, double flowGpm) {
    double psi = pump.pressurePsi(flowGpm);
    String source = "points of the pump's curve as stated, joined by straight lines";
    for (int i = 1; i < pump.points().size(); i++) {
      PumpCurve.Point left = pump.points().get(i - 1);
      PumpCurve.Point right = pump.points().get(i);
      if (flowGpm <= right.flowGpm()) {
        return new Step(
            AT_THE_SOURCE,
            "P1 - (P1 - P2)(Q - Q1)/(Q2 - Q1)",
            text(
                "%s - (%s - %s) x (%s - %s)/(%s - %s)",
                hundredths(left.psi()),
                hundredths(left.psi()),
                hundredths(right.psi()),
                hundredths(flowGpm),
                hundredths(left.flowGpm()),
                hundredths(right.flowGpm()),
                hundredths(left.flowGpm())),
            psi,
            "psi",
            source);
      }
    }
    return new Step(AT_THE_SOURCE, "P", "0 beyond its last point", psi, "psi", source);
  }

  static Step demand(Demand demand, double flowGpm) {
    if (demand instanceof Demand.Alike alike) {
      return demand(alike.one(), flowGpm / alike.count());
    }
    String flow = hundredths(flowGpm);
    double psi = demand.needPsi(flowGpm);
    if (demand instanceof Demand.FlowAndPressure rated) {
      return needs(
          "p (Q/q)^2",
          square(rated.psi(), flow, rated.flowGpm()),
          psi,
          "a fixed opening, Q = k sqrt(p), through the flow and pressure stated");
    }
    if (demand instanceof Demand.KFactor outlet) {
      return needs("(Q/k)^2", text("(%s/%s)^2", flow, plain(outlet.k())), psi, "Q = k sqrt(p)");
    }
    if (demand instanceof Demand.SmoothBore tip) {
      return needs(
          "(Q/(29.7 d^2))^2",
          text("(%s/(29.7 x %s^2))^2", flow, plain(tip.tipIn())),
          psi,
          Working.TAUGHT);
    }
    if (demand instanceof Demand.FixedGallonage fog) {
      return needs(
          "p (Q/q)^2",
          square(fog.ratedPsi(), flow, fog.ratedGpm()),
          psi,
          "the nozzle's rated flow and pressure");
    }
    if (demand instanceof Demand.AutomaticFog fog) {
      double held = Math.min(Math.max(flowGpm, fog.leastGpm()), fog.mostGpm());
      return needs(
          "p (Q/q)^2, q the nearest flow of its range",
          square(fog.psi(), flow, held),
          psi,
          "the nozzle's own range, in which it holds its pressure");
    }
    Demand.OpenEnd end = (Demand.OpenEnd) demand;
    return needs(
        "0.434 h + 0.434 v^2/2g",
        text(
            "0.434 x %s + 0.434 x %.2f^2/64.35",
            plain(end.waterAboveFt()), Physical.velocityFtPerS(flowGpm, end.boreIn())),
        psi,
        "standing water, and the velocity head the jet takes along (normal exit, K = 1)");
  }

  private static String square(double psi, String flow, double ratedGpm) {
    return text("%s x (%s/%s)^2", hundredths(psi), flow, hundredths(ratedGpm));
  }

  private static Step needs(String formula, String numbers, double psi, String source) {
    return new Step("the appliance takes", formula, numbers, psi, "psi", source);
  }
}
