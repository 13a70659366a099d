package hosewright.line.layout.search;

import hosewright.catalogue.Item;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.line.goods.Availability;
import hosewright.line.goods.BuyingCosts;
import hosewright.line.search.LegWays;
import hosewright.line.search.Shop;
import java.util.HashMap;
import java.util.Map;

/** The lines that each leg of a layout may be laid with, between any ends. */
final class LegLines {
  private final Shop shop;
  private final LegPlaces places;
  private final MostBought most;
  private final BuyingCosts buying;
  private final LayoutSearch.Limits limits;
  private final Map<Span, LegWays> known = new HashMap<>();

  LegLines(LayoutJob layout, Shop shop, LegPlaces places, LayoutSearch.Limits limits) {
    this.shop = shop;
    this.places = places;
    this.most = new MostBought(layout, shop);
    this.buying = new BuyingCosts(shop.prices(), Availability.of(layout.whole()), most.byAll());
    this.limits = limits;
  }

  /** No item costs less in any layout, in the currency's major unit. */
  double leastEach(Item item) {
    return buying.leastEach(item);
  }

  LegWays of(Span span) {
    LegWays lines = known.get(span);
    if (lines == null) {
      lines =
          new LegWays(
              job(span),
              new LegWays.Place(
                  span.leg().copies(),
                  places.beginsAtNode(span.leg()),
                  !span.leg().last() && !places.endsAtPump(span.leg()),
                  limits.usual()),
              shop,
              buying,
              most.besides(span.leg()));
      known.put(span, lines);
    }
    return lines;
  }

  /** With the most that a leg can be fed with where it begins, if that is known. */
  private Job job(Span span) {
    return span.job().withSupply(limits.source().map(fed -> places.mostFed(span.leg(), fed)));
  }

  /** How many lines were looked at. */
  int looked() {
    return known.values().stream().mapToInt(LegWays::looked).sum();
  }
}
