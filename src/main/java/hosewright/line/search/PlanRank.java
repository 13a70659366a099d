package hosewright.line.search;

import java.util.Comparator;

/** How plans of one job stand to each other, the one to offer first. */
public final class PlanRank {
  private PlanRank() {}

  /**
   * Plans that pass come first, then those that fail only in what lies in the job, then the nearest
   * to one that passes; among such those with fewer parts to source, then the cheaper.
   */
  public static final Comparator<Evaluated> BEST_FIRST = PlanRank::compare;

  private static int compare(Evaluated one, Evaluated other) {
    int order = Integer.compare(failing(one), failing(other));
    if (order == 0 && failing(one) == 2) {
      order = one.nearerThan(other) ? -1 : other.nearerThan(one) ? 1 : 0;
    }
    if (order == 0) {
      order = one.beats(other) ? -1 : other.beats(one) ? 1 : 0;
    }
    return order;
  }

  private static int failing(Evaluated plan) {
    return plan.passes() ? 0 : plan.bestThatCanBe() ? 1 : 2;
  }
}
