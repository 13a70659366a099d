package hosewright.line.water;

import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.job.question.Practice;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Placed;
import hosewright.thread.End;

/**
 * How fast water may run through fittings and ends at the very most. They are judged by their loss;
 * this is the outer limit, far above normal practice, beyond which nobody lays them.
 */
public final class OuterVelocity {
  /** Fittings, and the couplings of the hose. */
  public static final Practice FITTINGS = Practice.named("fitting-velocity");

  /** The outlet a line starts from, and the end of the appliance. */
  public static final Practice ENDS = Practice.named("end-velocity");

  private static final double HAIR_FT_PER_S = 1e-6;

  private OuterVelocity() {}

  /**
   * Whether a fitting in its place is faster than the job lets it be, or passes more than it is
   * rated for; one of a rated flow is held to that alone.
   */
  public static boolean forbids(Job job, Placed fitting) {
    if (RatedFlow.gpm(fitting).isPresent()) {
      return RatedFlow.forbids(job, fitting);
    }
    return holds(job)
        && Port.fastest(fitting).velocityFtPerS(job.flowGpm()) > mostInFittingsFtPerS(job);
  }

  /** Whether the couplings of a leg's hose are. */
  public static boolean forbids(Job job, LegShape leg) {
    return holds(job)
        && couplingsFtPerS(leg.hose(), job.flowGpm() / leg.lines()) > mostInFittingsFtPerS(job);
  }

  /** The rule's limit, or what an end of the job itself asks for: no fitting could be slower. */
  public static double mostInFittingsFtPerS(Job job) {
    double outlet = ftPerS(job.from(), job.flowGpm() / job.outlets());
    double appliance = ftPerS(job.to(), job.flowEachGpm());
    return Math.max(FITTINGS.limit().getAsDouble(), Math.max(outlet, appliance) + HAIR_FT_PER_S);
  }

  private static boolean holds(Job job) {
    return job.service().isWater() && !job.lifts(FITTINGS);
  }

  /** In the couplings of hose, ft/s; its bore has a limit of its own. */
  public static double couplingsFtPerS(HoseLine hose, double flowGpm) {
    double narrowerIn = Math.min(hose.inlet().sizeIn(), hose.outlet().sizeIn());
    return Physical.velocityFtPerS(flowGpm, narrowerIn);
  }

  /** In an end of nominal size, ft/s. */
  public static double ftPerS(End end, double flowGpm) {
    return Physical.velocityFtPerS(flowGpm, end.sizeIn());
  }

  /** What a bore passes at a velocity, gpm. */
  public static double gpm(double ftPerS, double boreIn) {
    return ftPerS / Physical.velocityFtPerS(1, boreIn);
  }
}
