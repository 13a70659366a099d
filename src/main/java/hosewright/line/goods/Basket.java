package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What a plan buys, counted over the whole plan so that quantity breaks see the total. */
public final class Basket {
  // By number: an item's own hash runs over every field, and plans are priced by the thousand.
  private final Map<String, Need> needs = new LinkedHashMap<>();

  /** So many of an item. */
  public record Need(Item item, int quantity) {}

  void add(Item item, int quantity) {
    if (quantity > 0) {
      needs.merge(
          item.number(),
          new Need(item, quantity),
          (one, other) -> new Need(item, one.quantity() + other.quantity()));
    }
  }

  /** Everything that sections side by side, and those to spare, are made of. */
  public void addSections(HoseLine hose, Lay lay, int lines, int spares) {
    for (int i = 0; i < hose.options().size(); i++) {
      int sections = lay.counts().get(i) * lines;
      hose.options().get(i).bill().forEach((item, quantity) -> add(item, quantity * sections));
    }
    hose.spare(lay)
        .ifPresent(
            spare -> {
              int bought = hose.sparesToBuy(lay, lines, spares);
              spare.bill().forEach((item, quantity) -> add(item, quantity * bought));
            });
  }

  public List<Need> needs() {
    return List.copyOf(needs.values());
  }

  /** The lines to buy, each at the cheapest quantity that covers its need. */
  List<Purchase> purchases(NetPrice prices, Availability availability) {
    List<Purchase> purchases = new ArrayList<>();
    needs
        .values()
        .forEach(
            need -> purchases.add(cheapest(need.item(), need.quantity(), prices, availability)));
    return purchases;
  }

  /**
   * The cheapest way to buy enough of one item; a larger quantity wins where a price break makes it
   * cheaper in all. Work is never bought ahead, and nothing beyond what can be had.
   */
  static Purchase cheapest(Item item, int needed, NetPrice prices, Availability availability) {
    Purchase best = Purchase.of(item, needed, needed, prices);
    if (best.unitPrice().isEmpty() || item.kind().isWork()) {
      return best;
    }
    for (int breakQuantity : prices.breakQuantities(item)) {
      if (breakQuantity > needed && availability.toBeHad(item, breakQuantity)) {
        Purchase larger = Purchase.of(item, needed, breakQuantity, prices);
        if (larger.unitPrice().isPresent()
            && larger.extended().get().isLessThan(best.extended().get())) {
          best = larger;
        }
      }
    }
    return best;
  }

  public static Money sum(List<Purchase> purchases, CurrencyUnit currency) {
    return purchases.stream()
        .flatMap(purchase -> purchase.extended().stream())
        .reduce(Money.zero(currency), Money::plus);
  }

  /**
   * One item bought.
   *
   * @param needed what the plan uses, spares of gaskets included
   * @param bought what is paid for; above {@code needed} when a price break makes more cost less
   */
  public record Purchase(Item item, int needed, int bought, Optional<Money> unitPrice) {

    static Purchase of(Item item, int needed, int bought, NetPrice prices) {
      return new Purchase(item, needed, bought, prices.unitPrice(item, bought));
    }

    Optional<Money> extended() {
      return unitPrice.map(price -> price.multipliedBy(bought));
    }
  }
}
