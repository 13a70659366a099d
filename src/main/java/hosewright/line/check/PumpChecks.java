package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.hydraulics.Boost;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.suction.Drafting;
import hosewright.job.Limit;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Checks on a pump on the way: what its intake keeps, what its curve and its relief valve allow.
 *
 * @param name what the buyer calls it
 * @param flowGpm that runs through it, gpm
 * @param mostGpm the flow up to which its curve is known, gpm
 * @param intake what the leg before it brings
 * @param neededPsi the most that a leg behind it needs, psi
 * @param drafting how it draws its water, where it draws it from below
 */
public record PumpChecks(
    String name,
    Boost boost,
    double flowGpm,
    double mostGpm,
    Inlet intake,
    double neededPsi,
    Optional<Drafting> drafting) {

  public List<Check> all() {
    List<Check> all = new ArrayList<>();
    all.add(drafting.map(this::lift).orElseGet(this::intakePressure));
    all.add(flow());
    all.add(relief());
    return all;
  }

  private Check intakePressure() {
    double intakePsi = intake.flowingPsi();
    double leastPsi = boost.leastIntakePsi();
    boolean keeps = intakePsi >= leastPsi - PressureChecks.HAIR_PSI;
    return check(
        CheckId.PUMP_INTAKE,
        keeps ? Outcome.PASS : Outcome.FAIL,
        intakePsi,
        leastPsi,
        "psi",
        keeps
            ? text("%s takes in %.1f psi and gives %.1f psi", name, intakePsi, outletPsi())
            : text(
                "%s would take in %.1f psi and must keep %.1f psi: less and it may run away from"
                    + " its water and draw the hose before it flat",
                name, intakePsi, leastPsi),
        leastPsi == RelayPump.LEAST_INTAKE_PSI ? Limit.RELAY_INTAKE_PSI.source() : "as stated");
  }

  /** Lift and loss together against what the pump bears of them. */
  private Check lift(Drafting drawn) {
    double intakePsi = intake.flowingPsi();
    double drawnFt = drawn.drawnFt(intakePsi);
    boolean works = drawnFt <= drawn.mostFt() + PressureChecks.HAIR_PSI;
    String lost =
        text(
            "%s lifts its water %.1f ft and loses %.1f ft of head in strainer and hose",
            name, drawn.liftFt(), drawnFt - drawn.liftFt());
    String head =
        drawn.npshRequiredFt().isPresent()
            ? text(
                ": %.1f ft of suction head are left and it needs %.1f ft",
                drawn.npshAvailableFt(intakePsi), drawn.npshRequiredFt().getAsDouble())
            : text(
                ": two thirds of the %.1f ft that the atmosphere could hold are dependable, a rule"
                    + " of thumb; with its maker's npsh it would be known",
                drawn.limitFt());
    return check(
        CheckId.SUCTION_LIFT,
        works ? Outcome.PASS : Outcome.FAIL,
        drawnFt,
        drawn.mostFt(),
        "ft",
        lost + head + lift(drawn.workingLiftFt(intakePsi)),
        drawn.npshRequiredFt().isPresent()
            ? "NPSH available is air pressure less vapour pressure, lift and loss"
            : Limit.SUCTION_LIFT_SHARE.source());
  }

  private String lift(double worksFt) {
    return worksFt > 0
        ? text(". At this flow it works up to a lift of %.1f ft", worksFt)
        : ". At this flow it works at no lift";
  }

  private double outletPsi() {
    return boost.outletPsi(intake.flowingPsi());
  }

  private Check flow() {
    boolean known = flowGpm <= mostGpm;
    return check(
        CheckId.PUMP_FLOW,
        known ? Outcome.PASS : Outcome.FAIL,
        flowGpm,
        mostGpm,
        "gpm",
        known
            ? text("%s passes %.0f gpm and adds %.1f psi", name, flowGpm, boost.addsPsi())
            : text(
                "%s is to pass %.0f gpm and its curve ends at %.0f gpm: it takes a larger pump, or"
                    + " a second one beside it",
                name, flowGpm, mostGpm),
        "its curve");
  }

  private Check relief() {
    double closedPsi = intake.closedPsi() + boost.churnPsi();
    if (Double.isInfinite(boost.reliefPsi())) {
      return check(
          CheckId.RELIEF_SETTING,
          Outcome.WARN,
          closedPsi,
          closedPsi,
          "psi",
          text(
              "no relief valve is stated at %s: with everything shut %.1f psi stand behind it. Have"
                  + " one at its intake and one behind it, and state its setting",
              name, closedPsi),
          Checks.PRACTICE);
    }
    boolean holds = !boost.relieves(neededPsi);
    return check(
        CheckId.RELIEF_SETTING,
        holds ? Outcome.PASS : Outcome.FAIL,
        neededPsi,
        boost.reliefPsi(),
        "psi",
        holds
            ? text(
                "%.1f psi are needed behind %s, whose relief valve opens at %.1f psi; shut, %.1f"
                    + " psi stand there",
                neededPsi, name, boost.reliefPsi(), boost.closedOutletPsi(intake.closedPsi()))
            : text(
                "%.1f psi are needed behind %s, and its relief valve opens at %.1f psi",
                neededPsi, name, boost.reliefPsi()),
        Checks.PRACTICE);
  }
}
