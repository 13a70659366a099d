package hosewright.line;

import static hosewright.line.Checks.check;
import static hosewright.line.Checks.text;

import hosewright.hydraulics.Hydrant;
import hosewright.line.LinePlan.Check;
import hosewright.line.LinePlan.Check.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Checks on pressures, flowing and with the nozzle shut. */
final class PressureChecks {
  /** A hair under a limit is rounding, not a failure. */
  static final double HAIR_PSI = 1e-6;

  private final Job job;
  private final Assembly line;
  private final LineHydraulicsResult hydraulics;
  private final List<SeenPressure> seen;

  private PressureChecks(Job job, Assembly line, LineHydraulicsResult hydraulics) {
    this.job = job;
    this.line = line;
    this.hydraulics = hydraulics;
    this.seen = SeenPressure.along(line, hydraulics.profile());
  }

  static List<Check> of(Job job, Assembly line, LineHydraulicsResult hydraulics) {
    PressureChecks checks = new PressureChecks(job, line, hydraulics);
    List<Check> all = new ArrayList<>();
    all.add(checks.delivered());
    checks.hydrantResidual().ifPresent(all::add);
    checks.hydrantLossKnown().ifPresent(all::add);
    checks.workingPressure(Placed.Role.HOSE, "hose working pressure").ifPresent(all::add);
    checks.workingPressure(Placed.Role.ADAPTER, "fitting working pressure").ifPresent(all::add);
    checks.serviceTest().ifPresent(all::add);
    all.add(checks.noSuction());
    all.add(checks.velocity());
    checks.reaction().ifPresent(all::add);
    checks.surge().ifPresent(all::add);
    checks.lawsAgree().ifPresent(all::add);
    return all;
  }

