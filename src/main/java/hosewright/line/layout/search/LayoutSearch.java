package hosewright.line.layout.search;

import hosewright.hydraulics.Inlet;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Availability;
import hosewright.line.goods.BuyingCosts;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.SharedCosts;
import hosewright.line.search.LegWays;
import hosewright.line.search.Shop;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds layouts: every leg laid, divided where legs meet.
 *
 * <p>Exact within a bound on what a layout may cost. First it is asked which lines any such layout
 * may have, all else costing the least; these tell how much can be bought together, and so which
 * prices can be reached, which leaves fewer lines, until no more fall out. The rest is joined from
 * the ends of the water back to the source.
 */
public final class LayoutSearch {
  private static final double HAIR_PSI = 1e-6;
  private static final int A_FEW = 6;
  private static final int FEW_DIVIDERS = 3;

  private final LayoutJob layout;
  private final Shop shop;
  private final LegPlaces places;
  private final LegLines legLines;
  private final Optional<Inlet> source;
  private final boolean anyRelief;
  private Optional<Lines> few = Optional.empty();
  private int looked;

  /**
   * What is looked for.
   *
   * @param source what is to do for every layout; empty where nothing limits its pressure
   * @param usual whether hose that a rule ranks last is left out where there is other
   * @param anyRelief whether more may be needed behind a pump than its relief valve lets stand
   */
  public record Limits(Optional<Inlet> source, boolean usual, boolean anyRelief) {}

  public LayoutSearch(LayoutJob layout, Shop shop, Limits limits) {
    this.layout = layout;
    this.shop = shop;
    this.places =
        new LegPlaces(layout, shop.catalogue(), new Eligibility(layout.whole(), shop.prices()));
    this.source = limits.source();
    this.anyRelief = limits.anyRelief();
    this.legLines = new LegLines(layout, shop, places, limits);
  }

  /**
   * No layout that is fed costs less; infinite where none can be laid. In the currency's major
   * unit.
   */
  public double leastCost(Worth worth) {
    return leastOfAny(worth).all() - worth.ofSource();
  }

  private LeastCosts leastOfAny(Worth worth) {
    return new LeastCosts(
        places,
        span -> legLines.of(span).leastCost(worth.ofPsi(span.leg())) + worth.ofNeed(span.leg()),
        divider -> divider.cost(legLines::leastEach),
        worth);
  }

  /**
   * What pressure is worth where it is scarce.
   *
   * @param fedCost what a layout costs that is fed
   */
  public Worth worth(double fedCost) {
    return source
        .map(
            fed ->
                new Relaxation(
                        layout,
                        places,
                        few(),
                        divider -> divider.cost(legLines::leastEach),
                        fed.flowingPsi())
                    .worth(fedCost))
        .orElse(Worth.NOTHING);
  }

  private Lines few() {
    if (few.isEmpty()) {
      Map<Span, List<LegWays.Way>> found = new LinkedHashMap<>();
      places.spans().forEach(span -> found.put(span, legLines.of(span).few()));
      few = Optional.of(new Lines(found));
    }
    return few.get();
  }

  /** Some good layouts, found quickly; if any can be fed, one of them likely can. */
  public List<Whole> some() {
    if (few().count() == 0) {
      return List.of();
    }
    Narrowed lines = priced(few(), Worth.NOTHING);
    Thinning thinning = Thinning.toAFew(A_FEW);
    return joined(lines, Bound.NONE, Worth.NOTHING, FEW_DIVIDERS, thinning);
  }

  /**
   * Every layout within a bound, but those that another of them is as good as.
   *
   * @param worth tells more of them to be too dear; finds the same whatever it is
   */
  public List<Whole> within(Bound bound, Worth worth) {
    LeastCosts leastOfAny = leastOfAny(worth);
    Bound all = bound.with(worth.ofSource());
    Map<Span, List<LegWays.Way>> found = new LinkedHashMap<>();
    for (Span span : places.spans()) {
      if (all.allows(leastOfAny.with(span))) {
        double left = all.leftBeside(leastOfAny.besides(span) + worth.ofNeed(span.leg()));
        LegWays.Wanted wanted = new LegWays.Wanted(left, bound.toSource(), worth.ofPsi(span.leg()));
        found.put(span, legLines.of(span).all(wanted));
      }
    }
    Narrowed lines = narrowed(new Lines(found), all, worth);
    if (lines.lines.count() == 0) {
      return List.of();
    }
    Thinning thinning = new Undominated(lines.prices::beside);
    return joined(lines, all, worth, Integer.MAX_VALUE, thinning);
  }

  /**
   * Lines at the prices that they reach together.
   *
   * @param costs compares any of their goods
   * @param least what parts of layouts cost with them
   */
  private record Narrowed(Lines lines, LinePrices prices, SharedCosts costs, LeastCosts least) {}

  /** Lines that may stand in a layout within a bound at the prices that they reach together. */
  private Narrowed narrowed(Lines lines, Bound bound, Worth worth) {
    Narrowed priced = priced(lines, worth);
    Lines narrower = priced.lines.within(bound, priced.least, worth);
    return narrower.count() < lines.count() ? narrowed(narrower, bound, worth) : priced;
  }

  private Narrowed priced(Lines lines, Worth worth) {
    MostTaken most = new MostTaken(layout, places, lines);
    BuyingCosts buying =
        new BuyingCosts(shop.prices(), Availability.of(layout.whole()), most.byAll());
    LinePrices prices = new LinePrices(most, buying, legLines.of(places.spans().get(0)));
    SharedCosts costs = prices.besideAll();
    Lines priced = lines.costing(costs);
    LeastCosts least =
        new LeastCosts(
            places,
            span -> priced.leastCost(span, worth),
            divider -> divider.cost(buying::leastEach),
            worth);
    return new Narrowed(priced, prices, costs, least);
  }

  private List<Whole> joined(
      Narrowed narrowed, Bound bound, Worth worth, int mostDividers, Thinning thinning) {
    Lines lines = narrowed.lines;
    LimbSearch.Material material =
        new LimbSearch.Material(
            lines,
            narrowed.least,
            narrowed.costs,
            worth,
            new Ample(layout, places, lines, source),
            mostDividers,
            anyRelief);
    LimbSearch search = new LimbSearch(layout, places, material, bound, thinning);
    List<Whole> wholes = new ArrayList<>();
    for (Fork fork : search.all()) {
      if (source.isEmpty() || feeds(source.get(), fork.sum())) {
        wholes.add(new Whole(fork.legs(), fork.sum()));
      }
    }
    looked += search.looked();
    return wholes;
  }

  private static boolean feeds(Inlet source, Sum sum) {
    return sum.needsPsi() <= source.flowingPsi() + HAIR_PSI
        && sum.bearsPsi() >= source.closedPsi() - HAIR_PSI;
  }

  /** Legs that no line at all can be laid for between any ends, by name. */
  public List<String> withoutLine() {
    return layout.legs().stream()
        .map(LegJob::name)
        .filter(
            name ->
                places.spans().stream()
                    .filter(span -> span.leg().name().equals(name))
                    .allMatch(span -> few().of(span).isEmpty()))
        .toList();
  }

  /** The first leg behind which the catalogue has nothing that divides the water so. */
  public Optional<LegJob> undivided() {
    return places.undivided();
  }

  /** Lines and joinings looked at. */
  public int looked() {
    return legLines.looked() + looked;
  }
}
