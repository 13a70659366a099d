package hosewright.fleet.budget;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.fleet.record.HoseKind;
import hosewright.thread.End;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What the dealer would sell in the place of a section.
 *
 * <p>An item replaces a section when it is hose of its size and bought length with its couplings,
 * is still sold and has a price. Fire hose comes first: of that, the cheapest whose material is the
 * section's jacket, else the cheapest. Other hose is taken only for its jacket, since cheap
 * discharge hose must never stand in for fire hose, and suction hose never. Hose that does not say
 * its type is taken for fire hose where it is made to be service tested.
 */
public final class ReplacementItems {
  private final Catalogue catalogue;
  private final NetPrice prices;
  private final Map<HoseKind, Optional<Item>> found = new HashMap<>();

  public ReplacementItems(Catalogue catalogue, NetPrice prices) {
    this.catalogue = catalogue;
    this.prices = prices;
  }

  public Optional<Item> of(HoseKind kind) {
    return found.computeIfAbsent(kind, this::find);
  }

  /** The net price of one of so many. */
  public Money unitPrice(Item item, long quantity) {
    int whole = (int) Math.max(1, Math.min(Integer.MAX_VALUE, quantity));
    return prices.unitPrice(item, whole).orElseThrow();
  }

  private Optional<Item> find(HoseKind kind) {
    List<Item> fitting =
        catalogue.ofKind(ItemKind.HOSE).stream()
            .filter(item -> !item.discontinued() && item.hoseType() != HoseType.SUCTION)
            .filter(item -> replaces(item, kind))
            .filter(item -> prices.unitPrice(item, 1).isPresent())
            .sorted(Comparator.comparing((Item item) -> prices.unitPrice(item, 1).orElseThrow()))
            .toList();
    List<Item> fire = fitting.stream().filter(ReplacementItems::isFireHose).toList();
    return first(fire, kind).or(() -> fire.stream().findFirst()).or(() -> first(fitting, kind));
  }

  private static boolean isFireHose(Item item) {
    return switch (item.hoseType()) {
      case ATTACK, SUPPLY, FORESTRY, OCCUPANT_USE, BOOSTER -> true;
      case SUCTION, INDUSTRIAL, DISCHARGE, DRINKING_WATER -> false;
      case UNKNOWN -> item.rating().serviceTestPsi().isPresent();
    };
  }

  private static Optional<Item> first(List<Item> items, HoseKind kind) {
    return items.stream().filter(item -> hasJacket(item, kind.jacket())).findFirst();
  }

  private static boolean replaces(Item item, HoseKind kind) {
    HoseFacts hose = item.hose().orElseThrow();
    return hose.sizeIn() == kind.sizeIn()
        && hose.lengthFt().orElse(0) == kind.lengthFt()
        && item.ends().size() == 2
        && sameEnds(item.ends().get(0), item.ends().get(1), kind);
  }

  private static boolean sameEnds(End a, End b, HoseKind kind) {
    return (same(a, kind.endA()) && same(b, kind.endB()))
        || (same(a, kind.endB()) && same(b, kind.endA()));
  }

  /** A swivel is how an end is made, not what it fits. */
  private static boolean same(End a, End b) {
    return a.sizeIn() == b.sizeIn() && a.family().equals(b.family()) && a.gender() == b.gender();
  }

  private static boolean hasJacket(Item item, String jacket) {
    return !jacket.isEmpty()
        && item.material().toLowerCase(Locale.ROOT).contains(jacket.toLowerCase(Locale.ROOT));
  }
}
