package hosewright.line.check;

import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Checks on pressures, flowing and with the nozzle shut. */
public final class PressureChecks {
  /** A hair under a limit is rounding, not a failure. */
  public static final double HAIR_PSI = 1e-6;

  private PressureChecks() {}

  public static List<Check> of(Job job, Assembly line, Hydraulics hydraulics) {
    FlowChecks flow = new FlowChecks(job, line, hydraulics);
    RatingChecks ratings = new RatingChecks(job, line, hydraulics);
    List<Check> all = new ArrayList<>();
    VelocityChecks velocity = new VelocityChecks(job, line);
    Check ends = velocity.ends();
    Check fittings = velocity.fittings();
    boolean tooFast = ends.outcome() == Check.Outcome.FAIL;
    if (tooFast) {
      // Told first: no other parts and no source would mend it.
      all.add(ends);
    }
    ratings.nozzlePressure().ifPresent(all::add);
    flow.tipFits().ifPresent(all::add);
    all.add(flow.delivered());
    all.addAll(SourceChecks.of(job));
    ratings.workingPressure(Role.HOSE, CheckId.HOSE_WORKING_PRESSURE).ifPresent(all::add);
    ratings.workingPressure(Role.ADAPTER, CheckId.FITTING_WORKING_PRESSURE).ifPresent(all::add);
    ratings.serviceTest().ifPresent(all::add);
    ratings.summit().ifPresent(all::add);
    all.add(ratings.noSuction());
    all.add(velocity.hose());
    all.add(fittings);
    velocity.ratedFlow().ifPresent(all::add);
    if (!tooFast) {
      all.add(ends);
    }
    flow.reaction().ifPresent(all::add);
    flow.tipFlow().ifPresent(all::add);
    ratings.surge().ifPresent(all::add);
    flow.lawsAgree().ifPresent(all::add);
    return all;
  }

  /**
   * A wye, water thief or manifold where legs of a layout meet; empty where its rating is not
   * known.
   *
   * @param highestPsi the most that it sees, flowing or shut
   */
  public static Optional<Check> ofDivider(Job job, Placed divider, double highestPsi) {
    return RatingChecks.ofFitting(job, divider, highestPsi);
  }
}
