package hosewright.line.layout;

import hosewright.hydraulics.Inlet;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Availability;
import hosewright.line.goods.BuyingCosts;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.Goods;
import hosewright.line.goods.SharedCosts;
import hosewright.line.search.LegWays;
import hosewright.line.search.Shop;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds layouts: every leg laid, divided where legs meet.
 *
 * <p>Exact within a bound on what a layout may cost. First it is asked which lines any such layout
 * may have, all else costing the least; these tell how much can be bought together, and so which
 * prices can be reached, which leaves fewer lines, until no more fall out. The rest is joined from
 * the ends of the water back to the source.
 */
final class LayoutSearch {
  private static final double HAIR_PSI = 1e-6;
  private static final int A_FEW = 6;
  private static final int FEW_DIVIDERS = 3;

  private final LayoutJob layout;
  private final Shop shop;
  private final LegPlaces places;
  private final LegLines legLines;
  private final Optional<Inlet> source;
  private final LeastCosts leastOfAny;
  private int looked;

  LayoutSearch(LayoutJob layout, Shop shop, LegLines.Limits limits) {
    this.layout = layout;
    this.shop = shop;
    this.places =
        new LegPlaces(layout, shop.catalogue(), new Eligibility(layout.whole(), shop.prices()));
    this.source = limits.source();
    this.legLines = new LegLines(layout, shop, places, limits);
    this.leastOfAny =
        new LeastCosts(
            places,
            span -> legLines.of(span).leastCost(),
            divider -> legLines.leastEach(divider.item()));
  }

  /** No layout costs less; infinite where none can be laid. In the currency's major unit. */
  double leastCost() {
    return leastOfAny.all();
  }

  /** Some good layouts, found quickly; if any can be fed, one of them likely can. */
  List<Whole> some() {
    Map<Span, List<LegWays.Way>> few = new LinkedHashMap<>();
    places.spans().forEach(span -> few.put(span, legLines.of(span).few()));
    return joined(new Lines(few), Bound.NONE, FEW_DIVIDERS, costs -> Thinning.toAFew(A_FEW));
  }

  /** Every layout within a bound, but those that another of them is as good as. */
  List<Whole> within(Bound bound) {
    Map<Span, List<LegWays.Way>> found = new LinkedHashMap<>();
    for (Span span : places.spans()) {
      if (bound.allows(leastOfAny.with(span))) {
        double left = bound.leftBeside(leastOfAny.besides(span));
        found.put(span, legLines.of(span).all(left, bound.toSource()));
      }
    }
    Lines lines = narrowed(new Lines(found), bound);
    return joined(lines, bound, Integer.MAX_VALUE, Undominated::new);
  }

  /** Lines that may stand in a layout within a bound at the prices that they reach together. */
  private Lines narrowed(Lines lines, Bound bound) {
    Lines priced = priced(lines);
    Lines narrower = priced.within(bound, leastOf(priced));
    return narrower.count() < lines.count() ? narrowed(narrower, bound) : priced;
  }

  private Lines priced(Lines lines) {
    return lines.costing(costs(lines, Set.of()));
  }

  private LeastCosts leastOf(Lines lines) {
    SharedCosts costs = costs(lines, Set.of());
    return new LeastCosts(
        places, lines::leastCost, divider -> costs.least(Goods.one(divider.item(), List.of())));
  }

  /** Compares goods of some legs, by name, beside anything that others of given lines may buy. */
  private SharedCosts costs(Lines lines, Set<String> legs) {
    MostTaken most = new MostTaken(layout, places, lines);
    BuyingCosts buying =
        new BuyingCosts(shop.prices(), Availability.of(layout.whole()), most.byAll());
    return legLines.of(places.spans().get(0)).costs(buying, most.besides(legs));
  }

  private List<Whole> joined(
      Lines lines,
      Bound bound,
      int mostDividers,
      Function<Function<Set<String>, SharedCosts>, Thinning> thinning) {
    if (lines.count() == 0) {
      return List.of();
    }
    LimbSearch.Material material =
        new LimbSearch.Material(
            lines,
            leastOf(lines),
            costs(lines, Set.of()),
            new Ample(layout, places, lines, source),
            mostDividers);
    LimbSearch search =
        new LimbSearch(layout, places, material, bound, thinning.apply(legs -> costs(lines, legs)));
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
  List<String> withoutLine() {
    return layout.legs().stream()
        .map(LegJob::name)
        .filter(
            name ->
                places.spans().stream()
                    .filter(span -> span.leg().name().equals(name))
                    .allMatch(span -> legLines.of(span).few().isEmpty()))
        .toList();
  }

  /** The first leg behind which the catalogue has nothing that divides the water so. */
  Optional<LegJob> undivided() {
    return places.undivided();
  }

  /** Lines and joinings looked at. */
  int looked() {
    return legLines.looked() + looked;
  }
}
