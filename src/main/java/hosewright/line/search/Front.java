package hosewright.line.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToLongFunction;

/** Plans of which each is better in something than every other. */
public final class Front {
  private static final List<ToLongFunction<TradeOff>> MEASURES =
      List.of(TradeOff::cents, TradeOff::tenthsPsi, TradeOff::chargedLb, TradeOff::sections);

  private final Map<TradeOff, Evaluated> plans = new LinkedHashMap<>();

  boolean isEmpty() {
    return plans.isEmpty();
  }

  public int size() {
    return plans.size();
  }

  /** Whether some plan is as good in everything. */
  boolean covers(TradeOff other) {
    for (TradeOff plan : plans.keySet()) {
      if (plan.asGoodAs(other)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a plan has a place, or may take that of one like it. */
  boolean admits(TradeOff plan) {
    return plans.containsKey(plan) || !covers(plan);
  }

  /** Takes a plan in, and drops those that it is as good as in everything. */
  void add(Evaluated plan) {
    TradeOff tradeOff = TradeOff.of(plan);
    Evaluated same = plans.get(tradeOff);
    if (same != null) {
      if (plan.beats(same)) {
        plans.put(tradeOff, plan);
      }
    } else if (!covers(tradeOff)) {
      plans.keySet().removeIf(tradeOff::asGoodAs);
      plans.put(tradeOff, plan);
    }
  }

  /**
   * So many of the plans, cheapest first: the best in each measure, then each time the one that
   * differs most from those taken, its nearest neighbour among them being farthest when every
   * measure is scaled to its own range.
   */
  public List<Evaluated> spread(int most) {
    List<TradeOff> all = cheapestFirst();
    Set<TradeOff> taken = new LinkedHashSet<>();
    for (ToLongFunction<TradeOff> measure : MEASURES) {
      if (!all.isEmpty() && taken.size() < most) {
        taken.add(all.stream().min(Comparator.comparingLong(measure)).orElseThrow());
      }
    }
    while (taken.size() < Math.min(most, all.size())) {
      taken.add(
          all.stream()
              .filter(plan -> !taken.contains(plan))
              .max(Comparator.comparingDouble(plan -> distance(plan, taken, all)))
              .orElseThrow());
    }
    return all.stream().filter(taken::contains).map(plans::get).toList();
  }

  private List<TradeOff> cheapestFirst() {
    List<TradeOff> all = new ArrayList<>(plans.keySet());
    all.sort(
        Comparator.comparingLong(TradeOff::cents)
            .thenComparingLong(TradeOff::tenthsPsi)
            .thenComparingLong(TradeOff::chargedLb));
    return all;
  }

  private static double distance(TradeOff plan, Set<TradeOff> taken, List<TradeOff> all) {
    double nearest = Double.POSITIVE_INFINITY;
    for (TradeOff other : taken) {
      double apart = 0;
      for (ToLongFunction<TradeOff> measure : MEASURES) {
        long least = all.stream().mapToLong(measure).min().orElseThrow();
        long range = all.stream().mapToLong(measure).max().orElseThrow() - least;
        double difference =
            range == 0
                ? 0
                : (double) (measure.applyAsLong(plan) - measure.applyAsLong(other)) / range;
        apart += difference * difference;
      }
      nearest = Math.min(nearest, apart);
    }
    return nearest;
  }
}
