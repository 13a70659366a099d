package hosewright.line.water;

import hosewright.job.Job;
import hosewright.job.question.Practice;
import hosewright.line.assembly.Placed;
import java.util.OptionalDouble;

/** What devices are made to pass: a meter, a backflow preventer. */
public final class RatedFlow {
  public static final Practice RULE = Practice.named("rated-flow");

  private RatedFlow() {}

  /** The most that a part's row says it passes, gpm; empty where it does not say. */
  public static OptionalDouble gpm(Placed part) {
    return part.item().isPresent() && part.role().isFitting()
        ? part.item().get().water().ratedFlowGpm()
        : OptionalDouble.empty();
  }

  /** How much of the line's flow goes through one of such parts, gpm. */
  public static double throughGpm(Job job, Placed part) {
    return job.flowGpm() / part.lines();
  }

  /** Whether a fitting in its place is to pass more than the job lets it. */
  public static boolean forbids(Job job, Placed fitting) {
    OptionalDouble ratedGpm = gpm(fitting);
    return ratedGpm.isPresent()
        && throughGpm(job, fitting) > ratedGpm.getAsDouble()
        && job.service().isWater()
        && !job.lifts(RULE);
  }
}
