package hosewright.line;

import hosewright.catalogue.Rating;
import hosewright.hydraulics.Physical;
import hosewright.hydraulics.Supply;
import java.util.List;
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
    // The lowest point of the hose stands under the fall as well, when nothing flows.
    double fallPsi = Math.max(0, -risePsi);
    OptionalDouble hoseMayCarryPsi = hoseLimitPsi(job, frame.hose().rating());
    if (job.supply().isEmpty()) {
      double mostPsi = hoseMayCarryPsi.orElse(Double.POSITIVE_INFINITY) - fallPsi - takenPsi;
      return new PressureBudget(mostPsi + HAIR_PSI, takenPsi, takenPsi - risePsi)
          .holding(frame.before(), true, job)
          .holding(frame.after(), false, job);
    }
    double closedPsi = job.supply().get().closedPsi() + fallPsi;
    if (hoseMayCarryPsi.isPresent() && closedPsi > hoseMayCarryPsi.getAsDouble() + HAIR_PSI) {
      return stated(Double.NEGATIVE_INFINITY);
    }
    return stated(job.supply().get().pressurePsi(job.flowGpm()) - takenPsi + HAIR_PSI);
  }

  private PressureBudget holding(List<Bridge.Link> parts, boolean beforeHose, Job job) {
    PressureBudget budget = this;
    for (Bridge.Link part : parts) {
      OptionalDouble rated = part.item().rating().workingPsiAt(job.service().temperatureOrUsualF());
      budget = budget.holding(rated.orElse(Double.POSITIVE_INFINITY), beforeHose);
    }
    return budget;
  }

  /** What is left to lose when a part is added that is rated for so much, psi. */
  PressureBudget holding(double ratedPsi, boolean beforeHose) {
    double mostPsi = ratedPsi - (beforeHose ? sourcePsi : behindHosePsi) + HAIR_PSI;
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
    for (Bridge.Link part : frame.fixedParts()) {
      Placed placed = Placed.fitting(Placed.Role.DEVICE, part, 1);
      lossPsi += PlanHydraulics.fitting(placed).lossPsi(job.flowGpm());
    }
    return lossPsi;
  }

  /**
   * The pressure that every part between source and hose sees at the least in a plan that passes,
   * psi.
   *
   * @param lossPsi the least that the whole line loses, without the rise
   */
  static double seenBeforeHosePsi(Job job, double lossPsi) {
    if (!job.service().isWater()) {
      return 0;
    }
    double neededPsi = job.needPsi() + job.run().riseFt() * Physical.PSI_PER_FT + lossPsi;
    return job.supply().map(Supply::closedPsi).orElse(neededPsi);
  }

  /** The same between hose and appliance. */
  static double seenBehindHosePsi(Job job, double lossPsi) {
    if (!job.service().isWater()) {
      return 0;
    }
    double risePsi = job.run().riseFt() * Physical.PSI_PER_FT;
    return job.supply()
        .map(supply -> Math.max(supply.closedPsi() - risePsi, job.needPsi()))
        .orElse(job.needPsi() + lossPsi);
  }

  /**
   * A rating, psi, that is enough for any adapter of a line that passes: what a stated source puts
   * on it at the most, else what the hose may carry, because hose stands under all that its
   * adapters do; empty where neither is known.
   */
  static OptionalDouble enoughPsi(Job job, Rating hose) {
    if (!job.service().isWater()) {
      return OptionalDouble.empty();
    }
    double fallPsi = Math.max(0, -job.run().riseFt()) * Physical.PSI_PER_FT;
    return job.supply().isPresent()
        ? OptionalDouble.of(job.supply().get().closedPsi() + fallPsi)
        : hoseLimitPsi(job, hose);
  }

  boolean allows(double lossPsi) {
    return lossPsi <= availablePsi;
  }
}
