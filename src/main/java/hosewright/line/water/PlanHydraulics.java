package hosewright.line.water;

import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Reaction;
import hosewright.hydraulics.Solution;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.FrictionLaw;
import hosewright.hydraulics.law.HazenWilliams;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.job.question.ApplianceKind;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.CrossCheck;
import hosewright.line.model.Hydraulics.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;

/** Works out pressures, weights and times of an assembled line at the flow the job asks for. */
public final class PlanHydraulics {
  private PlanHydraulics() {}

  /** The line as the water meets it, for {@link LineHydraulics}. */
  public static List<LineElement> elements(Job job, Assembly line) {
    return elements(job, line, false);
  }

  /**
   * The line as the water meets it with all of it open, or one line alone.
   *
   * @param alone whether of lines side by side only one is open
   */
  public static List<LineElement> elements(Job job, Assembly line, boolean alone) {
    List<LineElement> elements = new ArrayList<>();
    GroundUnder under = GroundUnder.of(job, line);
    for (Placed part : line.parts()) {
      if (part.isHose() || part.role().isFitting()) {
        elements.add(element(job, under, alone ? part.alone() : part));
      }
    }
    return elements;
  }

  /** What one part of the line loses besides what height takes, at the job's flow, psi. */
  public static double lossPsi(Job job, Assembly line, Placed part) {
    return element(job, GroundUnder.of(job, line), part).lossPsi(job.flowGpm());
  }

  private static LineElement element(Job job, GroundUnder under, Placed part) {
    if (!part.isHose()) {
      return FittingLoss.of(part);
    }
    HoseLine hose = part.hose();
    double lengthFt = part.count() * part.lengthFt();
    return new HoseLeg(
        part.description(),
        FrictionChoice.of(job, hose, part.isOwnedHose()).law(),
        lengthFt,
        under.next(lengthFt),
        hose.bore().boreIn(),
        part.lines(),
        part.count());
  }

  /**
   * Pressures and losses with the job's own source, or with a source that holds just the pressure
   * needed where none is stated: a line may need more than any source gives, and says so then.
   */
  public static Hydraulics of(Job job, Assembly line) {
    if (!job.service().isWater()) {
      return Hydraulics.notCalculated("not calculated: the fluid is not water");
    }
    HoseLine hose = line.topology().hose();
    List<LineElement> elements = elements(job, line);
    Solution needed = LineHydraulics.required(elements, job.flowGpm(), job.needPsi());
    double requiredPsi = requiredPsi(job, needed);
    double sourcePsi =
        job.supply()
            .map(supply -> supply.pressurePsi(job.flowGpm()))
            .orElseGet(() -> leastHeldPsi(needed, requiredPsi));
    double closedPsi = job.supply().map(Supply::closedPsi).orElse(sourcePsi);
    double deliveredPsi = sourcePsi - needed.losses().totalPsi();
    List<LegFigures> legs = LegFigures.of(job, line);
    return new Hydraulics(
        new Hydraulics.Pressures(
            requiredPsi,
            job.supply().map(given -> sourcePsi),
            job.supply().isPresent() || requiredPsi > needed.sourcePsi()
                ? deliveredPsi
                : job.needPsi()),
        losses(needed),
        new Hydraulics.Friction(
            FrictionChoice.of(job, hose).basis(),
            FrictionChoice.of(job, hose).coefficient(),
            crossCheck(job, legs),
            List.of()),
        new Hydraulics.Forces(
            most(legs, LegFigures::velocityFtPerS),
            reaction(job),
            most(legs, legFigures -> legFigures.surge().lowPsi()),
            most(legs, legFigures -> legFigures.surge().highPsi())),
        filled(job, legs),
        stations(LineHydraulics.profile(elements, job.flowGpm(), sourcePsi, closedPsi)),
        List.of());
  }

  private static Hydraulics.Losses losses(Solution needed) {
    return new Hydraulics.Losses(
        needed.losses().frictionPsi(),
        needed.losses().elevationPsi(),
        needed.losses().fittingPsi(),
        needed.losses().appliancePsi());
  }

