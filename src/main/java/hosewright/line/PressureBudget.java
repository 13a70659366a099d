package hosewright.line;

import hosewright.catalogue.Rating;
import hosewright.hydraulics.FrictionLaw;
import hosewright.hydraulics.Physical;
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
 */
record PressureBudget(double availablePsi) {
  private static final double HAIR_PSI = 1e-6;

  static final PressureBudget UNLIMITED = new PressureBudget(Double.POSITIVE_INFINITY);

  static PressureBudget of(Job job, Frame frame) {
    if (!job.service().isWater()) {
      return UNLIMITED;
    }
    double risePsi = job.run().riseFt() * Physical.PSI_PER_FT;
    double takenPsi =
        job.needPsi()
            + risePsi
            + frame
                .fixedParts()
                .mapToDouble(
                    part ->
                        PlanHydraulics.fitting(Placed.fitting(Placed.Role.DEVICE, part, 1))
                            .lossPsi(job.flowGpm()))
                .sum();
    // The lowest point of the hose stands under the fall as well, when nothing flows.
    double fallPsi = Math.max(0, -risePsi);
    OptionalDouble hoseMayCarryPsi = hoseLimitPsi(job, frame.hose().rating());
    if (job.supply().isEmpty()) {
      return hoseMayCarryPsi.isEmpty()
          ? UNLIMITED
          : new PressureBudget(hoseMayCarryPsi.getAsDouble() - fallPsi - takenPsi + HAIR_PSI);
    }
    double closedPsi = job.supply().get().closedPsi() + fallPsi;
    if (hoseMayCarryPsi.isPresent() && closedPsi > hoseMayCarryPsi.getAsDouble() + HAIR_PSI) {
      return new PressureBudget(Double.NEGATIVE_INFINITY);
    }
    return new PressureBudget(job.supply().get().pressurePsi(job.flowGpm()) - takenPsi + HAIR_PSI);
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

  /**
   * The pressure that every adapter of a job sees at the least, psi: those rated lower are of no
   * use.
   */
  static double leastSeenPsi(Job job) {
    if (!job.service().isWater()) {
      return 0;
    }
    double risePsi = job.run().riseFt() * Physical.PSI_PER_FT;
    return job.supply()
        .map(supply -> supply.closedPsi() - Math.max(0, risePsi))
        .orElse(job.needPsi());
  }

  /** The highest pressure anywhere in a job's line, psi; empty when the source is not stated. */
  static OptionalDouble highestPsi(Job job) {
    return job.supply().isEmpty() || !job.service().isWater()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            job.supply().get().closedPsi()
                + Math.max(0, -job.run().riseFt()) * Physical.PSI_PER_FT);
  }

  boolean allows(double lossPsi) {
    return lossPsi <= availablePsi;
  }

  /** Loss of a lay, psi, or 0 where losses are not calculated. */
  static double layLossPsi(Job job, Frame frame, double lengthFt) {
    if (!job.service().isWater()) {
      return 0;
    }
    FrictionLaw law = FrictionChoice.of(job, frame.hose()).law();
    return law.lossPsi(job.flowGpm() / frame.lines(), lengthFt);
  }
}
