package hosewright.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Finds the cheapest whole plan that passes every check, among given frames.
 *
 * <p>Exact: a frame or a choice is left out only when the least it can cost is no less than a plan
 * already found, or when the least it can lose is more than its {@link PressureBudget}.
 */
final class Search {
  /** Far below a cent, far above what adding up many prices may lose. */
  private static final double ROUNDING = 1e-6;

  private final Job job;
  private final PriceFloor floor;
  private final BridgeChoices bridges;
  private final LayChoices lays;
  private final Accessories accessories;
  private final Evaluation evaluation;
  private final SearchTally tally;

  private final Map<HoseLine, Set<Boolean>> tried = new IdentityHashMap<>();

  private Optional<Evaluated> best = Optional.empty();
  private Optional<Evaluated> leastBad = Optional.empty();

  Search(
      Job job,
      PriceFloor floor,
      BridgeChoices bridges,
      LayChoices lays,
      Accessories accessories,
      Evaluation evaluation,
      SearchTally tally) {
    this.job = job;
    this.floor = floor;
    this.bridges = bridges;
    this.lays = lays;
    this.accessories = accessories;
    this.evaluation = evaluation;
    this.tally = tally;
  }

  /**
   * The cheapest plan that no choice of parts could mend further, else the failing plan that fails
   * least and costs least.
   *
   * <p>Frames are opened one by one, cheapest first, so that those too dear need no look.
   *
   * @return empty when no frame can be laid
   */
  Optional<Evaluated> run(List<Frame> frames) {
    PriorityQueue<Waiting> waiting = new PriorityQueue<>();
    for (Frame frame : frames) {
      if (!lays.of(frame).lays().isEmpty()) {
        waiting.add(new Waiting(boundOf(frame), waiting.size(), frame, Optional.empty()));
      }
    }
    List<Unopened> lacking = new ArrayList<>();
    boolean anyComplete = false;
    while (!waiting.isEmpty() && !cannotBeat(waiting.peek().leastCost())) {
      Waiting next = waiting.remove();
      if (next.opened().isPresent()) {
        searchFrame(next.opened().get());
        continue;
      }
      Unopened unopened = unopened(next.frame());
      if (unopened.missing() > 0) {
        lacking.add(unopened);
      } else {
        anyComplete = true;
        Opened opened = open(unopened);
        waiting.add(
            new Waiting(opened.leastCost(), next.place(), next.frame(), Optional.of(opened)));
      }
    }
    tally.frames += waiting.size();
    tally.cutByPrice += waiting.size();
    if (!anyComplete) {
      searchWithPartsToSource(lacking);
    }
    return best.or(() -> leastBad);
  }

  /** Only the frames that lack the fewest adapters are worth sourcing one for. */
  private void searchWithPartsToSource(List<Unopened> lacking) {
    long fewest = lacking.stream().mapToLong(Unopened::missing).min().orElse(0);
    lacking.stream()
        .filter(frame -> frame.missing() == fewest)
        .map(this::open)
        .sorted(Comparator.comparingDouble(Opened::leastCost))
        .forEach(this::searchFrame);
  }

  /**
   * A frame that waits for its turn.
   *
   * @param leastCost no plan in it costs less; without its bridges while it is not opened
   */
  private record Waiting(double leastCost, int place, Frame frame, Optional<Opened> opened)
      implements Comparable<Waiting> {
    private static final Comparator<Waiting> CHEAPEST_FIRST =
        Comparator.comparingDouble(Waiting::leastCost).thenComparingInt(Waiting::place);

    @Override
    public int compareTo(Waiting other) {
      return CHEAPEST_FIRST.compare(this, other);
    }
  }

  private double boundOf(Frame frame) {
    return fixedCost(frame) + Choice.least(lays.of(frame).lays());
  }

  private double fixedCost(Frame frame) {
    double cost = accessories.leastCost(job.accessories(), frame.hose());
    for (Bridge.Link part : frame.fixedParts()) {
      cost += floor.ofOne(part.item());
    }
    return cost;
  }

  /** A frame, and what the catalogue has for it. */
  private record Unopened(
      Frame frame,
      List<Frame.Gap> gaps,
      List<Optional<GapBridges>> bridges,
      double fixedLossPsi,
      double leastSeenBeforePsi,
      double leastSeenBehindPsi) {

    long missing() {
      return bridges.stream().filter(Optional::isEmpty).count();
    }
  }

  private Unopened unopened(Frame frame) {
    List<Frame.Gap> gaps = frame.gaps(job.from(), job.to());
    double fixedLossPsi = PressureBudget.fixedLossPsi(job, frame);
    double lossPsi = lays.of(frame).leastLossPsi() + fixedLossPsi;
    for (Frame.Gap gap : gaps) {
      lossPsi += bridges.over(gap, 0).map(GapBridges::leastLossPsi).orElse(0.0);
    }
    double beforePsi = PressureBudget.seenBeforeHosePsi(job, lossPsi);
    double behindPsi = PressureBudget.seenBehindHosePsi(job, lossPsi);
    List<Optional<GapBridges>> over = new ArrayList<>();
    for (int i = 0; i < gaps.size(); i++) {
      over.add(bridges.over(gaps.get(i), i <= frame.before().size() ? beforePsi : behindPsi));
    }
    return new Unopened(frame, gaps, over, fixedLossPsi, beforePsi, behindPsi);
  }