  private static Hydraulics.Filled filled(Job job, List<LegFigures> legs) {
    return new Hydraulics.Filled(
        legs.get(0).load().waterGal(),
        legs.stream().mapToDouble(legFigures -> legFigures.load().emptyWeightLb()).sum(),
        legs.stream().mapToDouble(legFigures -> legFigures.load().chargedWeightLb()).sum(),
        Physical.fillMinutes(
            legs.stream().mapToDouble(LegFigures::allWaterGal).sum(), job.flowGpm()));
  }

  private static double most(List<LegFigures> legs, ToDoubleFunction<LegFigures> figure) {
    return legs.stream().mapToDouble(figure).max().orElseThrow();
  }

  /** Stations as a plan shows them. */
  public static List<Station> stations(List<hosewright.hydraulics.Station> profile) {
    return profile.stream()
        .map(
            station ->
                new Station(
                    station.name(),
                    station.distanceFt(),
                    station.elevationFt(),
                    station.flowingPsi(),
                    station.closedPsi(),
                    station.within() ? Hydraulics.Place.WITHIN : Hydraulics.Place.AT_END))
        .toList();
  }

  /**
   * What a source that is not stated must hold: what is required, and no suction on the way.
   *
   * @param requiredPsi what the appliance and every summit take
   */
  private static double leastHeldPsi(Solution needed, double requiredPsi) {
    double lowestPsi =
        needed.profile().stream()
            .mapToDouble(hosewright.hydraulics.Station::flowingPsi)
            .min()
            .orElseThrow();
    return Math.max(requiredPsi, needed.sourcePsi() - Math.min(0, lowestPsi));
  }

  /** The need and every loss, or what carries the water over a summit where that is more. */
  private static double requiredPsi(Job job, Solution needed) {
    double keptPsi =
        !job.run().way().isSurveyed()
            ? Double.POSITIVE_INFINITY
            : Hydraulics.summits(stations(needed.profile())).stream()
                .mapToDouble(Station::flowingPsi)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    return needed.sourcePsi() + Math.max(0, Limit.SUMMIT_PSI.value() - keptPsi);
  }

  private static Optional<Double> reaction(Job job) {
    if (job.appliance() != ApplianceKind.NOZZLE && job.appliance() != ApplianceKind.MONITOR) {
      return Optional.empty();
    }
    return Optional.of(nozzleReactionLbf(job, job.flowEachGpm(), job.needPsi()));
  }

  /** What one nozzle of a job pushes back with at a flow and a pressure at it, lbf. */
  public static double nozzleReactionLbf(Job job, double flowGpm, double nozzlePsi) {
    return job.tipIn().isPresent()
        ? Reaction.solidLbf(job.tipIn().getAsDouble(), nozzlePsi)
        : Reaction.fogLbf(flowGpm, nozzlePsi);
  }

  /** The other laws over all legs; the bore told is that of the hose at the source. */
  private static List<CrossCheck> crossCheck(Job job, List<LegFigures> legs) {
    double boreIn = legs.get(0).leg().hose().bore().boreIn();
    double c = Limit.HAZEN_WILLIAMS_C.value();
    double roughnessIn = Limit.LINER_ROUGHNESS_IN.value();
    double temperatureF = job.service().temperatureOrUsualF();
    return List.of(
        new CrossCheck(
            "hazen-williams",
            Optional.of(c),
            Optional.empty(),
            Optional.empty(),
            boreIn,
            lossPsi(legs, bore -> new HazenWilliams(c, bore))),
        new CrossCheck(
            "darcy-weisbach",
            Optional.empty(),
            Optional.of(roughnessIn),
            Optional.of(temperatureF),
            boreIn,
            lossPsi(legs, bore -> new DarcyWeisbach(roughnessIn, bore, temperatureF))));
  }

  private static double lossPsi(List<LegFigures> legs, DoubleFunction<FrictionLaw> onBore) {
    return legs.stream()
        .mapToDouble(
            leg ->
                onBore
                    .apply(leg.leg().hose().bore().boreIn())
                    .lossPsi(leg.flowGpm(), leg.lay().lengthFt()))
        .sum();
  }
}
