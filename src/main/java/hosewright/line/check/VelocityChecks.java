package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.job.question.Practice;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Span;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.water.LegFigures;
import hosewright.line.water.OuterVelocity;
import hosewright.line.water.Port;
import hosewright.line.water.RatedFlow;
import hosewright.thread.End;
import java.util.Comparator;
import java.util.Optional;

/** Checks on how fast water runs: in hose by its use, in fittings and ends by an outer limit. */
final class VelocityChecks {
  private final Job job;
  private final Assembly line;

  VelocityChecks(Job job, Assembly line) {
    this.job = job;
    this.line = line;
  }

  /** The hose that comes closest to what its use allows. */
  Check hose() {
    LegFigures worst =
        LegFigures.of(job, line).stream()
            .max(Comparator.comparingDouble(leg -> leg.velocityFtPerS() / limit(leg).value()))
            .orElseThrow();
    Limit limit = limit(worst);
    boolean slow = worst.velocityFtPerS() <= limit.value();
    String usual = isAttack(worst) ? "a hand line" : "a line laid long";
    return check(
        limit,
        CheckId.VELOCITY,
        slow ? Outcome.PASS : Outcome.WARN,
        worst.velocityFtPerS(),
        slow ? "no faster than is usual for " + usual : limit.note());
  }

  private Limit limit(LegFigures leg) {
    return isAttack(leg) ? Limit.ATTACK_VELOCITY_FT_PER_S : Limit.VELOCITY_FT_PER_S;
  }

  /** Hose that a hand nozzle of the fire service hangs on. */
  private boolean isAttack(LegFigures leg) {
    return job.service().use().isFire()
        && job.appliance().handHeld()
        && leg.leg() == line.topology().last();
  }

  /**
   * A place that water runs through.
   *
   * @param what in words
   * @param boreIn waterway there, in
   */
  private record Place(String what, double boreIn, double flowGpm, double ftPerS) {

    static Place of(String what, End end, double flowGpm) {
      return new Place(what, end.sizeIn(), flowGpm, OuterVelocity.ftPerS(end, flowGpm));
    }
  }

  /** The faster of the outlet the line starts from and the end of the appliance. */
  Check ends() {
    Place outlet = Place.of("the outlet", job.from(), job.flowGpm() / line.topology().outlets());
    Place appliance = Place.of("the appliance's own end", job.to(), job.flowEachGpm());
    Place faster = outlet.ftPerS() > appliance.ftPerS() ? outlet : appliance;
    return judged(
        CheckId.END_VELOCITY, OuterVelocity.ENDS, faster, OuterVelocity.ENDS.limit().orElseThrow());
  }

  /** The fastest of the fittings and of the hose's couplings. */
  Check fittings() {
    Placed fastest = line.parts().get(1);
    double mostFtPerS = 0;
    for (Placed part : line.parts()) {
      if (ftPerS(part) > mostFtPerS) {
        fastest = part;
        mostFtPerS = ftPerS(part);
      }
    }
    boolean hose = fastest.isHose();
    Port throat = Port.fastest(fastest);
    Place place =
        new Place(
            (hose ? "the couplings of " : "") + fastest.description(),
            hose ? fastest.hose().couplingSizeIn() : throat.boreIn(),
            job.flowGpm() / throat.abreast(),
            mostFtPerS);
    return judged(
            CheckId.FITTING_VELOCITY,
            OuterVelocity.FITTINGS,
            place,
            OuterVelocity.mostInFittingsFtPerS(job))
        .in(Span.nameOf(fastest, Span.of(line)));
  }

  /** In the couplings of hose or the throat of a fitting; 0 where another rule judges. */
  private double ftPerS(Placed part) {
    if (part.isHose()) {
      return OuterVelocity.couplingsFtPerS(part.hose(), job.flowGpm() / part.lines());
    }
    return part.role().isFitting() && RatedFlow.gpm(part).isEmpty()
        ? Port.fastest(part).velocityFtPerS(job.flowGpm())
        : 0;
  }

  /** The device that comes closest to what it is rated for; empty where none is rated. */
  Optional<Check> ratedFlow() {
    return line.parts().stream()
        .filter(part -> RatedFlow.gpm(part).isPresent())
        .max(Comparator.comparingDouble(this::shareOfRating))
        .map(
            worst -> {
              double gpm = RatedFlow.throughGpm(job, worst);
              double ratedGpm = RatedFlow.gpm(worst).getAsDouble();
              boolean holds = gpm <= ratedGpm;
              return check(
                      CheckId.RATED_FLOW,
                      holds
                          ? Outcome.PASS
                          : job.lifts(RatedFlow.RULE) ? Outcome.WARN : Outcome.FAIL,
                      gpm,
                      ratedGpm,
                      "gpm",
                      text(
                          "%.0f gpm go through %s, which is rated for %.0f",
                          gpm, worst.description(), ratedGpm),
                      RatedFlow.RULE.source())
                  .in(Span.nameOf(worst, Span.of(line)));
            });
  }

  private double shareOfRating(Placed part) {
    return RatedFlow.throughGpm(job, part) / RatedFlow.gpm(part).getAsDouble();
  }

  private Check judged(CheckId id, Practice rule, Place place, double limit) {
    boolean holds = place.ftPerS() <= limit;
    String runs =
        text(
            "%.0f gpm in the %.2f in waterway of %s run at %.1f ft/s",
            place.flowGpm(), place.boreIn(), place.what(), place.ftPerS());
    return check(
        id,
        holds ? Outcome.PASS : job.lifts(rule) ? Outcome.WARN : Outcome.FAIL,
        place.ftPerS(),
        limit,
        rule.unit(),
        holds
            ? runs
            : text(
                "%s, and nobody lays more than %.0f gpm through it",
                runs, OuterVelocity.gpm(limit, place.boreIn())),
        rule.source());
  }
}
