package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;
import static java.util.stream.Collectors.joining;

import hosewright.hydraulics.Demand;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.HoseLine;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.lang3.StringUtils;

/** Checks on how much arrives, and on how it flows. */
public final class FlowChecks {
  private final Job job;
  private final Assembly line;
  private final Hydraulics hydraulics;

  FlowChecks(Job job, Assembly line, Hydraulics hydraulics) {
    this.job = job;
    this.line = line;
    this.hydraulics = hydraulics;
  }

  Check delivered() {
    double requiredPsi = hydraulics.requiredSourcePsi();
    if (job.supply().isEmpty()) {
      return check(
          CheckId.DELIVERED_PRESSURE,
          Outcome.PASS,
          job.needPsi(),
          job.needPsi(),
          "psi",
          requiredPsi > 0
              ? text("the source must hold %.1f psi at %.0f gpm", requiredPsi, job.flowGpm())
              : text("the fall alone brings the pressure needed at %.0f gpm", job.flowGpm()),
          "need plus every loss");
    }
    double deliveredPsi = hydraulics.deliveredPsi();
    boolean enough = deliveredPsi >= job.needPsi() - PressureChecks.HAIR_PSI;
    return check(
        CheckId.DELIVERED_PRESSURE,
        enough ? Outcome.PASS : Outcome.FAIL,
        deliveredPsi,
        job.needPsi(),
        "psi",
        enough
            ? text("%.1f psi arrives where %.1f psi is needed", deliveredPsi, job.needPsi())
            : text(
                "it takes %.1f psi at the source to deliver %.1f psi at %.0f gpm, and the source"
                    + " gives %.1f psi",
                requiredPsi, job.needPsi(), job.flowGpm(), hydraulics.sourcePsi().orElseThrow()),
        "source pressure less every loss");
  }

  Optional<Check> reaction() {
    if (!job.appliance().handHeld()) {
      return Optional.empty();
    }
    return hydraulics
        .reactionLbf()
        .map(
            lbf -> {
              boolean light = lbf <= Limit.HAND_HELD_REACTION_LBF.value();
              return check(
                  Limit.HAND_HELD_REACTION_LBF,
                  CheckId.NOZZLE_REACTION,
                  light ? Outcome.PASS : Outcome.WARN,
                  lbf,
                  light
                      ? text("the nozzle pushes back with %.0f lbf", lbf)
                      : Limit.HAND_HELD_REACTION_LBF.note());
            });
  }

  Optional<Check> lawsAgree() {
    double decidingPsi = hydraulics.frictionLossPsi();
    return hydraulics.crossCheck().stream()
        .max(Comparator.comparingDouble(other -> Math.abs(other.frictionLossPsi() - decidingPsi)))
        .map(
            other -> {
              double share = Math.abs(other.frictionLossPsi() - decidingPsi) / decidingPsi;
              boolean agree = share <= Limit.CROSS_CHECK_SHARE.value();
              return check(
                  Limit.CROSS_CHECK_SHARE,
                  CheckId.FRICTION_LAWS_AGREE,
                  agree ? Outcome.PASS : Outcome.WARN,
                  share,
                  text(
                          "%s on %.2f in bore gives %.1f psi where the law planned with gives %.1f"
                              + " psi",
                          written(other.law()),
                          other.boreIn(),
                          other.frictionLossPsi(),
                          decidingPsi)
                      + (agree ? "" : consequence(other.frictionLossPsi() - decidingPsi)));
            });
  }

  /** What it would mean if the other law were right. */
  private String consequence(double morePsi) {
    return text(
        ": by it the source would have to hold %.0f psi, so see what arrives when it first flows",
        Math.max(0, hydraulics.requiredSourcePsi() + morePsi));
  }

  /** A law's name as people write it: after the two who found it. */
  private static String written(String law) {
    return Arrays.stream(law.split("-")).map(StringUtils::capitalize).collect(joining("-"));
  }

  /** Whether no line of this hose can feed the job's tip. */
  public static boolean tipTooLarge(Job job, HoseLine hose) {
    return job.tipIn().orElse(0) > hose.bore().boreIn();
  }

  /** Said apart only where it fails: a tip is no larger than the hose before it. */
  Optional<Check> tipFits() {
    HoseLine hose = line.topology().last().hose();
    if (!tipTooLarge(job, hose)) {
      return Optional.empty();
    }
    double tipIn = job.tipIn().orElseThrow();
    return Optional.of(
        check(
            CheckId.TIP,
            Outcome.FAIL,
            tipIn,
            hose.bore().boreIn(),
            "in",
            text(
                "a tip of %.3f in is larger than the hose before it, %.3f in",
                tipIn, hose.bore().boreIn()),
            "a tip narrows the stream, or it throws none"));
  }

  /** Flow, pressure and tip state one thing twice. */
  Optional<Check> tipFlow() {
    if (job.tipIn().isEmpty() || tipTooLarge(job, line.topology().last().hose())) {
      return Optional.empty();
    }
    double flowGpm = new Demand.SmoothBore(job.tipIn().getAsDouble()).flowGpm(job.needPsi());
    double share = Math.abs(flowGpm - job.flowEachGpm()) / job.flowEachGpm();
    boolean agree = share <= Limit.TIP_FLOW_SHARE.value();
    return Optional.of(
        check(
            Limit.TIP_FLOW_SHARE,
            CheckId.TIP_AND_FLOW_AGREE,
            agree ? Outcome.PASS : Outcome.WARN,
            share,
            text(
                "this tip flows %.0f gpm at %.1f psi, and %.0f gpm are asked for",
                flowGpm, job.needPsi(), job.flowEachGpm())));
  }
}
