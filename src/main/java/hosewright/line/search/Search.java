package hosewright.line.search;

import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.hose.LegLays;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * Finds the cheapest whole plan that passes every check, among given topologies.
 *
 * <p>Exact: a topology or a choice is left out only when the least it can cost is no less than a
 * plan already found, or when the least it can lose is more than its {@link PressureBudget}.
 */
final class Search {
  private final Job job;
  private final Branching opening;
  private final Evaluation evaluation;
  private final SearchTally tally;
  private final Wanted wanted;

  private final Ranking best;
  private Optional<Evaluated> leastBad = Optional.empty();

  /**
   * What a search is to bring.
   *
   * @param places how many plans that buy different goods
   * @param nearest whether the plan nearest to passing where none does; looking for it can take
   *     longer than the search, and who only asks whether something does has no use for it
   */
  record Wanted(int places, boolean nearest) {
    /** The best plan that passes or fails only in what lies in the job, if there is one. */
    static final Wanted PASSING = new Wanted(1, false);

    /** So many places, for plans that pass alone. */
    Wanted passing() {
      return new Wanted(places, false);
    }
  }

  Search(Job job, Branching opening, Evaluation evaluation, SearchTally tally, Wanted wanted) {
    this.job = job;
    this.opening = opening;
    this.evaluation = evaluation;
    this.tally = tally;
    this.wanted = wanted;
    this.best = new Ranking(wanted.places());
  }

  /**
   * The cheapest plans that no choice of parts could mend further, best first, else the one failing
   * plan that is nearest to passing, where that is wanted.
   *
   * <p>Topologies are opened one by one, cheapest first, so that those too dear need no look. Those
   * that lack an adapter cost more than any other, so they come last.
   *
   * @return empty when no topology can be laid, or none may pass and only such are wanted
   */
  List<Evaluated> run(List<Topology> topologies) {
    PriorityQueue<Waiting> waiting = new PriorityQueue<>();
    for (Topology topology : topologies) {
      int place = waiting.size();
      opening
          .leastCost(topology)
          .ifPresent(cost -> waiting.add(new Waiting(cost, place, topology, Optional.empty())));
    }
    boolean anyJoined = false;
    while (!waiting.isEmpty() && !settledBefore(waiting.peek(), anyJoined)) {
      Waiting next = waiting.remove();
      if (next.opened().isPresent()) {
        searchBranch(next.opened().get());
        anyJoined |= !next.opened().get().isUnjoined() && !next.opened().get().bounds().hopeless();
        continue;
      }
      Branch opened = opening.open(opening.look(next.topology()));
      waiting.add(
          new Waiting(opened.bounds().least(), next.place(), next.topology(), Optional.of(opened)));
    }
    leave(waiting);
    if (best.isEmpty()) {
      return wanted.nearest()
          ? new NearestLine(job, opening, evaluation, tally)
              .of(topologies, leastBad).stream().toList()
          : List.of();
    }
    return best.plans();
  }

  /**
   * Whether neither the next topology nor any behind it need be looked at: an adapter is sourced
   * only where the catalogue joins none that keeps the rules.
   */
  private boolean settledBefore(Waiting next, boolean anyJoined) {
    boolean unjoined = next.opened().filter(Branch::isUnjoined).isPresent();
    RankedCost least = next.leastCost();
    return unjoined && anyJoined || cannotBeat(least.toSource(), least.units());
  }

  private void leave(PriorityQueue<Waiting> waiting) {
    tally.topologies += waiting.size();
    for (Waiting left : waiting) {
      if (left.opened().filter(Branch::isUnjoined).isPresent()) {
        tally.unjoined++;
      } else {
        tally.cutByPrice++;
      }
    }
  }

  /**
   * A topology that waits for its turn.
   *
   * @param leastCost no plan in it costs less; without its bridges while it is not opened
   */
  private record Waiting(
      RankedCost leastCost, int place, Topology topology, Optional<Branch> opened)
      implements Comparable<Waiting> {
    private static final Comparator<Waiting> CHEAPEST_FIRST =
        Comparator.comparing(Waiting::leastCost).thenComparingInt(Waiting::place);

    @Override
    public int compareTo(Waiting other) {
      return CHEAPEST_FIRST.compare(this, other);
    }
  }

  private void searchBranch(Branch topology) {
    tally.topologies++;
    if (cannotBeat(topology.toSource(), topology.bounds().leastCost())) {
      tally.cutByPrice++;
      return;
    }
    if (!topology.mayPass()) {
      tally.cutByPressure++;
      return;
    }
    Optional<Branch> growing = Optional.of(topology);
    while (growing.isPresent()) {
      Branch now = growing.get();
      List<List<Choice<List<Placed>>>> choices =
          IntStream.range(0, now.bridges().size()).mapToObj(now::choices).toList();
      combine(now, choices, new ArrayList<>(), now.bounds().leastCost(), 0, now.bounds().budget());
      growing = now.grown(cost -> cannotBeat(topology.toSource(), cost));
    }
  }