  private Check delivered() {
    double requiredPsi = hydraulics.requiredSourcePsi();
    if (job.supply().isEmpty()) {
      return check(
          "delivered pressure",
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
    boolean enough = deliveredPsi >= job.needPsi() - HAIR_PSI;
    return check(
        "delivered pressure",
        enough ? Outcome.PASS : Outcome.FAIL,
        deliveredPsi,
        job.needPsi(),
        "psi",
        enough
            ? text("%.1f psi arrives where %.1f is needed", deliveredPsi, job.needPsi())
            : text(
                "it takes %.1f psi at the source to deliver %.1f psi at %.0f gpm, and the source"
                    + " gives %.1f psi",
                requiredPsi, job.needPsi(), job.flowGpm(), hydraulics.sourcePsi().orElseThrow()),
        "source pressure less every loss");
  }

  private Optional<Check> hydrantResidual() {
    return hydrant()
        .map(
            hydrant -> {
              double mainPsi = hydrant.mainPsi(job.flowGpm());
              boolean enough = mainPsi >= Limit.HYDRANT_RESIDUAL_PSI.value();
              return check(
                  Limit.HYDRANT_RESIDUAL_PSI,
                  "hydrant residual",
                  enough ? Outcome.PASS : Outcome.FAIL,
                  mainPsi,
                  enough
                      ? text("the main keeps %.1f psi at this flow", mainPsi)
                      : text(
                          "the main would be drawn to %.1f psi: %s",
                          mainPsi, Limit.HYDRANT_RESIDUAL_PSI.note()));
            });
  }

  private Optional<Check> hydrantLossKnown() {
    return hydrant()
        .filter(hydrant -> hydrant.hydrantLossPsi() == 0)
        .map(
            hydrant ->
                check(
                    "hydrant loss",
                    Outcome.WARN,
                    0,
                    0,
                    "psi",
                    "loss between main and outlet was not stated and is taken as none: give"
                        + " hydrant-loss",
                    Checks.PRACTICE));
  }

  private Optional<Hydrant> hydrant() {
    return job.supply().filter(Hydrant.class::isInstance).map(Hydrant.class::cast);
  }

  /** The part of a sort that comes closest to its working pressure; all fittings are one sort. */
  private Optional<Check> workingPressure(Placed.Role role, String name) {
    return seen.stream()
        .filter(part -> (part.part().role() == Placed.Role.HOSE) == (role == Placed.Role.HOSE))
        .filter(part -> workingPsi(part.part()).isPresent())
        .min(
            Comparator.comparingDouble(
                part -> workingPsi(part.part()).getAsDouble() - part.highestPsi()))
        .map(
            worst -> {
              double limitPsi = workingPsi(worst.part()).getAsDouble();
              boolean holds = worst.highestPsi() <= limitPsi + HAIR_PSI;
              return check(
                  name,
                  holds ? Outcome.PASS : Outcome.FAIL,
                  worst.highestPsi(),
                  limitPsi,
                  "psi",
                  text(
                      "%s sees %.1f psi at most, flowing or shut; it is rated %.0f psi",
                      worst.part().description(), worst.highestPsi(), limitPsi),
                  "the item's rating in the catalogue");
            });
  }

  private OptionalDouble workingPsi(Placed part) {
    return part.rating().workingPsiAt(job.service().temperatureOrUsualF());
  }

  private Optional<Check> serviceTest() {
    OptionalDouble testPsi = line.frame().hose().rating().serviceTestPsi();
    if (testPsi.isEmpty()) {
      return Optional.empty();
    }
    double limitPsi = testPsi.getAsDouble() / Limit.SERVICE_TEST_SHARE.value();
    double highestPsi =
        seen.stream()
            .filter(part -> part.part().role() == Placed.Role.HOSE)
            .mapToDouble(SeenPressure::highestPsi)
            .max()
            .orElseThrow();
    boolean holds = highestPsi <= limitPsi + HAIR_PSI;
    return Optional.of(
        check(
            "service test pressure",
            holds ? Outcome.PASS : Outcome.FAIL,
            highestPsi,
            limitPsi,
            "psi",
            text(
                "hose tested at %.0f psi in service may work at %.1f psi at most",
                testPsi.getAsDouble(), limitPsi),
            Limit.SERVICE_TEST_SHARE.source()));
  }

  private Check noSuction() {
    SeenPressure lowest =
        seen.stream().min(Comparator.comparingDouble(SeenPressure::lowestPsi)).orElseThrow();
    boolean suction = lowest.lowestPsi() < -HAIR_PSI;
    boolean rated = lowest.part().rating().vacuumInHg().isPresent();
    return check(
        "pressure above zero",
        suction && !rated ? Outcome.FAIL : Outcome.PASS,
        lowest.lowestPsi(),
        0,
        "psi",
        suction
            ? text(
                "pressure runs out in %s: %.1f psi at this flow",
                lowest.part().description(), lowest.lowestPsi())
            : "the line is under pressure everywhere",
        Checks.PRACTICE);
  }

  private Check velocity() {
    double velocity = hydraulics.velocityFtPerS();
    boolean slow = velocity <= Limit.VELOCITY_FT_PER_S.value();
    return check(
        Limit.VELOCITY_FT_PER_S,
        "velocity",
        slow ? Outcome.PASS : Outcome.WARN,
        velocity,
        slow ? "unhurried" : Limit.VELOCITY_FT_PER_S.note());
  }

  private Optional<Check> reaction() {
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
                  "nozzle reaction",
                  light ? Outcome.PASS : Outcome.WARN,
                  lbf,
                  light
                      ? text("the nozzle pushes back with %.0f lbf", lbf)
                      : Limit.HAND_HELD_REACTION_LBF.note());
            });
  }

  /** Never fails: the rise is an upper bound that slow hands keep away from. */
  private Optional<Check> surge() {
    OptionalDouble working =
        seen.stream()
            .map(SeenPressure::part)
            .filter(part -> part.role() == Placed.Role.HOSE)
            .flatMapToDouble(part -> workingPsi(part).stream())
            .findFirst();
    if (working.isEmpty()) {
      return Optional.empty();
    }
    double highestPsi = seen.stream().mapToDouble(SeenPressure::highestPsi).max().orElseThrow();
    double surgedPsi = highestPsi + hydraulics.surgeHighPsi();
    boolean holds = surgedPsi <= working.getAsDouble();
    return Optional.of(
        check(
            "sudden closure",
            holds ? Outcome.PASS : Outcome.WARN,
            surgedPsi,
            working.getAsDouble(),
            "psi",
            text(
                "shutting at once adds %.0f to %.0f psi: close slowly",
                hydraulics.surgeLowPsi(), hydraulics.surgeHighPsi()),
            "Joukowsky's relation, wave speed from the hose or 113 to 1400 m/s"));
  }

  private Optional<Check> lawsAgree() {
    double decidingPsi = hydraulics.frictionLossPsi();
    return hydraulics.crossCheck().stream()
        .max(Comparator.comparingDouble(other -> Math.abs(other.frictionLossPsi() - decidingPsi)))
        .map(
            other -> {
              double share = Math.abs(other.frictionLossPsi() - decidingPsi) / decidingPsi;
              boolean agree = share <= Limit.CROSS_CHECK_SHARE.value();
              return check(
                  Limit.CROSS_CHECK_SHARE,
                  "friction laws agree",
                  agree ? Outcome.PASS : Outcome.WARN,
                  share,
                  text(
                      "%s on %.2f in bore gives %.1f psi where the deciding law gives %.1f psi",
                      other.law(), other.boreIn(), other.frictionLossPsi(), decidingPsi));
            });
  }
}
