package hosewright.line.layout.search;

import hosewright.catalogue.Item;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;

/** More of an item than a layout of given lines can take: bounds for price breaks. */
final class MostTaken {
  private final Map<String, Map<String, Integer>> byLeg;
  private final Map<String, Integer> ofDividers = new HashMap<>();

  MostTaken(LayoutJob layout, LegPlaces places, Lines lines) {
    this.byLeg = lines.mostOfEach();
    for (LegJob leg : layout.legs()) {
      places.dividers(leg).stream()
          .flatMap(divider -> divider.item().stream())
          .map(Item::number)
          .distinct()
          .forEach(number -> ofDividers.merge(number, 1, Integer::sum));
    }
  }

  /** What all legs may buy, and all that divides the water. */
  ToIntFunction<Item> byAll() {
    return besides(Set.of());
  }

  /**
   * What all may buy but some legs.
   *
   * @param legs their names
   */
  ToIntFunction<Item> besides(Set<String> legs) {
    Map<String, Integer> most = new HashMap<>(ofDividers);
    byLeg.forEach(
        (leg, counts) -> {
          if (!legs.contains(leg)) {
            counts.forEach((number, count) -> most.merge(number, count, Integer::sum));
          }
        });
    return item -> most.getOrDefault(item.number(), 0);
  }
}
