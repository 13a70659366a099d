package hosewright.line.search;

import hosewright.line.assembly.Choice;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;

/** Makes every choice of lays and bridges of a topology that costs little enough. */
final class LegLaying {
  private final Worth worth;
  private final double mostCost;
  private final Choices<Lay> lays;
  private final Choices<List<Placed>> bridges;

  /** Takes the lays of each leg, and the bridge over each gap. */
  interface Taker {
    void take(List<Lay> lays, List<List<Placed>> bridges);
  }

  /**
   * What choices count.
   *
   * @param copies how many times each is bought
   * @param eachPsi what each psi that it loses is worth, in the currency's major unit
   */
  record Worth(int copies, double eachPsi) {
    double of(Choice<?> choice) {
      return choice.leastCost() * copies + eachPsi * choice.lossPsi();
    }

    double least(List<? extends Choice<?>> choices) {
      return choices.stream().mapToDouble(this::of).min().orElse(Double.POSITIVE_INFINITY);
    }
  }

  /**
   * What may stand in each place, the least that it counts there, and what is chosen.
   *
   * @param least by place
   */
  private record Choices<T>(List<List<Choice<T>>> places, List<Double> least, List<T> chosen) {
    static <T> Choices<T> of(List<List<Choice<T>>> places, Worth worth) {
      return new Choices<>(places, places.stream().map(worth::least).toList(), new ArrayList<>());
    }

    double leastOfAll() {
      return least.stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  LegLaying(
      List<List<Choice<Lay>>> lays,
      List<List<Choice<List<Placed>>>> bridges,
      Worth worth,
      double mostCost) {
    this.worth = worth;
    this.mostCost = mostCost;
    this.lays = Choices.of(lays, worth);
    this.bridges = Choices.of(bridges, worth);
  }

  /**
   * @param fixedCost what every line of the topology costs besides
   */
  void each(double fixedCost, Taker taker) {
    double leastCost = fixedCost + lays.leastOfAll() + bridges.leastOfAll();
    choose(
        lays,
        leastCost,
        laid -> choose(bridges, laid, all -> taker.take(lays.chosen, bridges.chosen)));
  }

  /**
   * @param leastCost no line with what is chosen costs less
   */
  private <T> void choose(Choices<T> from, double leastCost, DoubleConsumer then) {
    int place = from.chosen.size();
    if (place == from.places.size()) {
      then.accept(leastCost);
      return;
    }
    double elsewhere = leastCost - from.least.get(place);
    for (Choice<T> choice : from.places.get(place)) {
      double cost = elsewhere + worth.of(choice);
      if (cost <= mostCost) {
        from.chosen.add(choice.value());
        choose(from, cost, then);
        from.chosen.remove(place);
      }
    }
  }
}
