package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.hydraulics.Arrival;
import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Supply;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.line.assembly.Assembly;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import hosewright.line.water.Outflow;
import hosewright.line.water.PlanHydraulics;
import java.util.List;
import java.util.Optional;

/**
 * What the nozzle of one attack line does when the others behind its wye are shut: the supply line
 * then loses less, and whoever holds the nozzle gets the difference. It only ever warns.
 */
public final class OneShutCheck {
  private OneShutCheck() {}

  /**
   * The check for a plan.
   *
   * @return empty where there are no attack lines to nozzles held by hand, or no figures
   */
  public static Optional<Check> of(Job job, Assembly line, Hydraulics hydraulics) {
    if (job.attack().isEmpty() || !job.appliance().handHeld() || !hydraulics.calculated()) {
      return Optional.empty();
    }
    if (FlowChecks.tipTooLarge(job, line.topology().last().hose()) || job.needPsi() <= 0) {
      return Optional.empty();
    }
    double heldPsi = hydraulics.profile().get(0).flowingPsi();
    if (job.supply().isEmpty() && heldPsi <= 0) {
      return Optional.empty();
    }
    Supply supply = job.supply().orElseGet(() -> new FixedPressure(heldPsi));
    List<LineElement> alone = PlanHydraulics.elements(job, line, true);
    Arrival arrival = LineHydraulics.arriving(alone, supply, Outflow.ofOne(job));
    if (!arrival.flows()) {
      return Optional.empty();
    }
    return Optional.of(
        judged(
            job,
            arrival.flowGpm(),
            arrival.pressures().deliveredPsi(),
            "throttle the pump or the wye as they shut"));
  }

  /** The same for a nozzle held by hand that has the whole water of a layout to itself. */
  public static Check ofLeg(Job job, double aloneGpm, double alonePsi) {
    return judged(job, aloneGpm, alonePsi, "throttle the pump or its gate as they shut");
  }

  private static Check judged(Job job, double flowGpm, double psi, String remedy) {
    double lbf = PlanHydraulics.nozzleReactionLbf(job, flowGpm, psi);
    boolean light = lbf <= Limit.HAND_HELD_REACTION_LBF.value();
    return check(
        Limit.HAND_HELD_REACTION_LBF,
        CheckId.OTHER_NOZZLES_SHUT,
        light ? Outcome.PASS : Outcome.WARN,
        lbf,
        text(
            "with the others shut one nozzle gets %.0f gpm at %.0f psi and pushes back with"
                + " %.0f lbf: %s",
            flowGpm, psi, lbf, remedy));
  }
}
