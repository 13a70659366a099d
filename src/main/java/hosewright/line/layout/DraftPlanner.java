package hosewright.line.layout;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Sort;
import hosewright.hydraulics.Fitting;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Eligibility;
import hosewright.line.search.Shop;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Chooses a layout that draws open water: the cheapest over every strainer or foot valve that its
 * suction leg may begin at.
 */
public final class DraftPlanner {
  private final LayoutJob layout;
  private final Shop shop;

  /**
   * @param layout one that draws, and names the day of its prices
   */
  public DraftPlanner(LayoutJob layout, Shop shop) {
    this.layout = layout;
    this.shop = shop;
  }

  /**
   * What was found.
   *
   * @param layout behind the strainer that was chosen
   * @param strainer empty where none is sold that may stand there
   */
  public record Drawn(LayoutJob layout, Optional<Item> strainer, LayoutPlanner.Found found) {
    private FedLayout fed() {
      return found.best().orElseThrow();
    }
  }

  public Drawn find() {
    List<Item> strainers = strainers();
    if (strainers.isEmpty()) {
      return new Drawn(layout, Optional.empty(), LayoutPlanner.nothingFound());
    }
    List<Drawn> all = new ArrayList<>();
    for (Item strainer : strainers) {
      LayoutJob so = layout.drawingBy(strainer.number(), strainer.ends().get(0), lostPsi(strainer));
      all.add(new Drawn(so, Optional.of(strainer), new LayoutPlanner(so, shop).find()));
    }
    return all.stream()
        .filter(one -> one.found.best().isPresent())
        .min(
            Comparator.<Drawn, Boolean>comparing(one -> !one.fed().bestThatCanBe())
                .thenComparing(one -> one.fed().bestThatCanBe() ? 0 : one.fed().missedPsi())
                .thenComparing(one -> one.fed().priced(), PricedLayout.BY_MERIT))
        .orElse(all.get(0));
  }

  /** Those asked for, or any, that no other with the same end is as good as. */
  private List<Item> strainers() {
    Eligibility eligibility = new Eligibility(layout.whole(), shop.prices());
    LegJob suction = layout.legs().get(0);
    List<String> wanted = suction.job().accessories();
    boolean footValve =
        wanted.stream()
            .anyMatch(one -> one.toLowerCase(Locale.ROOT).replace('-', ' ').equals("foot valve"));
    List<Item> sold =
        shop.catalogue().ofKind(ItemKind.STRAINER).stream()
            .filter(item -> item.ends().size() == 1)
            .filter(
                item ->
                    item.sort() == Sort.FOOT_VALVE || item.sort() == Sort.STRAINER && !footValve)
            .filter(eligibility::wetted)
            .filter(item -> shop.prices().unitPrice(item, 1).isPresent())
            .toList();
    List<Item> named = sold.stream().filter(item -> wanted.contains(item.number())).toList();
    List<Item> some = named.isEmpty() ? sold : named;
    return some.stream().filter(item -> some.stream().noneMatch(two -> better(two, item))).toList();
  }

  private boolean better(Item one, Item other) {
    int byPrice =
        shop.prices()
            .unitPrice(one, 1)
            .orElseThrow()
            .compareTo(shop.prices().unitPrice(other, 1).orElseThrow());
    return one != other
        && one.ends().equals(other.ends())
        && byPrice < 0
        && lostPsi(one) <= lostPsi(other);
  }

  /** Lost in a strainer at the flow, psi: its coefficient on the velocity head in its end. */
  private double lostPsi(Item strainer) {
    return met(strainer).lossPsi(layout.flowGpm());
  }

  /** A strainer as the water meets it; one that states nothing takes nothing. */
  public static Fitting met(Item strainer) {
    End end = strainer.ends().get(0);
    double boreIn = strainer.water().waterwayIn().orElse(end.sizeIn());
    return new Fitting(strainer.number(), strainer.lossCoefficient().orElse(0), boreIn);
  }
}
