package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.job.question.SourceKind;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Span;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Role;
import hosewright.line.water.SeenPressure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Checks on what each part sees against what it is rated for. */
final class RatingChecks {
  private static final String EITHER_WAY = "flowing or shut";

  private final Job job;
  private final Hydraulics hydraulics;
  private final List<SeenPressure> seen;
  private final List<Span> spans;

  RatingChecks(Job job, Assembly line, Hydraulics hydraulics) {
    this.job = job;
    this.spans = Span.of(line);
    this.hydraulics = hydraulics;
    this.seen = SeenPressure.along(line, hydraulics.profile());
  }

  /** Said apart only where it fails, because then no source whatever would mend it. */
  Optional<Check> nozzlePressure() {
    SeenPressure last =
        seen.stream()
            .filter(part -> part.part().role() == Role.HOSE)
            .reduce((one, next) -> next)
            .orElseThrow();
    OptionalDouble rated = workingPsi(last.part());
    if (rated.isEmpty() || job.needPsi() <= rated.getAsDouble() + PressureChecks.HAIR_PSI) {
      return Optional.empty();
    }
    return Optional.of(
        check(
            CheckId.PRESSURE_NEEDED,
            Outcome.FAIL,
            job.needPsi(),
            rated.getAsDouble(),
            "psi",
            text(
                "the appliance needs %.1f psi and the hose before it is rated %.0f psi",
                job.needPsi(), rated.getAsDouble()),
            "the item's rating in the catalogue"));
  }

  /** The part of a sort that comes closest to its working pressure; all fittings are one sort. */
  Optional<Check> workingPressure(Role role, CheckId id) {
    return seen.stream()
        .filter(part -> part.part().isHose() == (role == Role.HOSE))
        .filter(part -> workingPsi(part.part()).isPresent())
        .min(
            Comparator.comparingDouble(
                part -> workingPsi(part.part()).getAsDouble() - part.highestPsi()))
        .map(
            worst ->
                workingPressure(
                        id,
                        worst.part(),
                        worst.highestPsi(),
                        workingPsi(worst.part()).getAsDouble(),
                        most(worst))
                    .in(Span.nameOf(worst.part(), spans)));
  }

  /**
   * A fitting that stands outside a line; empty where its rating is not known.
   *
   * @param highestPsi the most that it sees, flowing or shut
   */
  static Optional<Check> ofFitting(Job job, Placed part, double highestPsi) {
    return part.rating().workingPsiAt(job.service().temperatureOrUsualF()).stream()
        .mapToObj(
            limitPsi ->
                workingPressure(
                    CheckId.FITTING_WORKING_PRESSURE, part, highestPsi, limitPsi, EITHER_WAY))
        .findFirst();
  }

  private static Check workingPressure(
      CheckId id, Placed part, double highestPsi, double limitPsi, String when) {
    boolean holds = highestPsi <= limitPsi + PressureChecks.HAIR_PSI;
    return check(
        id,
        holds ? Outcome.PASS : Outcome.FAIL,
        highestPsi,
        limitPsi,
        "psi",
        text(
            "%s sees %.1f psi at most, %s; it is rated %.0f psi",
            part.description(), highestPsi, when, limitPsi),
        "the item's rating in the catalogue");
  }

  /** When a part sees most, and where if the ground is known. */
  private String most(SeenPressure part) {
    Station at = part.highest();
    return !job.run().way().isSurveyed()
        ? EITHER_WAY
        : (at.closedPsi() >= at.flowingPsi() ? "shut, " : "flowing, ") + Whereabouts.of(at);
  }

  private OptionalDouble workingPsi(Placed part) {
    return part.rating().workingPsiAt(job.service().temperatureOrUsualF());
  }

  /** The hose that comes closest to what its service test allows. */
  Optional<Check> serviceTest() {
    return seen.stream()
        .filter(part -> part.part().role() == Role.HOSE)
        .flatMap(part -> serviceTest(part).stream())
        .min(Comparator.comparingDouble(check -> check.limit() - check.value()));
  }

  private Optional<Check> serviceTest(SeenPressure part) {
    OptionalDouble testPsi = part.part().rating().serviceTestPsi();
    if (testPsi.isEmpty()) {
      return Optional.empty();
    }
    double limitPsi = testPsi.getAsDouble() / Limit.SERVICE_TEST_SHARE.value();
    boolean holds = part.highestPsi() <= limitPsi + PressureChecks.HAIR_PSI;
    return Optional.of(
        check(
                CheckId.SERVICE_TEST_PRESSURE,
                holds ? Outcome.PASS : Outcome.FAIL,
                part.highestPsi(),
                limitPsi,
                "psi",
                text(
                    "hose tested at %.0f psi in service may work at %.1f psi at most%s",
                    testPsi.getAsDouble(),
                    limitPsi,
                    job.run().way().isSurveyed()
                        ? text(", and sees %.1f psi %s", part.highestPsi(), most(part))
                        : ""),
                Limit.SERVICE_TEST_SHARE.source())
            .in(Span.nameOf(part.part(), spans)));
  }