  private Opened open(Unopened unopened) {
    Frame frame = unopened.frame();
    LayChoices.Offer offer = lays.of(frame);
    List<GapBridges> over = new ArrayList<>();
    for (int i = 0; i < unopened.gaps().size(); i++) {
      Frame.Gap gap = unopened.gaps().get(i);
      over.add(
          unopened
              .bridges()
              .get(i)
              .orElseGet(() -> bridges.toSource(gap, highestPsi(offer, unopened.fixedLossPsi()))));
    }
    boolean hopeless =
        !offer.inStock()
            || !rated(frame.before(), unopened.leastSeenBeforePsi())
            || !rated(frame.after(), unopened.leastSeenBehindPsi());
    return Opened.of(
        frame,
        over,
        offer.lays(),
        fixedCost(frame),
        PressureBudget.of(job, frame, unopened.fixedLossPsi()),
        hopeless);
  }

  /** The most that an adapter still to be sourced may see, psi. */
  private OptionalDouble highestPsi(LayChoices.Offer offer, double fixedLossPsi) {
    if (!job.service().isWater()) {
      return OptionalDouble.empty();
    }
    double mostLayLossPsi = offer.lays().stream().mapToDouble(Choice::lossPsi).max().orElse(0);
    return OptionalDouble.of(PressureBudget.highestPsi(job, mostLayLossPsi + fixedLossPsi));
  }

  private boolean rated(List<Bridge.Link> parts, double seenPsi) {
    double temperatureF = job.service().temperatureOrUsualF();
    return parts.stream()
        .map(part -> part.item().rating().workingPsiAt(temperatureF))
        .allMatch(psi -> psi.orElse(seenPsi) >= seenPsi - PressureChecks.HAIR_PSI);
  }

  private void searchFrame(Opened frame) {
    tally.frames++;
    if (cannotBeat(frame.leastCost())) {
      tally.cutByPrice++;
      return;
    }
    if (!frame.mayPass()) {
      tally.cutByPressure++;
      if (best.isEmpty() && mayFailLess(frame.leastCost()) && firstOfItsWay(frame.frame())) {
        consider(frame, frame.cheapestBridges(), frame.lays().get(0));
      }
      return;
    }
    Optional<Opened> growing = Optional.of(frame);
    while (growing.isPresent()) {
      Opened now = growing.get();
      List<List<Choice<List<Placed>>>> choices =
          IntStream.range(0, now.bridges().size()).mapToObj(now::choices).toList();
      combine(now, choices, new ArrayList<>(), now.leastCost(), 0, now.budget());
      growing = now.grown(this::cannotBeat);
    }
  }

  private boolean cannotBeat(double leastCost) {
    return best.isPresent() && leastCost > best.get().cost() + ROUNDING;
  }

  /** Of frames that must fail, one for each hose and direction is enough to say why. */
  private boolean firstOfItsWay(Frame frame) {
    return tried.computeIfAbsent(frame.hose(), hose -> new HashSet<>()).add(frame.reversed());
  }

  /** Whether a plan that must fail somewhere could still be the best of those that fail. */
  private boolean mayFailLess(double leastCost) {
    return leastBad.isEmpty()
        || leastBad.get().failures() > 1
        || leastCost <= leastBad.get().cost() + ROUNDING;
  }

  /** Chooses a bridge for the next gap, or the lay once every gap has one. */
  private void combine(
      Opened frame,
      List<List<Choice<List<Placed>>>> bridgesOver,
      List<Choice<List<Placed>>> chosen,
      double leastCost,
      double lossPsi,
      PressureBudget budget) {
    int gap = chosen.size();
    if (gap == bridgesOver.size()) {
      for (Choice<Lay> lay : frame.lays()) {
        if (cannotBeat(leastCost - Choice.least(frame.lays()) + lay.leastCost())) {
          return;
        }
        if (budget.allows(lossPsi + lay.lossPsi())) {
          consider(frame, chosen, lay);
        }
      }
      return;
    }
    List<Choice<List<Placed>>> choices = bridgesOver.get(gap);
    double leastElsewherePsi = frame.leastLossFromPsi(gap + 1) + frame.leastLayLossPsi();
    for (Choice<List<Placed>> choice : choices) {
      double cost = leastCost - Choice.least(choices) + choice.leastCost();
      if (cannotBeat(cost)) {
        return;
      }
      double lostPsi = lossPsi + choice.lossPsi();
      PressureBudget left = budget.holding(choice.ratedPsi(), gap <= frame.frame().before().size());
      if (left.allows(lostPsi + leastElsewherePsi)) {
        chosen.add(choice);
        combine(frame, bridgesOver, chosen, cost, lostPsi, left);
        chosen.remove(gap);
      }
    }
  }

  private void consider(Opened frame, List<Choice<List<Placed>>> chosen, Choice<Lay> lay) {
    List<List<Placed>> parts = chosen.stream().map(Choice::value).toList();
    Evaluation.Priced priced =
        evaluation.price(Assembly.of(job, frame.frame(), lay.value(), parts));
    tally.plans++;
    if (best.isPresent() && priced.total().isGreaterThan(best.get().total())) {
      return;
    }
    Evaluated plan = evaluation.check(priced);
    if (plan.bestThatCanBe()) {
      if (best.isEmpty() || plan.beats(best.get())) {
        best = Optional.of(plan);
      }
    } else if (leastBad.isEmpty() || plan.failsLessThan(leastBad.get())) {
      leastBad = Optional.of(plan);
    }
  }
}
