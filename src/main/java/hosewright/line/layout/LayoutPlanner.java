package hosewright.line.layout;

import hosewright.hydraulics.Inlet;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.check.PracticeChecks;
import hosewright.line.goods.Accessories;
import hosewright.line.goods.Availability;
import hosewright.line.goods.Billing;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.Gaskets;
import hosewright.line.goods.PriceFloor;
import hosewright.line.layout.search.Bound;
import hosewright.line.layout.search.LayoutSearch;
import hosewright.line.layout.search.Sum;
import hosewright.line.layout.search.Whole;
import hosewright.line.layout.search.Worth;
import hosewright.line.search.Shop;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Chooses a layout: the cheapest that passes every check, else the one that is nearest to it. */
public final class LayoutPlanner {
  private static final double HAIRS_PER_PSI = 1e6;
  private static final int MOST_ALIKE = 10_000;

  /** Shares of the least that any layout costs. */
  private static final List<Double> BEYOND_LEAST = List.of(0.005, 0.02, 0.04);

  /**
   * The same where pressure is scarce and its worth is counted: in small steps, for how many lines
   * are left to look at grows many times over with each.
   */
  private static final List<Double> BEYOND_WORTH =
      List.of(0.005, 0.02, 0.03, 0.04, 0.05, 0.06, 0.07, 0.08, 0.09, 0.1, 0.12, 0.15);

  /** Where the cheap ones are fed, but not to be had. */
  private static final List<Double> FAR_BEYOND = List.of(0.1, 0.3, 1.0, 3.0);

  private final LayoutJob layout;
  private final Shop shop;
  private final Billing billing;
  private int looked;

  /**
   * @param layout one that names the day of its prices
   */
  public LayoutPlanner(LayoutJob layout, Shop shop) {
    this.layout = layout;
    this.shop = shop;
    Job whole = layout.whole();
    PriceFloor floor = new PriceFloor(shop.prices(), Availability.of(whole), MOST_ALIKE);
    Eligibility eligibility = new Eligibility(whole, shop.prices());
    this.billing =
        new Billing(
            whole,
            shop.catalogue(),
            shop.prices(),
            floor,
            new Gaskets(shop.catalogue(), eligibility, floor),
            new Accessories(whole, shop.catalogue(), eligibility, floor));
  }

  /**
   * What was found.
   *
   * @param best empty where the catalogue cannot lay it at all
   * @param undivided a leg behind which nothing divides the water as wanted
   * @param withoutLine names of legs that no line can be laid for
   * @param looked ways of legs and their joinings that were looked at
   */
  public record Found(
      Optional<FedLayout> best, Optional<LegJob> undivided, List<String> withoutLine, int looked) {}

  static Found nothingFound() {
    return new Found(Optional.empty(), Optional.empty(), List.of(), 0);
  }

  public Found find() {
    LayoutSearch usual = search(layout.fed(), true, false);
    Optional<FedLayout> best = cheapest(usual);
    if (best.isPresent() && best.get().bill().partsToSource() == 0) {
      return found(best, usual);
    }
    if (!PracticeChecks.mayRankLast(layout.whole())) {
      return found(best.isPresent() ? best : nearest(), usual);
    }
    LayoutSearch any = search(layout.fed(), false, false);
    best = better(best, cheapest(any));
    return found(best.isPresent() ? best : nearest(), any);
  }

  private Found found(Optional<FedLayout> best, LayoutSearch search) {
    List<String> withoutLine = best.isEmpty() ? search.withoutLine() : List.of();
    return new Found(best, search.undivided(), withoutLine, looked);
  }

  private LayoutSearch search(Optional<Inlet> source, boolean usual, boolean anyRelief) {
    return new LayoutSearch(layout, shop, new LayoutSearch.Limits(source, usual, anyRelief));
  }

  /** The one of usual hose, unless it lacks more parts. */
  private static Optional<FedLayout> better(Optional<FedLayout> usual, Optional<FedLayout> any) {
    return usual
        .filter(
            one -> any.isEmpty() || one.bill().partsToSource() <= any.get().bill().partsToSource())
        .or(() -> any);
  }

  /** Where none is fed: one that misses by the least, and the cheapest that misses by no more. */
  private Optional<FedLayout> nearest() {
    LayoutSearch unlimited = search(Optional.empty(), true, true);
    Optional<PricedLayout> near = nearest(unlimited.some());
    looked += unlimited.looked();
    if (near.isEmpty()) {
      return Optional.empty();
    }
    LayoutSearch nearer = search(Optional.of(fedAs(near.get())), true, true);
    List<Whole> noFarther = nearer.within(bound(near.get()), Worth.NOTHING);
    looked += nearer.looked();
    return nearest(noFarther).or(() -> near).map(this::fed);
  }

