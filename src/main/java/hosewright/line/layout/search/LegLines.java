package hosewright.line.layout.search;

import hosewright.catalogue.Item;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Availability;
import hosewright.line.goods.BuyingCosts;
import hosewright.line.search.LegWays;
import hosewright.line.search.Shop;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lines that each leg of a layout may be laid with, between any ends. */
final class LegLines {
  /**
   * What nothing fails at: lines that share a flow are held to their shares when these are known.
   */
  private static final double ANY_GPM = 1;

  private final Shop shop;
  private final LegPlaces places;
  private final MostBought most;
  private final BuyingCosts buying;
  private final LayoutSearch.Limits limits;
  private final Map<Span, Laying> known = new HashMap<>();
  private Optional<LegWays> any = Optional.empty();

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

  Laying of(Span span) {
    Laying lines = known.get(span);
    if (lines == null) {
      lines = span.leg().joined().isEmpty() ? Laying.of(one(span, span.leg())) : together(span);
      known.put(span, lines);
    }
    return lines;
  }

  /** The lines of a leg, for what those of all have in common. */
  LegWays any(Span span) {
    if (any.isEmpty()) {
      of(span);
    }
    return any.orElseThrow();
  }

  /**
   * The lines of a leg alone.
   *
   * @param leg the one of the span, or one of those it is made of
   */
  private LegWays one(Span span, LegJob leg) {
    boolean shares = leg != span.leg();
    Job job = job(new Span(leg, span.from(), span.to()), span.leg());
    LegWays.Place place =
        new LegWays.Place(
            leg.copies(),
            places.beginsAtNode(span.leg()),
            !span.leg().last() && !places.endsAtPump(span.leg()),
            limits.usual(),
            shares);
    LegWays lines =
        new LegWays(
            shares ? job.flowing(ANY_GPM, job.needPsi()) : job,
            place,
            shop,
            buying,
            most.besides(List.of(leg)));
    any = Optional.of(lines);
    return lines;
  }

  private Laying together(Span span) {
    List<LegWays> each = span.leg().joined().stream().map(leg -> one(span, leg)).toList();
    return new SideBySide(
        job(span, span.leg()), each, each.get(0).costs(buying, most.besides(span.leg().joined())));
  }

  /** With the most that a leg can be fed with where it begins, if that is known. */
  private Job job(Span span, LegJob fed) {
    return span.job().withSupply(limits.source().map(source -> places.mostFed(fed, source)));
  }

  /** How many lines were looked at. */
  int looked() {
    return known.values().stream().mapToInt(Laying::looked).sum();
  }
}
