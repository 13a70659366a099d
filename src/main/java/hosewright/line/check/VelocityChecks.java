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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
  private record Place(
      String what, double boreIn, double flowGpm, double ftPerS, Optional<String> leg) {

    static Place of(String what, End end, double flowGpm) {
      return new Place(
          what, end.sizeIn(), flowGpm, OuterVelocity.ftPerS(end, flowGpm), Optional.empty());
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
    List<Place> places = new ArrayList<>();
    List<Span> spans = Span.of(line);
    for (Placed part : line.parts()) {
      if (part.isHose()) {
        double flowGpm = job.flowGpm() / part.lines();
        places.add(
            new Place(
                "the couplings of " + part.description(),
                part.hose().couplingSizeIn(),
                flowGpm,
                OuterVelocity.couplingsFtPerS(part.hose(), flowGpm),
                Optional.of(Span.nameOf(part, spans))));
      } else if (part.role().isFitting() && RatedFlow.gpm(part).isEmpty()) {
        Port throat = Port.fastest(part);
        places.add(
            new Place(
                part.description(),
                throat.boreIn(),
                job.flowGpm() / throat.abreast(),
                throat.velocityFtPerS(job.flowGpm()),
                Optional.of(Span.nameOf(part, spans))));
      }
    }
    Place fastest = places.stream().max(Comparator.comparingDouble(Place::ftPerS)).orElseThrow();
    Check found =
        judged(
            CheckId.FITTING_VELOCITY,
            OuterVelocity.FITTINGS,
            fastest,
            OuterVelocity.mostInFittingsFtPerS(job));
    return fastest.leg().map(found::in).orElse(found);
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