  private Optional<PricedLayout> nearest(List<Whole> wholes) {
    return wholes.stream()
        .map(this::priced)
        .min(
            Comparator.<PricedLayout>comparingInt(one -> one.bill().partsToSource())
                .thenComparingLong(one -> hairs(one.missedPsi(source(one))))
                .thenComparing(PricedLayout.BY_MERIT));
  }

  /** Layouts that miss by the same but for rounding miss by the same. */
  private static long hairs(double psi) {
    return Math.round(psi * HAIRS_PER_PSI);
  }

  /** A source that would do for a layout, and stand on it no more than it bears. */
  private Inlet fedAs(PricedLayout priced) {
    Inlet source = source(priced);
    double flowingPsi = Math.max(source.flowingPsi(), priced.whole().needsPsi());
    double closedPsi = Math.min(source.closedPsi(), priced.whole().bearsPsi());
    return new Inlet(flowingPsi, Math.max(flowingPsi, closedPsi));
  }

  private static Bound bound(PricedLayout layout) {
    return new Bound(layout.total().getAmount().doubleValue(), layout.bill().partsToSource());
  }

  /**
   * Looks a little above the least that any layout costs. Where nothing is found there, pressure is
   * scarce: one that can be fed tells what it is worth and how far to look.
   */
  private Optional<FedLayout> cheapest(LayoutSearch search) {
    double leastCost = search.leastCost(Worth.NOTHING);
    Optional<FedLayout> best =
        leastCost < Double.POSITIVE_INFINITY
            ? near(search, Worth.NOTHING, BEYOND_LEAST).or(() -> farther(search))
            : Optional.empty();
    looked += search.looked();
    return best;
  }

  /**
   * @param shares of the least cost, how far to look beyond it
   */
  private Optional<FedLayout> near(LayoutSearch search, Worth worth, List<Double> shares) {
    double leastCost = search.leastCost(worth);
    for (double beyond : shares) {
      Bound bound = new Bound(leastCost * (1 + beyond), 0);
      Optional<FedLayout> found = best(search.within(bound, worth));
      if (found.isPresent()) {
        return bound.allows(bound(found.get().priced()).cost())
            ? found
            : asGoodOrBetter(found.get(), search, worth);
      }
    }
    return Optional.empty();
  }

  private Optional<FedLayout> farther(LayoutSearch search) {
    List<Whole> some = search.some();
    Optional<FedLayout> fed = best(some);
    if (fed.isEmpty()) {
      return some.isEmpty() ? fed : near(search, Worth.NOTHING, FAR_BEYOND);
    }
    Bound bound = bound(fed.get().priced());
    Worth worth = search.worth(bound.cost());
    double leastCost = search.leastCost(worth);
    List<Double> shares =
        bound.toSource() > 0
            ? List.of()
            : BEYOND_WORTH.stream()
                .filter(share -> leastCost * (1 + share) < bound.cost())
                .toList();
    return near(search, worth, shares).or(() -> asGoodOrBetter(fed.get(), search, worth));
  }

  private Optional<FedLayout> asGoodOrBetter(FedLayout found, LayoutSearch search, Worth worth) {
    return best(search.within(bound(found.priced()), worth)).or(() -> Optional.of(found));
  }

  /** The best that passes; a sum of least prices tells which need not be priced. */
  private Optional<FedLayout> best(List<Whole> wholes) {
    Optional<FedLayout> best = Optional.empty();
    for (Whole whole :
        wholes.stream().sorted(Comparator.comparing(Whole::sum, Sum.CHEAPEST_FIRST)).toList()) {
      if (best.isPresent() && dearer(whole.sum(), best.get())) {
        break;
      }
      PricedLayout priced = priced(whole);
      if (best.isEmpty() || PricedLayout.BY_MERIT.compare(priced, best.get().priced()) < 0) {
        Optional<FedLayout> before = best;
        best = Optional.of(fed(priced)).filter(FedLayout::bestThatCanBe).or(() -> before);
      }
    }
    return best;
  }

  private static boolean dearer(Sum sum, FedLayout best) {
    Bound bound = bound(best.priced());
    return sum.toSource() > bound.toSource()
        || sum.toSource() == bound.toSource() && !bound.allows(sum.leastCost());
  }

  private PricedLayout priced(Whole whole) {
    return PricedLayout.of(whole, billing, shop.currency());
  }

  private FedLayout fed(PricedLayout layout) {
    return FedLayout.of(layout, source(layout));
  }

  /** What the source gives, or just what is needed where nobody said. */
  private Inlet source(PricedLayout priced) {
    double needsPsi = priced.whole().needsPsi();
    return layout.fed().orElseGet(() -> new Inlet(needsPsi, needsPsi));
  }
}
