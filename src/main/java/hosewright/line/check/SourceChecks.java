package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.hydraulics.Hydrant;
import hosewright.hydraulics.suction.Suction;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Checks on what the line is fed from. */
public final class SourceChecks {
  private final Job job;

  SourceChecks(Job job) {
    this.job = job;
  }

  /** All of them, for the flow that a job asks for. */
  public static List<Check> of(Job job) {
    SourceChecks source = new SourceChecks(job);
    return Stream.of(
            source.hydrantResidual(),
            source.hydrantLossKnown(),
            source.hydrantTested(),
            source.suctionLift())
        .flatMap(Optional::stream)
        .toList();
  }

  Optional<Check> hydrantResidual() {
    return hydrant()
        .map(
            hydrant -> {
              double mainPsi = hydrant.mainPsi(job.flowGpm());
              boolean enough = mainPsi >= Limit.HYDRANT_RESIDUAL_PSI.value();
              return check(
                  Limit.HYDRANT_RESIDUAL_PSI,
                  CheckId.HYDRANT_RESIDUAL,
                  enough ? Outcome.PASS : Outcome.FAIL,
                  mainPsi,
                  enough
                      ? text("the main keeps %.1f psi at this flow", mainPsi)
                      : text(
                          "the main would be drawn to %.1f psi: %s",
                          mainPsi, Limit.HYDRANT_RESIDUAL_PSI.note()));
            });
  }

  Optional<Check> hydrantLossKnown() {
    return hydrant()
        .filter(hydrant -> hydrant.hydrantLossPsi() == 0)
        .map(
            hydrant ->
                check(
                    CheckId.HYDRANT_LOSS,
                    Outcome.WARN,
                    0,
                    0,
                    "psi",
                    "loss between main and outlet was not stated and is taken as none: give"
                        + " hydrant-loss",
                    Checks.PRACTICE));
  }

  /** A test that hardly moved the main tells little about it. */
  Optional<Check> hydrantTested() {
    return hydrant()
        .filter(hydrant -> !hydrant.testDrewEnough())
        .map(
            hydrant ->
                check(
                    Limit.HYDRANT_TEST_DROP,
                    CheckId.HYDRANT_TEST,
                    Outcome.WARN,
                    1 - hydrant.residualPsi() / hydrant.staticPsi(),
                    Limit.HYDRANT_TEST_DROP.note()));
  }

  /** Lifts the atmosphere cannot hold at all were refused with the job. */
  Optional<Check> suctionLift() {
    return job.run()
        .lifted()
        .map(
            suction -> {
              double limitFt =
                  Suction.dependableLiftFt(
                      suction.altitudeFt(), job.service().temperatureOrUsualF());
              boolean holds = suction.liftFt() <= limitFt;
              return check(
                  CheckId.SUCTION_LIFT,
                  holds ? Outcome.PASS : Outcome.WARN,
                  suction.liftFt(),
                  limitFt,
                  "ft",
                  holds ? "within what a pump lifts dependably" : Limit.SUCTION_LIFT_SHARE.note(),
                  Limit.SUCTION_LIFT_SHARE.source());
            });
  }

  private Optional<Hydrant> hydrant() {
    return job.supply().filter(Hydrant.class::isInstance).map(Hydrant.class::cast);
  }
}
