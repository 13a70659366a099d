package hosewright.line.water;

import hosewright.catalogue.Rating;
import hosewright.job.Job;
import hosewright.job.Limit;

/** What pressure a part bears in a job, psi; infinite where its rating does not say. */
public final class BornePressure {
  private BornePressure() {}

  /** Of hose: the lower of its working pressure and the share of its service test pressure. */
  public static double hosePsi(Job job, Rating rating) {
    return Math.min(workingPsi(job, rating), testedPsi(job, rating));
  }

  /** Its working pressure at the job's temperature. */
  public static double workingPsi(Job job, Rating rating) {
    return rating
        .workingPsiAt(job.service().temperatureOrUsualF())
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The share of its service test pressure that hose may carry. */
  public static double testedPsi(Job job, Rating rating) {
    return rating.serviceTestPsi().orElse(Double.POSITIVE_INFINITY)
        / Limit.SERVICE_TEST_SHARE.value();
  }
}
