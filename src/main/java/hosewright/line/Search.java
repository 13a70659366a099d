package hosewright.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the cheapest whole plan that passes every check, among given frames.
 *
 * <p>Exact: a frame or a choice is left out only when the least it can cost is no less than a plan
 * already found, or when the least it can lose is more than its {@link PressureBudget}.
 */
final class Search {
  private final Job job;
  private final PriceFloor floor;
  private final BridgeChoices bridges;
  private final LayChoices lays;
  private final Accessories accessories;
  private final Evaluation evaluation;
  private final SearchTally tally;

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
   * @return empty when there was no frame
   */
  Optional<Evaluated> run(List<Frame> frames) {
    List<Opened> opened = new ArrayList<>();
    for (Frame frame : frames) {
      List<Frame.Gap> gaps = frame.gaps(job.from(), job.to());
      if (gaps.stream().noneMatch(gap -> bridges.over(gap).none())) {
        open(frame, gaps, gaps.stream().map(bridges::over).toList()).ifPresent(opened::add);
      }
    }
    if (opened.isEmpty()) {
      opened.addAll(withPartsToSource(frames));
    }
    opened.sort(Comparator.comparingDouble(Opened::leastCost));
    opened.forEach(this::searchFrame);
    return best.or(() -> leastBad);
  }

  /** Only the frames that lack the fewest adapters are worth sourcing one for. */
  private List<Opened> withPartsToSource(List<Frame> frames) {
    List<Opened> opened = new ArrayList<>();
    long fewest = Long.MAX_VALUE;
    for (Frame frame : frames) {
      List<Frame.Gap> gaps = frame.gaps(job.from(), job.to());
      long missing = gaps.stream().filter(gap -> bridges.over(gap).none()).count();
      if (missing < fewest) {
        opened.clear();
        fewest = missing;
      }
      if (missing == fewest) {
        open(frame, gaps, gaps.stream().map(this::bridgedOrSourced).toList())
            .ifPresent(opened::add);
      }
    }
    return opened;
  }

  private BridgeChoices.Fetched bridgedOrSourced(Frame.Gap gap) {
    BridgeChoices.Fetched fetched = bridges.over(gap);
    return fetched.none() ? BridgeChoices.toSource(gap, PressureBudget.highestPsi(job)) : fetched;
  }

  /** Empty when no lay is possible. */
  private Optional<Opened> open(
      Frame frame, List<Frame.Gap> gaps, List<BridgeChoices.Fetched> fetched) {
    List<Choice<Lay>> choices = lays.of(frame);
    if (choices.isEmpty()) {
      return Optional.empty();
    }
    double fixedCost =
        frame.fixedParts().mapToDouble(part -> floor.ofOne(part.item())).sum()
            + accessories.leastCost(job.accessories(), frame.hose());
    PressureBudget budget = PressureBudget.of(job, frame);
    return Optional.of(new Opened(frame, gaps, fetched, choices, fixedCost, budget));
  }

  private void searchFrame(Opened frame) {
    tally.frames++;
    if (cannotBeat(frame.leastCost())) {
      tally.cutByPrice++;
      return;
    }
    if (!frame.mayPass()) {
      tally.cutByPressure++;
      if (best.isEmpty()) {
        consider(frame, frame.cheapestBridges(), frame.lays().get(0));
      }
      return;
    }
    Optional<Opened> growing = Optional.of(frame);
    while (growing.isPresent()) {
      Opened now = growing.get();
      combine(now, new ArrayList<>(), now.leastCost(), 0);
      growing = now.grown(bridges, this::cannotBeat);
    }
  }

  private boolean cannotBeat(double leastCost) {
    return best.isPresent() && leastCost > best.get().cost() + 1e-9;
  }

  /** Chooses a bridge for the next gap, or the lay once every gap has one. */
  private void combine(
      Opened frame, List<Choice<List<Placed>>> chosen, double leastCost, double lossPsi) {
    int gap = chosen.size();
    if (gap == frame.fetched().size()) {
      for (Choice<Lay> lay : frame.lays()) {
        if (cannotBeat(leastCost - Choice.least(frame.lays()) + lay.leastCost())) {
          return;
        }
        if (frame.budget().allows(lossPsi + lay.lossPsi())) {
          consider(frame, chosen, lay);
        }
      }
      return;
    }
    List<Choice<List<Placed>>> choices = frame.fetched().get(gap).choices();
    double leastElsewherePsi = frame.leastLossFromPsi(gap + 1) + frame.leastLayLossPsi();
    for (Choice<List<Placed>> choice : choices) {
      double cost = leastCost - Choice.least(choices) + choice.leastCost();
      if (cannotBeat(cost)) {
        return;
      }
      double lostPsi = lossPsi + choice.lossPsi();
      if (frame.budget().allows(lostPsi + leastElsewherePsi)) {
        chosen.add(choice);
        combine(frame, chosen, cost, lostPsi);
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
