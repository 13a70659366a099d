package hosewright.line.water;

import hosewright.hydraulics.Demand;
import hosewright.job.Job;

/** What the appliances of a job take of the water that comes, by the laws of flow. */
public final class Outflow {
  private Outflow() {}

  /** What stands at the end of a job's line. */
  public static Demand ofAll(Job job) {
    Demand one = ofOne(job);
    return job.appliances() == 1 ? one : new Demand.Alike(one, job.appliances());
  }

  /** One of the appliances at the end of a job's line. */
  public static Demand ofOne(Job job) {
    if (job.tipIn().isPresent()) {
      return new Demand.SmoothBore(job.tipIn().getAsDouble());
    }
    return job.needPsi() > 0
        ? new Demand.FlowAndPressure(job.flowEachGpm(), job.needPsi())
        : new Demand.OpenEnd(job.to().sizeIn(), 0);
  }
}