  private boolean cannotBeat(int toSource, double leastCost) {
    return leastCost > best.costToBeat().leftFor(toSource) + Ranking.ROUNDING;
  }

  /** Chooses a bridge for the next gap, or the lays once every gap has one. */
  private void combine(
      Branch topology,
      List<List<Choice<List<Placed>>>> bridgesOver,
      List<Choice<List<Placed>>> chosen,
      double leastCost,
      double lossPsi,
      PressureBudget budget) {
    int gap = chosen.size();
    if (gap == bridgesOver.size()) {
      lay(topology, chosen, new ArrayList<>(), leastCost, lossPsi, budget);
      return;
    }
    List<Choice<List<Placed>>> choices = bridgesOver.get(gap);
    double leastElsewherePsi = topology.leastLossFromPsi(gap + 1) + topology.leastLayLossFromPsi(0);
    for (Choice<List<Placed>> choice : choices) {
      double cost = leastCost - Choice.least(choices) + choice.leastCost();
      if (cannotBeat(topology.toSource(), cost)) {
        return;
      }
      double lostPsi = lossPsi + choice.lossPsi();
      PressureBudget left =
          budget.bridging(choice.ratedPsi(), choice.lossPsi(), topology.stretches().get(gap));
      if (left.allows(lostPsi + leastElsewherePsi)) {
        chosen.add(choice);
        combine(topology, bridgesOver, chosen, cost, lostPsi, left);
        chosen.remove(gap);
      }
    }
  }

  /** Chooses a lay for the next leg, or weighs the plan once every leg has one. */
  private void lay(
      Branch topology,
      List<Choice<List<Placed>>> chosen,
      List<Lay> laid,
      double leastCost,
      double lossPsi,
      PressureBudget budget) {
    int leg = laid.size();
    if (leg == topology.lays().size()) {
      consider(topology, chosen, laid);
      return;
    }
    LegLays lays = topology.lays().get(leg);
    double leastElsewherePsi = topology.leastLayLossFromPsi(leg + 1);
    double elsewhere = leastCost - lays.leastCost();
    int toSource = topology.toSource();
    int adapters = chosen.stream().mapToInt(bridge -> bridge.value().size()).sum();
    Optional<Choice<Lay>> next = lays.at(0, mostCost(toSource, elsewhere));
    for (int place = 0;
        next.isPresent() && !cannotBeat(toSource, elsewhere + next.get().leastCost()); ) {
      Choice<Lay> choice = next.get();
      double lostPsi = lossPsi + choice.lossPsi();
      PressureBudget left = budget.laying(leg, choice.ratedPsi(), choice.lossPsi());
      RankedCost cost = new RankedCost(toSource, elsewhere + choice.leastCost());
      if (left.allows(lostPsi + leastElsewherePsi)
          && !best.settlesTie(cost, fewestSections(topology, laid, choice.value()), adapters)) {
        laid.add(choice.value());
        lay(topology, chosen, laid, elsewhere + choice.leastCost(), lostPsi, left);
        laid.remove(leg);
      }
      next = lays.at(++place, mostCost(toSource, elsewhere));
    }
  }

  /** With one section at the least in each leg that is not laid. */
  private static int fewestSections(Branch topology, List<Lay> laid, Lay next) {
    int ofLaid = laid.stream().mapToInt(Lay::sections).sum() + next.sections();
    return ofLaid + topology.lays().size() - laid.size() - 1;
  }

  /** What may still be spent, so much being spent elsewhere. */
  private double mostCost(int toSource, double elsewhere) {
    return best.costToBeat().leftFor(toSource) + 2 * Ranking.ROUNDING - elsewhere;
  }

  private void consider(Branch topology, List<Choice<List<Placed>>> chosen, List<Lay> lays) {
    List<List<Placed>> parts = chosen.stream().map(Choice::value).toList();
    Evaluation.Priced priced = evaluation.price(Assembly.of(job, topology.topology(), lays, parts));
    tally.plans++;
    if (best.beyond(priced.bill().partsToSource(), priced.total())) {
      tally.dearer++;
      return;
    }
    Evaluated plan = evaluation.check(priced);
    tally.countChecked(plan);
    if (plan.bestThatCanBe()) {
      best.add(plan);
    } else if (leastBad.isEmpty() || plan.nearerThan(leastBad.get())) {
      leastBad = Optional.of(plan);
    }
  }
}
