package hosewright.line;

import hosewright.catalogue.Rating;
import hosewright.hydraulics.Physical;
import hosewright.hydraulics.Supply;
import java.util.OptionalDouble;

/**
 * What a frame may lose in hose and adapters before a pressure check must fail: a bound that lets a
 * search leave out choices without looking at them.
 *
 * <p>With a stated source, what it gives at the flow less the need, the rise and the losses of the
 * parts that must stand in the line. With none, the source will hold just what is needed, and hose
 * stands under that when the nozzle is shut: so the hose's own limit decides.
 *
 * @param availablePsi the most that lay and bridges may lose, psi; below zero when nothing may
 * @param sourcePsi what the source will hold without any loss in lay and bridges, psi; minus
 *     infinity where the source is stated, because their losses do not change it then
 * @param behindHosePsi the same as it stands between hose and appliance when nothing flows, psi
 */
record PressureBudget(double availablePsi, double sourcePsi, double behindHosePsi) {
  private static final double HAIR_PSI = PressureChecks.HAIR_PSI;

  static final PressureBudget UNLIMITED = stated(Double.POSITIVE_INFINITY);

  private static PressureBudget stated(double availablePsi) {
    return new PressureBudget(availablePsi, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);
  }

  /**
   * @param fixedLossPsi as {@link #fixedLossPsi} tells
   */
  static PressureBudget of(Job job, Frame frame, double fixedLossPsi) {
    if (!job.service().isWater()) {
      return UNLIMITED;
    }
    double risePsi = job.run().riseFt() * Physical.PSI_PER_FT;
    double takenPsi = job.needPsi() + risePsi + fixedLossPsi;
    if (job.supply().isEmpty()) {
      return unstated(job, frame, takenPsi, risePsi);
    }
    double closedPsi = job.supply().get().closedPsi();
    for (int i = 0; i < frame.legs().size(); i++) {
      OptionalDouble mayCarryPsi = hoseLimitPsi(job, frame.legs().get(i).hose().rating());
      double seenPsi = closedPsi + aboveSourcePsi(frame, i, risePsi);
      if (mayCarryPsi.isPresent() && seenPsi > mayCarryPsi.getAsDouble() + HAIR_PSI) {
        return stated(Double.NEGATIVE_INFINITY);
      }
    }
    return stated(job.supply().get().pressurePsi(job.flowGpm()) - takenPsi + HAIR_PSI);
  }

  private static PressureBudget unstated(Job job, Frame frame, double takenPsi, double risePsi) {
    double mostPsi = Double.POSITIVE_INFINITY;
    for (int i = 0; i < frame.legs().size(); i++) {
      OptionalDouble mayCarryPsi = hoseLimitPsi(job, frame.legs().get(i).hose().rating());
      double seenPsi = takenPsi + aboveSourcePsi(frame, i, risePsi);
      mostPsi = Math.min(mostPsi, mayCarryPsi.orElse(Double.POSITIVE_INFINITY) - seenPsi);
    }
    PressureBudget budget = new PressureBudget(mostPsi + HAIR_PSI, takenPsi, takenPsi - risePsi);
    for (Frame.Fixed fixed : frame.fixedParts()) {
      OptionalDouble rated =
          fixed.part().item().rating().workingPsiAt(job.service().temperatureOrUsualF());
      budget = budget.holding(rated.orElse(Double.POSITIVE_INFINITY), fixed.stretch());
    }
    return budget;
  }

  /**
   * What hose of a leg sees over the source's own pressure when nothing flows, at least, psi: the
   * first leg begins at the source, the last ends at the appliance.
   */
  private static double aboveSourcePsi(Frame frame, int leg, double risePsi) {
    boolean first = leg == 0;
    boolean last = leg == frame.legs().size() - 1;
    return first ? (last ? Math.max(0, -risePsi) : 0) : -risePsi;
  }

  /** What is left to lose when a part is added that is rated for so much, psi. */
  PressureBudget holding(double ratedPsi, Frame.Stretch stretch) {
    double seenPsi =
        switch (stretch) {
          case BEFORE_HOSE -> sourcePsi;
          case BETWEEN -> Math.min(sourcePsi, behindHosePsi);
          case BEHIND_HOSE -> behindHosePsi;
        };
    double mostPsi = ratedPsi - seenPsi + HAIR_PSI;
    return mostPsi >= availablePsi ? this : new PressureBudget(mostPsi, sourcePsi, behindHosePsi);
  }

  /** The lower of working pressure and the share of the service test pressure. */
  private static OptionalDouble hoseLimitPsi(Job job, Rating rating) {
    OptionalDouble working = rating.workingPsiAt(job.service().temperatureOrUsualF());
    OptionalDouble test = rating.serviceTestPsi();
    if (test.isEmpty()) {
      return working;
    }
    double byTestPsi = test.getAsDouble() / Limit.SERVICE_TEST_SHARE.value();
    return OptionalDouble.of(Math.min(working.orElse(byTestPsi), byTestPsi));
  }

  /** What the parts take that must stand in the line, psi. */
  static double fixedLossPsi(Job job, Frame frame) {
    double lossPsi = 0;
    for (Frame.Fixed fixed : frame.fixedParts()) {
      Placed placed = Placed.fitting(Placed.Role.DEVICE, fixed.part(), fixed.lines());
      lossPsi += PlanHydraulics.fitting(placed).lossPsi(job.flowGpm());
    }
    return lossPsi;
  }

  /**
   * The pressure that every part of a stretch sees at the least in a plan that passes, psi.
   *
   * @param lossPsi the least that the whole line loses, without the rise
   */
  static double leastSeenPsi(Job job, Frame.Stretch stretch, double lossPsi) {
    if (!job.service().isWater()) {
      return 0;
    }
    double risePsi = job.run().riseFt() * Physical.PSI_PER_FT;
    double beforePsi =
        job.supply().map(Supply::closedPsi).orElse(job.needPsi() + risePsi + lossPsi);
    double behindPsi = beforePsi - risePsi;
    return switch (stretch) {
      case BEFORE_HOSE -> beforePsi;
      case BETWEEN -> Math.min(beforePsi, behindPsi);
      case BEHIND_HOSE -> Math.max(behindPsi, job.needPsi());
    };
  }

  /**
   * A rating, psi, that is enough for any adapter of a line that passes: what a stated source puts
   * on it at the most, else what the hose may carry, because hose stands under all that its
   * adapters do; empty where neither is known.
   */
  static OptionalDouble enoughPsi(Job job, Frame frame) {
    if (!job.service().isWater()) {
      return OptionalDouble.empty();
    }
    if (job.supply().isPresent()) {
      double fallPsi = Math.max(0, -job.run().riseFt()) * Physical.PSI_PER_FT;
      return OptionalDouble.of(job.supply().get().closedPsi() + fallPsi);
    }
    double mostPsi = 0;
    for (Leg leg : frame.legs()) {
      OptionalDouble mayCarryPsi = hoseLimitPsi(job, leg.hose().rating());
      if (mayCarryPsi.isEmpty()) {
        return OptionalDouble.empty();
      }
      mostPsi = Math.max(mostPsi, mayCarryPsi.getAsDouble());
    }
    return OptionalDouble.of(mostPsi);
  }

  boolean allows(double lossPsi) {
    return lossPsi <= availablePsi;
  }
}
