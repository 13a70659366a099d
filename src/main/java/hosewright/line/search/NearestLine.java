package hosewright.line.search;

import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.Placed;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the line that is nearest to passing where none passes: of every topology the shortest and
 * the strongest lays with the cheapest bridges, with those that lose least and with the strongest,
 * in the order of what they miss by at the least.
 */
final class NearestLine {
  /** Lines looked at after those whose pressure misses by no more than the nearest so far. */
  private static final int MOST_BESIDES = 50;

  private final Job job;
  private final Evaluation evaluation;
  private final SearchTally tally;

  NearestLine(Job job, Evaluation evaluation, SearchTally tally) {
    this.job = job;
    this.evaluation = evaluation;
    this.tally = tally;
  }

  /**
   * @param failed the nearest of the lines that were looked at already
   * @return empty when there is no topology
   */
  Optional<Evaluated> of(List<Branch> topologies, Optional<Evaluated> failed) {
    List<Branch> likeliestFirst =
        topologies.stream()
            .sorted(
                Comparator.comparing((Branch branch) -> branch.bounds().hopeless())
                    .thenComparingInt(Branch::toSource)
                    .thenComparingDouble(Branch::leastMissedPsi)
                    .thenComparingDouble(branch -> branch.bounds().leastCost()))
            .toList();
    Optional<Evaluated> nearest = failed;
    int besides = 0;
    for (Branch branch : likeliestFirst) {
      if (nearest.isPresent() && beyond(branch, nearest.get()) && besides++ >= MOST_BESIDES) {
        break;
      }
      for (List<Lay> lays : branch.laysToCompare()) {
        for (List<List<Placed>> over : branch.bridgesToCompare()) {
          nearest = nearer(nearest, plan(branch, lays, over));
        }
      }
    }
    return nearest;
  }

  /** Whether a topology misses by more than a line that only its pressure keeps from passing. */
  private static boolean beyond(Branch branch, Evaluated nearest) {
    Shortfall shortfall = nearest.shortfall();
    return branch.bounds().hopeless() && shortfall.rules() == 0
        || branch.toSource() > nearest.partsToSource()
        || branch.leastMissedPsi() > shortfall.psi();
  }

  private static Optional<Evaluated> nearer(Optional<Evaluated> nearest, Evaluated plan) {
    return nearest.isEmpty() || plan.nearerThan(nearest.get()) ? Optional.of(plan) : nearest;
  }

  private Evaluated plan(Branch branch, List<Lay> lays, List<List<Placed>> bridges) {
    tally.plans++;
    Assembly line = Assembly.of(job, branch.topology(), lays, bridges);
    Evaluated plan = evaluation.check(evaluation.price(line));
    tally.countChecked(plan);
    return plan;
  }
}
