package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.hydraulics.ApplianceLoss;
import hosewright.hydraulics.DarcyWeisbach;
import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.HazenWilliams;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.MinorLossTable;
import hosewright.hydraulics.Physical;
import hosewright.hydraulics.Reaction;
import hosewright.hydraulics.Solution;
import hosewright.hydraulics.Supply;
import hosewright.line.LineHydraulicsResult.CrossCheck;
import hosewright.line.LineHydraulicsResult.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out pressures, weights and times of an assembled line at the flow the job asks for. */
final class PlanHydraulics {
  private PlanHydraulics() {}

  /** The line as the water meets it, for {@link LineHydraulics}. */
  static List<LineElement> elements(Job job, Assembly line) {
    HoseLine hose = line.frame().hose();
    double laidFt = line.lay().lengthFt();
    List<LineElement> elements = new ArrayList<>();
    for (Placed part : line.parts()) {
      switch (part.role()) {
        case HOSE -> {
          double lengthFt = part.count() * part.lengthFt();
          elements.add(
              new HoseLeg(
                  part.description(),
                  FrictionChoice.of(job, hose, part.isOwnedHose()).law(),
                  lengthFt,
                  job.run().riseFt() * lengthFt / laidFt,
                  hose.boreIn(),
                  part.lines(),
                  part.count()));
        }
        case ADAPTER, DEVICE -> elements.add(fitting(part));
        case SOURCE, APPLIANCE -> {}
      }
    }
    return elements;
  }

  /** A stated loss wins, then the item's coefficient, then what is usual for such a part. */
  static LineElement fitting(Placed part) {
    Optional<Item> item = part.item();
    String name = part.description();
    if (item.isPresent() && item.get().applianceLossPsi().isPresent()) {
      return new ApplianceLoss(
          name,
          alwaysLoses(item.get()) ? 0 : ApplianceLoss.USUAL_THRESHOLD_GPM,
          item.get().applianceLossPsi().getAsDouble(),
          part.lines());
    }
    if (item.isPresent() && item.get().lossCoefficient().isPresent()) {
      return new Fitting(
          name,
          item.get().lossCoefficient().getAsDouble(),
          part.waterwayIn(),
          part.lines(),
          "K from the catalogue's item");
    }
    return usual(part);
  }

  /** The table's coefficient for such a part, and the change of bore besides. */
  private static Fitting usual(Placed part) {
    Fitting change =
        Fitting.changeOfBore(
            part.description(),
            part.upstream().orElseThrow().sizeIn(),
            part.downstream().orElseThrow().sizeIn());
    ItemKind kind = part.item().map(Item::kind).orElse(ItemKind.ADAPTER);
    return MinorLossTable.coefficient(kind.word())
        .map(
            row ->
                new Fitting(
                    part.description(),
                    change.lossCoefficient() + row.k(),
                    change.boreIn(),
                    part.lines(),
                    change.lossCoefficient() == 0
                        ? row.source()
                        : row.source() + "; " + change.source()))
        .orElseGet(() -> change.onEachOf(part.lines()));
  }

  /**
   * A meter turns and a backflow preventer's springs open at any flow; a wye costs at high flow.
   */
  private static boolean alwaysLoses(Item item) {
    return item.kind() == ItemKind.BACKFLOW || item.kind() == ItemKind.METER;
  }

