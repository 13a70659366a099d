package hosewright.line.search;

import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/** The best plans met so far that buy different goods, so many at the most, best first. */
final class Ranking {
  /** Far below a cent, far above what adding up many prices may lose. */
  static final double ROUNDING = 1e-4;

  private final int places;
  private final List<Evaluated> plans = new ArrayList<>();

  Ranking(int places) {
    this.places = places;
  }

  boolean isEmpty() {
    return plans.isEmpty();
  }

  List<Evaluated> plans() {
    return List.copyOf(plans);
  }

  /** A plan that costs more takes no place. */
  RankedCost costToBeat() {
    return plans.size() < places ? RankedCost.NONE : last().rankedCost();
  }

  /** Whether a plan of this total is too dear for a place. */
  boolean beyond(int partsToSource, Money total) {
    return plans.size() == places
        && (partsToSource > last().partsToSource()
            || partsToSource == last().partsToSource() && total.isGreaterThan(last().total()));
  }

  /**
   * Whether a plan takes no place because all places are taken by plans that cost no more and have
   * less to couple.
   *
   * @param leastCost the least it costs, with so many parts to source
   * @param sections the fewest it has
   * @param adapters as many as it has
   */
  boolean settlesTie(RankedCost leastCost, int sections, int adapters) {
    if (plans.size() < places
        || leastCost.units() < last().rankedCost().leftFor(leastCost.toSource()) - ROUNDING) {
      return false;
    }
    int order = Integer.compare(sections, last().sections());
    return order > 0 || order == 0 && adapters > last().assembly().adapters();
  }

  private Evaluated last() {
    return plans.get(plans.size() - 1);
  }

  /** Gives a plan its place, unless one that buys the same is no worse. */
  void add(Evaluated plan) {
    for (Evaluated other : plans) {
      if (other.buysTheSame(plan)) {
        if (!plan.beats(other)) {
          return;
        }
        plans.remove(other);
        break;
      }
    }
    int place = 0;
    while (place < plans.size() && !plan.beats(plans.get(place))) {
      place++;
    }
    plans.add(place, plan);
    if (plans.size() > places) {
      plans.remove(places);
    }
  }
}
