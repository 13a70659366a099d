package hosewright.line.layout.search;

import hosewright.line.goods.BuyingCosts;
import hosewright.line.goods.SharedCosts;
import hosewright.line.search.LegWays;
import java.util.Set;

/** The prices that given lines can reach together, told by the most that they may buy. */
final class LinePrices {
  private final MostTaken most;
  private final BuyingCosts buying;
  private final LegWays any;

  /**
   * @param buying at the most that all may buy
   * @param any lines of a leg, for what all legs have in common
   */
  LinePrices(MostTaken most, BuyingCosts buying, LegWays any) {
    this.most = most;
    this.buying = buying;
    this.any = any;
  }

  /** Compares goods beside anything that all may buy. */
  SharedCosts besideAll() {
    return beside(Set.of());
  }

  /** Compares goods of some legs, by name, beside anything that all others may buy. */
  SharedCosts beside(Set<String> legs) {
    return any.costs(buying, most.besides(legs));
  }
}
