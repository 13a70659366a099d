package hosewright.line.search;

import hosewright.hydraulics.Ground;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.check.PressureChecks;
import hosewright.line.water.BornePressure;
import hosewright.line.water.FittingLoss;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a topology may lose in hose and adapters before a pressure check must fail: a bound that
 * lets a search leave out choices without looking at them.
 *
 * <p>With a stated source, what it gives at the flow less the need, the rise and the losses of the
 * parts that must stand in the line. With none, the source will hold just what is needed, and hose
 * stands under that when the nozzle is shut: so the hose's own limit decides.
 *
 * @param availablePsi the most that lay and bridges may lose, psi; below zero when nothing may
 * @param sourcePsi what the source will hold without any loss in lay and bridges, psi; minus
 *     infinity where the source is stated, because their losses do not change it then
 * @param behindHosePsi the same as it stands between hose and appliance when nothing flows, psi
 * @param hoseSeenPsi what hose sees at the least wherever it lies, without any loss where that adds
 *     to it, psi
 * @param onTheWay what must be left where the way is highest
 */
record PressureBudget(
    double availablePsi,
    double sourcePsi,
    double behindHosePsi,
    double hoseSeenPsi,
    HighPlace onTheWay) {
  private static final double HAIR_PSI = PressureChecks.HAIR_PSI;
  private static final double NOT_ADDED_TO = Double.NEGATIVE_INFINITY;

  static final PressureBudget UNLIMITED =
      new PressureBudget(
          Double.POSITIVE_INFINITY, NOT_ADDED_TO, NOT_ADDED_TO, NOT_ADDED_TO, HighPlace.NONE);

  /**
   * @param fixedLossPsi as {@link #fixedLossPsi} tells
   */
  static PressureBudget of(Job job, Topology topology, double fixedLossPsi) {
    if (!job.service().isWater()) {
      return UNLIMITED;
    }
    double risePsi = job.run().riseFt() * Physical.PSI_PER_FT;
    double takenPsi = job.needPsi() + risePsi + fixedLossPsi;
    double standingPsi = job.supply().map(Supply::closedPsi).orElse(takenPsi);
    PressureBudget budget =
        job.supply()
            .map(supply -> stated(supply.pressurePsi(job.flowGpm()) - takenPsi))
            .orElseGet(() -> unstated(job, topology, takenPsi, risePsi))
            .withHoseSeenPsi(standingPsi - highestPsi(job));
    double mostStandingPsi = Double.POSITIVE_INFINITY;
    for (int leg = 0; leg < topology.legs().size(); leg++) {
      double belowPsi = belowSourcePsi(job, topology, leg);
      double carriedPsi = mostCarriedPsi(job, topology.legs().get(leg).hose());
      budget = budget.seeing(standingPsi + belowPsi, carriedPsi);
      mostStandingPsi = Math.min(mostStandingPsi, carriedPsi - belowPsi);
    }
    double mostHeldPsi =
        job.supply().map(supply -> supply.pressurePsi(job.flowGpm())).orElse(mostStandingPsi);
    return budget.with(HighPlace.of(job, topology, mostHeldPsi + HAIR_PSI));
  }

  private static PressureBudget stated(double leftPsi) {
    return new PressureBudget(
        leftPsi + HAIR_PSI, NOT_ADDED_TO, NOT_ADDED_TO, NOT_ADDED_TO, HighPlace.NONE);
  }

  private PressureBudget with(HighPlace highest) {
    return new PressureBudget(availablePsi, sourcePsi, behindHosePsi, hoseSeenPsi, highest);
  }

  /** What the highest place on the way takes to be reached with nothing flowing, psi; 0 or more. */
  private static double highestPsi(Job job) {
    return job.run().way().highestFt() * Physical.PSI_PER_FT;
  }

  private static PressureBudget unstated(
      Job job, Topology topology, double takenPsi, double risePsi) {
    PressureBudget budget =
        new PressureBudget(
            Double.POSITIVE_INFINITY,
            takenPsi,
            takenPsi - risePsi,
            takenPsi - highestPsi(job),
            HighPlace.NONE);
    for (Topology.Fixed fixed : topology.fixedParts()) {
      OptionalDouble rated =
          fixed.part().item().rating().workingPsiAt(job.service().temperatureOrUsualF());
      budget = budget.holding(rated.orElse(Double.POSITIVE_INFINITY), fixed.stretch());
    }
    return budget;
  }

  /**
   * What hose of a leg sees over the source's own pressure when nothing flows, at least, psi: some
   * of it lies in the lowest place of its part of the way. With no route the first leg begins at
   * the source and the last ends at the appliance, and no more is known.
   */
  static double belowSourcePsi(Job job, Topology topology, int leg) {
    Optional<Ground> ground = job.run().groundOf(leg);
    boolean first = leg == 0;
    boolean last = leg == topology.legs().size() - 1;
    double fallFt =
        ground.isPresent()
            ? -job.run().heightFtAtStartOf(leg) - ground.get().lowestFt()
            : first && !last ? 0 : first ? -job.run().way().lowestFt() : -job.run().riseFt();
    return fallFt * Physical.PSI_PER_FT;
  }

  /**
   * What is left to lose when a bridge is laid.
   *
   * @param ratedPsi what it may carry
   * @param lossPsi what it loses
   */
  PressureBudget bridging(double ratedPsi, double lossPsi, Topology.Stretch stretch) {
    PressureBudget left = holding(ratedPsi, stretch);
    return stretch == Topology.Stretch.BEFORE_HOSE
        ? left.with(onTheWay.behindParts(lossPsi))
        : left;
  }

  /** What is left to lose when a part is added that is rated for so much, psi. */
  private PressureBudget holding(double ratedPsi, Topology.Stretch stretch) {
    double seenPsi =
        switch (stretch) {
          case BEFORE_HOSE -> sourcePsi;
          // It may stand where the way is highest.
          case BETWEEN -> sourcePsi == NOT_ADDED_TO ? NOT_ADDED_TO : hoseSeenPsi;
          case BEHIND_HOSE -> behindHosePsi;
        };
    return atMost(ratedPsi - seenPsi + HAIR_PSI);
  }

  /**
   * What is left to lose when hose of the first leg is laid, or of another.
   *
   * @param carriedPsi what it may carry
   * @param lossPsi what it loses
   */
  PressureBudget laying(int leg, double carriedPsi, double lossPsi) {
    PressureBudget left = seeing(hoseSeenPsi, carriedPsi);
    return leg == 0 ? left.with(onTheWay.behindHose(lossPsi)) : left;
  }

  private PressureBudget seeing(double seenPsi, double carriedPsi) {
    double leftPsi = carriedPsi - seenPsi + HAIR_PSI;
    boolean lossesAdd = sourcePsi != NOT_ADDED_TO;
    return leftPsi < 0 || lossesAdd ? atMost(leftPsi) : this;
  }

  private PressureBudget withHoseSeenPsi(double psi) {
    return new PressureBudget(availablePsi, sourcePsi, behindHosePsi, psi, onTheWay);
  }

  private PressureBudget atMost(double psi) {
    return psi >= availablePsi
        ? this
        : new PressureBudget(psi, sourcePsi, behindHosePsi, hoseSeenPsi, onTheWay);
  }

  /** What the strongest sections of a hose line may carry, psi; infinite where one is unrated. */
  static double mostCarriedPsi(Job job, HoseLine hose) {
    return hose.options().stream()
        .mapToDouble(option -> BornePressure.hosePsi(job, option.rating()))
        .max()
        .orElse(0);
  }

  /** What the parts take that must stand in the line, psi. */
  static double fixedLossPsi(Job job, Topology topology) {
    double lossPsi = 0;
    for (Topology.Fixed fixed : topology.fixedParts()) {
      Placed placed = Placed.inLine(fixed.part(), fixed.lines());
      lossPsi += FittingLoss.of(placed).lossPsi(job.flowGpm());
    }
    return lossPsi;
  }

  /**
   * The pressure that every part of a stretch sees at the least in a plan that passes, psi.
   *
   * @param lossPsi the least that the whole line loses, without the rise
   */
  static double leastSeenPsi(Job job, Topology.Stretch stretch, double lossPsi) {
    if (!job.service().isWater()) {
      return 0;
    }
    double risePsi = job.run().riseFt() * Physical.PSI_PER_FT;
    double beforePsi =
        job.supply().map(Supply::closedPsi).orElse(job.needPsi() + risePsi + lossPsi);
    double behindPsi = beforePsi - risePsi;
    return switch (stretch) {
      case BEFORE_HOSE -> beforePsi;
      case BETWEEN -> beforePsi - highestPsi(job);
      case BEHIND_HOSE -> Math.max(behindPsi, job.needPsi());
    };
  }

  /**
   * A rating, psi, that is enough for any adapter of a line that passes: what a stated source puts
   * on it at the most, else what the hose may carry, because hose stands under all that its
   * adapters do; empty where neither is known.
   */
  static OptionalDouble enoughPsi(Job job, Topology topology) {
    if (!job.service().isWater()) {
      return OptionalDouble.empty();
    }
    if (job.supply().isPresent()) {
      double fallPsi = -job.run().way().lowestFt() * Physical.PSI_PER_FT;
      return OptionalDouble.of(job.supply().get().closedPsi() + fallPsi);
    }
    double mostPsi =
        topology.legs().stream()
            .mapToDouble(leg -> mostCarriedPsi(job, leg.hose()))
            .max()
            .orElse(0);
    return Double.isInfinite(mostPsi) ? OptionalDouble.empty() : OptionalDouble.of(mostPsi);
  }

  boolean allows(double lossPsi) {
    return lossPsi <= availablePsi && onTheWay.leftPsi() >= 0;
  }
}
