package hosewright.line.plan;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Eligibility;
import hosewright.line.search.Shop;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Says that nothing sold divides or joins the water as wanted, and what comes nearest. */
final class Undivided {
  private final LayoutJob layout;
  private final Shop shop;

  Undivided(LayoutJob layout, Shop shop) {
    this.layout = layout;
    this.shop = shop;
  }

  /**
   * A sentence without a full stop.
   *
   * @param leg the one behind which nothing stands that would do
   */
  String behind(LegJob leg) {
    if (!leg.joined().isEmpty()) {
      return "legs "
          + leg.name()
          + ": no siamese of "
          + leg.outlets()
          + " inlets is sold for this use"
          + nearest(ItemKind.SIAMESE, leg.outlets(), "inlets");
    }
    List<LegJob> behind = layout.behind(leg);
    int outlets = behind.stream().mapToInt(LegJob::outlets).sum();
    String names =
        String.join(
            " and ",
            behind.stream()
                .map(one -> one.copies() > 1 ? one.copies() + " x " + one.name() : one.name())
                .toList());
    return "leg "
        + leg.name()
        + ": nothing that is sold for this use divides the water among "
        + names
        + nearest(ItemKind.WYE, outlets, "outlets");
  }

  /** What is sold that has most of them, where that is too few. */
  private String nearest(ItemKind kind, int wanted, String what) {
    Eligibility eligibility = new Eligibility(layout.whole(), shop.prices());
    Optional<Item> most =
        shop.catalogue().ofKind(kind).stream()
            .filter(eligibility::wetted)
            .max(Comparator.comparingInt(item -> item.ends().size()));
    return most.filter(item -> item.ends().size() - 1 < wanted)
        .map(
            item ->
                "; the most "
                    + what
                    + " that are sold are "
                    + (item.ends().size() - 1)
                    + " ("
                    + item.number()
                    + "): let some of the legs "
                    + (kind == ItemKind.WYE ? "begin" : "meet")
                    + " where another leg between ends")
        .orElse("");
  }
}
