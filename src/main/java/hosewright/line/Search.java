package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the cheapest whole plan that passes every check, among given frames.
 *
 * <p>Exact: a frame or a choice is left out only when the least it can cost is no less than a plan
 * already found, or when not even the shortest lay without any adapter passes the pressure checks.
 */
final class Search {
  private final Job job;
  private final NetPrice prices;
  private final BridgeChoices bridges;
  private final Evaluation evaluation;
  private final SearchTally tally;

  private Optional<Evaluated> best = Optional.empty();
  private Optional<Evaluated> leastBad = Optional.empty();

  Search(
      Job job,
      NetPrice prices,
      BridgeChoices bridges,
      Evaluation evaluation,
      SearchTally tally) {
    this.job = job;
    this.prices = prices;
    this.bridges = bridges;
    this.evaluation = evaluation;
    this.tally = tally;
  }

  /**
   * The cheapest passing plan, else the failing plan that fails least and costs least.
   *
   * @return empty when no frame could be bridged or there was no frame
   */
  Optional<Evaluated> run(List<Frame> frames) {
    List<Opened> opened = new ArrayList<>();
    for (Frame frame : frames) {
      List<Frame.Gap> gaps = frame.gaps(job.from(), job.to());
      if (gaps.stream().noneMatch(gap -> bridges.over(gap).none())) {
        opened.add(open(frame, gaps, gaps.stream().map(bridges::over).toList()));
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
        opened.add(open(frame, gaps, gaps.stream().map(this::bridgedOrSourced).toList()));
      }
    }
    return opened;
  }

  private BridgeChoices.Fetched bridgedOrSourced(Frame.Gap gap) {
    BridgeChoices.Fetched fetched = bridges.over(gap);
    return fetched.none() ? BridgeChoices.toSource(gap) : fetched;
  }

  private Opened open(Frame frame, List<Frame.Gap> gaps, List<BridgeChoices.Fetched> fetched) {
    List<SectionOption> options = frame.hose().options();
    List<Double> lengthsFt = options.stream().map(SectionOption::lengthFt).toList();
    List<Choice<Lay>> lays =
        Lay.covering(lengthsFt, job.run().neededFt()).stream()
            .map(lay -> new Choice<>(lay, leastCost(options, lay) * frame.lines()))
            .sorted(
                Comparator.<Choice<Lay>>comparingDouble(Choice::leastCost)
                    .thenComparingInt(choice -> choice.value().sections()))
            .toList();
    double fixedCost =
        frame.fixedParts().mapToDouble(part -> Basket.leastCost(part.item(), 1, prices)).sum();
    return new Opened(frame, gaps, fetched, lays, fixedCost);
  }

  private double leastCost(List<SectionOption> options, Lay lay) {
    double cost = 0;
    for (int i = 0; i < options.size(); i++) {
      for (Map.Entry<Item, Integer> line : options.get(i).bill().entrySet()) {
        cost +=
            Basket.leastCost(line.getKey(), line.getValue(), prices) * lay.counts().get(i);
      }
    }
    return cost;
  }

  private void searchFrame(Opened frame) {
    tally.frames++;
    if (cannotBeat(frame.leastCost())) {
      tally.cutByPrice++;
      return;
    }
    if (!evaluation.mayPass(frame.frame(), frame.shortestLayFt())) {
      tally.cutByPressure++;
      if (best.isEmpty()) {
        consider(frame, frame.cheapestBridges(), frame.lays().get(0));
      }
      return;
    }
    Optional<Opened> growing = Optional.of(frame);
    while (growing.isPresent()) {
      combine(growing.get(), new ArrayList<>(), growing.get().leastCost());
      growing = growing.get().grown(bridges, this::cannotBeat);
    }
  }

  private boolean cannotBeat(double leastCost) {
    return best.isPresent() && leastCost > best.get().cost() + 1e-9;
  }

  /** Chooses a bridge for the next gap, or the lay once every gap has one. */
  private void combine(Opened frame, List<Choice<List<Placed>>> chosen, double leastCost) {
    int gap = chosen.size();
    if (gap == frame.fetched().size()) {
      for (Choice<Lay> lay : frame.lays()) {
        if (cannotBeat(leastCost - Choice.least(frame.lays()) + lay.leastCost())) {
          return;
        }
        consider(frame, chosen, lay);
      }
      return;
    }
    List<Choice<List<Placed>>> choices = frame.fetched().get(gap).choices();
    for (Choice<List<Placed>> choice : choices) {
      double cost = leastCost - Choice.least(choices) + choice.leastCost();
      if (cannotBeat(cost)) {
        return;
      }
      chosen.add(choice);
      combine(frame, chosen, cost);
      chosen.remove(gap);
    }
  }

  private void consider(
      Opened frame, List<Choice<List<Placed>>> chosen, Choice<Lay> lay) {
    List<List<Placed>> parts = chosen.stream().map(Choice::value).toList();
    Evaluated plan = evaluation.of(Assembly.of(job, frame.frame(), lay.value(), parts));
    tally.plans++;
    if (plan.passes()) {
      if (best.isEmpty() || plan.beats(best.get())) {
        best = Optional.of(plan);
      }
    } else if (leastBad.isEmpty() || plan.failsLessThan(leastBad.get())) {
      leastBad = Optional.of(plan);
    }
  }
}
