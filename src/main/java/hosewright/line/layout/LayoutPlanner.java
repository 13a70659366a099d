package hosewright.line.layout;

import hosewright.hydraulics.Inlet;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Accessories;
import hosewright.line.goods.Availability;
import hosewright.line.goods.Billing;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.Gaskets;
import hosewright.line.goods.PriceFloor;
import hosewright.line.search.Shop;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Chooses a layout: the cheapest that passes every check, else the one that is nearest to it. */
public final class LayoutPlanner {
  private static final int MOST_ALIKE = 10_000;

  private final LayoutJob layout;
  private final Shop shop;
  private final Billing billing;

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

  public Found find() {
    LayoutSearch search = new LayoutSearch(layout, shop, true);
    Optional<FedLayout> best = best(search.some());
    if (best.isPresent()) {
      FedLayout good = best.get();
      best =
          best(search.better(good.total().getAmount().doubleValue(), good.bill().partsToSource()));
    }
    int looked = search.looked();
    if (best.isEmpty()) {
      search = new LayoutSearch(layout, shop, false);
      best =
          search.some().stream()
              .map(this::priced)
              .min(
                  Comparator.<PricedLayout>comparingInt(one -> one.bill().partsToSource())
                      .thenComparingDouble(one -> one.missedPsi(source(one)))
                      .thenComparing(PricedLayout.BY_MERIT))
              .map(this::fed);
      looked += search.looked();
    }
    return new Found(best, search.undivided(), search.withoutLine(), looked);
  }

  private Optional<FedLayout> best(List<LayoutSearch.Whole> wholes) {
    return wholes.stream()
        .map(this::priced)
        .sorted(PricedLayout.BY_MERIT)
        .map(this::fed)
        .filter(FedLayout::bestThatCanBe)
        .findFirst();
  }

  private PricedLayout priced(LayoutSearch.Whole whole) {
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