  /**
   * Pressures and losses with the job's own source, or with a source that holds just the pressure
   * needed where none is stated: a line may need more than any source gives, and says so then.
   */
  static LineHydraulicsResult of(Job job, Assembly line) {
    if (!job.service().isWater()) {
      return LineHydraulicsResult.notCalculated("not calculated: the fluid is not water");
    }
    HoseLine hose = line.frame().hose();
    List<LineElement> elements = elements(job, line);
    Solution needed = LineHydraulics.required(elements, job.flowGpm(), job.needPsi());
    double sourcePsi =
        job.supply()
            .map(supply -> supply.pressurePsi(job.flowGpm()))
            .orElseGet(() -> leastHeldPsi(needed));
    double closedPsi = job.supply().map(Supply::closedPsi).orElse(sourcePsi);
    double deliveredPsi = sourcePsi - needed.losses().totalPsi();
    double flowInOneGpm = job.flowGpm() / line.frame().lines();
    double velocity = Physical.velocityFtPerS(flowInOneGpm, hose.boreIn());
    double waterGal = Physical.volumeGal(hose.boreIn(), line.lay().lengthFt());
    int lines = line.frame().lines();
    return new LineHydraulicsResult(
        needed.losses().frictionPsi(),
        FrictionChoice.of(job, hose).basis(),
        FrictionChoice.of(job, hose).coefficient(),
        crossCheck(job, line, flowInOneGpm),
        needed.losses().elevationPsi(),
        needed.losses().fittingPsi(),
        needed.losses().appliancePsi(),
        needed.sourcePsi(),
        job.supply().map(given -> sourcePsi),
        job.supply().isPresent() ? deliveredPsi : job.needPsi(),
        velocity,
        reaction(job),
        Physical.surgePsi(velocity, hose.waveSpeedFtPerS().orElse(Physical.SLOWEST_WAVE_FT_S)),
        Physical.surgePsi(velocity, hose.waveSpeedFtPerS().orElse(Physical.FASTEST_WAVE_FT_S)),
        waterGal,
        emptyWeightLb(hose, line.lay(), lines),
        chargedWeightLb(hose, line.lay(), lines),
        Physical.fillMinutes(waterGal * lines, job.flowGpm()),
        stations(LineHydraulics.profile(elements, job.flowGpm(), sourcePsi, closedPsi)),
        List.of(),
        List.of());
  }

  /** Stations as a plan shows them. */
  static List<Station> stations(List<hosewright.hydraulics.Station> profile) {
    return profile.stream()
        .map(
            station ->
                new Station(
                    station.name(),
                    station.distanceFt(),
                    station.elevationFt(),
                    station.flowingPsi(),
                    station.closedPsi()))
        .toList();
  }

  /** What a source that is not stated must hold: what is needed, and no suction on the way. */
  private static double leastHeldPsi(Solution needed) {
    double lowestPsi =
        needed.profile().stream()
            .mapToDouble(hosewright.hydraulics.Station::flowingPsi)
            .min()
            .orElseThrow();
    return needed.sourcePsi() - Math.min(0, lowestPsi);
  }

  private static Optional<Double> reaction(Job job) {
    if (job.appliance() != ApplianceKind.NOZZLE && job.appliance() != ApplianceKind.MONITOR) {
      return Optional.empty();
    }
    return Optional.of(
        job.tipIn().isPresent()
            ? Reaction.solidLbf(job.tipIn().getAsDouble(), job.needPsi())
            : Reaction.fogLbf(job.flowGpm(), job.needPsi()));
  }

  private static double emptyWeightLb(HoseLine hose, Lay lay, int lines) {
    double weightLb = 0;
    for (int i = 0; i < hose.options().size(); i++) {
      weightLb += hose.options().get(i).weightLb() * lay.counts().get(i);
    }
    return weightLb * lines;
  }

  /** Weight of all hose full of water, lb. */
  static double chargedWeightLb(HoseLine hose, Lay lay, int lines) {
    double waterGal = Physical.volumeGal(hose.boreIn(), lay.lengthFt());
    return emptyWeightLb(hose, lay, lines) + waterGal * lines * Physical.WATER_LB_PER_GAL;
  }

  private static List<CrossCheck> crossCheck(Job job, Assembly line, double flowInOneGpm) {
    double boreIn = line.frame().hose().boreIn();
    double laidFt = line.lay().lengthFt();
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
            new HazenWilliams(c, boreIn).lossPsi(flowInOneGpm, laidFt)),
        new CrossCheck(
            "darcy-weisbach",
            Optional.empty(),
            Optional.of(roughnessIn),
            Optional.of(temperatureF),
            boreIn,
            new DarcyWeisbach(roughnessIn, boreIn, temperatureF).lossPsi(flowInOneGpm, laidFt)));
  }
}
