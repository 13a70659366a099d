package hosewright.line.layout;

import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.Item;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.bridge.BridgeGraph;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;

/** More of an item than a layout can use, or all of it but one leg: bounds for price breaks. */
final class MostBought {
  private static final double SHORTEST_SECTION_FT = 10;

  private final LayoutJob layout;

  MostBought(LayoutJob layout) {
    this.layout = layout;
  }

  /** What all legs may buy. */
  ToIntFunction<Item> byAll() {
    return known(Optional.empty());
  }

  /** What all other legs may buy. */
  ToIntFunction<Item> besides(LegJob leg) {
    return known(Optional.of(leg));
  }

  private ToIntFunction<Item> known(Optional<LegJob> except) {
    Map<String, Integer> known = new HashMap<>();
    return item -> known.computeIfAbsent(item.number(), number -> most(item, except));
  }

  private int most(Item item, Optional<LegJob> except) {
    double neededFt = 0;
    int lines = 0;
    for (LegJob leg : layout.legs()) {
      if (!except.equals(Optional.of(leg)) && mayUse(leg, item)) {
        int abreast = leg.copies() * leg.job().wishes().fewestLines();
        neededFt += leg.job().run().neededFt() * abreast;
        lines += abreast;
      }
    }
    double lengthFt =
        item.hose()
            .map(HoseFacts::lengthFt)
            .orElse(OptionalDouble.empty())
            .orElse(SHORTEST_SECTION_FT);
    return switch (item.kind()) {
      case HOSE -> (int) (neededFt / lengthFt) + 2 * lines;
      case BULK_HOSE -> (int) neededFt + 100 * lines;
      case COUPLING, ATTACHMENT, COUPLING_LABOUR, PRESSURE_TEST ->
          2 * ((int) (neededFt / SHORTEST_SECTION_FT) + 2 * lines);
      case NOZZLE -> lines;
      case ADAPTER -> 2 * BridgeGraph.MOST_ADAPTERS * lines;
      default -> 8 * lines;
    };
  }

  private static boolean mayUse(LegJob leg, Item item) {
    return item.hose().map(hose -> leg.job().wishes().allows(hose.sizeIn())).orElse(true);
  }
}
