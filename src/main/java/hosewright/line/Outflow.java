package hosewright.line;

import hosewright.hydraulics.Demand;

/** What the appliances of a job take of the water that comes, by the laws of flow. */
final class Outflow {
  private Outflow() {}

  /** What stands at the end of a job's line. */
  static Demand ofAll(Job job) {
    Demand one = ofOne(job);
    return job.appliances() == 1 ? one : new Demand.Alike(one, job.appliances());
  }

  /** One of the appliances at the end of a job's line. */
  static Demand ofOne(Job job) {
    if (job.tipIn().isPresent()) {
      return new Demand.SmoothBore(job.tipIn().getAsDouble());
    }
    return job.needPsi() > 0
        ? new Demand.FlowAndPressure(job.flowEachGpm(), job.needPsi())
        : new Demand.OpenEnd(job.to().sizeIn(), 0);
  }
}
