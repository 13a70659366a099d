package hosewright.line.search;

import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the line that is nearest to passing where none passes: topologies one by one, those that
 * may come nearest first, until none that is left can come nearer, or so many lines are looked at
 * that an answer is due.
 */
final class NearestLine implements NearTopology.Looker {
  /** Far below what rounding to whole psi tells apart. */
  private static final double HAIR_PSI = 1e-3;

  private static final int MOST_LOOKED_AT = 1_000;

  private final Job job;
  private final Branching opening;
  private final Evaluation evaluation;
  private final SearchTally tally;
  private NearTopology now;
  private int lookedAt;
  private Optional<Rival> nearest = Optional.empty();

  NearestLine(Job job, Branching opening, Evaluation evaluation, SearchTally tally) {
    this.job = job;
    this.opening = opening;
    this.evaluation = evaluation;
    this.tally = tally;
  }

  /**
   * @param failed the nearest of the lines that were looked at already
   * @return empty when no topology can be laid
   */
  Optional<Evaluated> of(List<Topology> topologies, Optional<Evaluated> failed) {
    nearest = failed.map(Rival::of);
    List<NearTopology> likeliestFirst =
        topologies.stream()
            .filter(topology -> opening.leastCost(topology).isPresent())
            .map(opening::near)
            .sorted(
                Comparator.comparingInt((NearTopology one) -> one.flaws().rules())
                    .thenComparingInt(one -> one.flaws().toSource())
                    .thenComparingInt(one -> one.flaws().others())
                    .thenComparingDouble(one -> wholePsi(one.least().missedPsi()))
                    .thenComparingDouble(one -> one.least().cost()))
            .toList();
    for (NearTopology topology : likeliestFirst) {
      now = topology;
      if (!wants(topology.least())) {
        break;
      }
      topology.show(this);
    }
    return nearest.map(Rival::plan);
  }

  /** The nearest so far, and what it is weighed by. */
  private record Rival(Evaluated plan, Shortfall missed, int toSource, boolean last, double cost) {
    static Rival of(Evaluated plan) {
      return new Rival(
          plan,
          plan.shortfall(),
          plan.partsToSource(),
          plan.ranksLast(),
          plan.total().getAmount().doubleValue());
    }
  }

  /** As a {@link Shortfall} tells pressures apart, no more than the line itself will miss by. */
  private static double wholePsi(double missedPsi) {
    return Shortfall.wholePsi(Math.max(0, missedPsi - HAIR_PSI));
  }

  /** Whether a line that comes so near may be nearer than the nearest so far. */
  @Override
  public boolean wants(NearTopology.Reach reach) {
    if (nearest.isEmpty() || lookedAt >= MOST_LOOKED_AT) {
      return nearest.isEmpty();
    }
    Rival rival = nearest.get();
    Shortfall missed = rival.missed();
    int order = Integer.compare(now.flaws().rules(), missed.rules());
    order = order != 0 ? order : Integer.compare(now.flaws().toSource(), rival.toSource());
    order = order != 0 ? order : Integer.compare(now.flaws().others(), missed.others());
    order = order != 0 ? order : Double.compare(wholePsi(reach.missedPsi()), missed.psi());
    return order < 0
        || order == 0 && (rival.last() || reach.cost() <= rival.cost() + Ranking.ROUNDING);
  }

  @Override
  public void look(List<Lay> lays, List<List<Placed>> bridges) {
    lookedAt++;
    tally.plans++;
    Assembly line = Assembly.of(job, now.topology(), lays, bridges);
    Evaluated plan = evaluation.check(evaluation.price(line));
    tally.countChecked(plan);
    if (nearest.isEmpty() || plan.nearerThan(nearest.get().plan())) {
      nearest = Optional.of(Rival.of(plan));
    }
  }
}