  /** What draws is made for it: the hose that comes nearest to the vacuum it is rated for. */
  private Check suction() {
    SeenPressure worst =
        seen.stream()
            .filter(part -> part.part().isHose())
            .min(
                Comparator.comparingDouble(
                    part ->
                        part.part().rating().vacuumInHg().orElse(0)
                            + part.lowestPsi() * Limit.MERCURY_IN_HG_PER_PSI.value()))
            .orElseThrow();
    double ratedInHg = worst.part().rating().vacuumInHg().orElse(0);
    double drawnInHg = Math.max(0, -worst.lowestPsi() * Limit.MERCURY_IN_HG_PER_PSI.value());
    return check(
            CheckId.SUCTION_VACUUM,
            drawnInHg <= ratedInHg ? Outcome.PASS : Outcome.FAIL,
            drawnInHg,
            ratedInHg,
            "inHg",
            text(
                "%s is drawn upon by %.1f in of mercury; it is rated %.0f",
                worst.part().description(), drawnInHg, ratedInHg),
            "the item's rating in the catalogue")
        .in(Span.nameOf(worst.part(), spans));
  }

  Check noSuction() {
    if (job.source() == SourceKind.OPEN_WATER) {
      return suction();
    }
    SeenPressure lowest =
        seen.stream().min(Comparator.comparingDouble(SeenPressure::lowestPsi)).orElseThrow();
    boolean suction = lowest.lowestPsi() < -PressureChecks.HAIR_PSI;
    boolean rated = lowest.part().rating().vacuumInHg().isPresent();
    return check(
            CheckId.PRESSURE_ABOVE_ZERO,
            suction && !rated ? Outcome.FAIL : Outcome.PASS,
            lowest.lowestPsi(),
            0,
            "psi",
            suction
                ? text(
                    "pressure runs out in %s: %.1f psi at this flow%s",
                    lowest.part().description(),
                    lowest.lowestPsi(),
                    job.run().way().isSurveyed() ? ", " + Whereabouts.of(lowest.lowest()) : "")
                : "the line is under pressure everywhere",
            Checks.PRACTICE)
        .in(Span.nameOf(lowest.part(), spans));
  }

  /** The summit that keeps least; none where the ground has none between source and appliance. */
  Optional<Check> summit() {
    return hydraulics.summits().stream()
        .min(Comparator.comparingDouble(Station::lowestPsi))
        .map(
            least -> {
              boolean holds =
                  least.lowestPsi() >= Limit.SUMMIT_PSI.value() - PressureChecks.HAIR_PSI;
              return check(
                  Limit.SUMMIT_PSI,
                  CheckId.SUMMIT_PRESSURE,
                  holds ? Outcome.PASS : Outcome.FAIL,
                  least.lowestPsi(),
                  text(
                      "%.1f psi is left %s%s",
                      least.lowestPsi(),
                      Whereabouts.of(least),
                      holds ? "" : ": " + Limit.SUMMIT_PSI.note()));
            });
  }

  /**
   * Never fails: slow hands keep away from it. It warns where even the low estimate is too much.
   */
  Optional<Check> surge() {
    OptionalDouble working =
        seen.stream()
            .map(SeenPressure::part)
            .filter(part -> part.role() == Role.HOSE)
            .flatMapToDouble(part -> workingPsi(part).stream())
            .min();
    if (working.isEmpty()) {
      return Optional.empty();
    }
    String waveSource =
        seen.stream()
            .map(SeenPressure::part)
            .filter(Placed::isHose)
            .map(part -> part.hose().bore().waves().source())
            .distinct()
            .collect(Collectors.joining("; "));
    double highestPsi = seen.stream().mapToDouble(SeenPressure::highestPsi).max().orElseThrow();
    double surgedPsi = highestPsi + hydraulics.surgeLowPsi();
    boolean holds = surgedPsi <= working.getAsDouble();
    return Optional.of(
        check(
            CheckId.SUDDEN_CLOSURE,
            holds ? Outcome.PASS : Outcome.WARN,
            surgedPsi,
            working.getAsDouble(),
            "psi",
            surge(hydraulics.surgeLowPsi(), hydraulics.surgeHighPsi())
                + beyond(highestPsi + hydraulics.surgeHighPsi(), holds, working.getAsDouble()),
            "Joukowsky's relation; wave speed: " + waveSource));
  }

  /** Only the high estimate passes the rating: told beside, and no warning. */
  private static String beyond(double highPsi, boolean holds, double ratedPsi) {
    return holds && highPsi > ratedPsi
        ? text(
            "; by the high one %.0f psi would be reached, above the %.0f psi the hose is rated for",
            highPsi, ratedPsi)
        : "";
  }

  /** One figure where the hose's wave speed is known, else the two estimates for its kind. */
  private static String surge(double lowPsi, double highPsi) {
    return lowPsi == highPsi
        ? text("a valve slammed shut adds %.0f psi: close slowly", lowPsi)
        : text(
            "a valve slammed shut adds %.0f to %.0f psi, by the low and the high estimate for this"
                + " hose: close slowly",
            lowPsi, highPsi);
  }
}
