package hosewright.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;

/**
 * A frame with everything that is left to choose in it.
 *
 * @param fetched the bridges known for each gap
 * @param lays cheapest first
 * @param fixedCost least cost of the parts that must stand in the line
 */
record Opened(
    Frame frame,
    List<Frame.Gap> gaps,
    List<BridgeChoices.Fetched> fetched,
    List<Choice<Lay>> lays,
    double fixedCost,
    PressureBudget budget) {

  /** No plan in this frame costs less. */
  double leastCost() {
    double cost = fixedCost + Choice.least(lays);
    for (BridgeChoices.Fetched gap : fetched) {
      cost += Choice.least(gap.choices());
    }
    return cost;
  }

  double leastLayLossPsi() {
    return lays.stream().mapToDouble(Choice::lossPsi).min().orElseThrow();
  }

  /** Least loss of all bridges from a gap on, psi. */
  double leastLossFromPsi(int gap) {
    double psi = 0;
    for (int i = gap; i < fetched.size(); i++) {
      psi += fetched.get(i).leastLossPsi();
    }
    return psi;
  }

  /** Whether some choice stays within the budget. */
  boolean mayPass() {
    return budget.allows(leastLayLossPsi() + leastLossFromPsi(0));
  }

  List<Choice<List<Placed>>> cheapestBridges() {
    return fetched.stream().map(gap -> gap.choices().get(0)).toList();
  }

  /**
   * The frame with more bridges, where one not yet fetched could still win.
   *
   * @param cannotBeat tells whether a least cost is too much already
   */
  Optional<Opened> grown(BridgeChoices bridges, DoublePredicate cannotBeat) {
    List<BridgeChoices.Fetched> more = new ArrayList<>(fetched);
    boolean grew = false;
    for (int i = 0; i < gaps.size(); i++) {
      List<Choice<List<Placed>>> choices = fetched.get(i).choices();
      double dearest = choices.get(choices.size() - 1).leastCost();
      double least = leastCost() - Choice.least(choices) + dearest;
      if (!fetched.get(i).complete() && !cannotBeat.test(least)) {
        more.set(i, bridges.more(gaps.get(i)));
        grew = true;
      }
    }
    return grew
        ? Optional.of(new Opened(frame, gaps, List.copyOf(more), lays, fixedCost, budget))
        : Optional.empty();
  }
}
