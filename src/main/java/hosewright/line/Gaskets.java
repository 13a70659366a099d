package hosewright.line;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.thread.End;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Finds the gasket for an end: the cheapest of its size and family that the job may use. */
final class Gaskets {
  private final Catalogue catalogue;
  private final Eligibility eligibility;
  private final PriceFloor floor;
  private final Map<End, Optional<Item>> known = new HashMap<>();

  Gaskets(Catalogue catalogue, Eligibility eligibility, PriceFloor floor) {
    this.catalogue = catalogue;
    this.eligibility = eligibility;
    this.floor = floor;
  }

  Optional<Item> item(End end) {
    return known.computeIfAbsent(end, this::find);
  }

  private Optional<Item> find(End end) {
    return catalogue.ofKind(ItemKind.GASKET).stream()
        .filter(eligibility::wetted)
        .filter(item -> item.ends().stream().anyMatch(fits -> alike(fits, end)))
        .min(Comparator.comparingDouble(floor::ofOne));
  }

  private static boolean alike(End one, End other) {
    return one.sizeIn() == other.sizeIn() && one.family().equals(other.family());
  }
}
