package hosewright.line.layout.search;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.job.question.Asked;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.SectionOption;
import hosewright.line.hose.HoseLines;
import hosewright.line.search.Shop;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

/** More of an item than a layout can use, or all of it but one leg: bounds for price breaks. */
final class MostBought {
  /**
   * A bridge has no adapter twice the same way round: what meets the second would meet the first.
   */
  private static final int ADAPTER_IN_BRIDGE = 2;

  private static final int SPARE_OF_OTHER_GOODS = 8;

  private final List<LegJob> legs;

  /** Of what hose is made of, by leg and item number. */
  private final Map<String, Map<String, Integer>> ofHose = new HashMap<>();

  MostBought(LayoutJob layout, Shop shop) {
    this.legs = layout.stretches();
    for (LegJob leg : legs) {
      Map<String, Integer> most = new HashMap<>();
      for (HoseLine hose : new HoseLines(leg.job(), shop.catalogue(), shop.prices()).all()) {
        countHose(leg, hose, most);
      }
      ofHose.put(leg.name(), most);
    }
  }

  /** What all legs may buy. */
  ToIntFunction<Item> byAll() {
    return besides(List.of());
  }

  /** What all legs may buy but some. */
  ToIntFunction<Item> besides(List<LegJob> except) {
    Map<String, Integer> known = new HashMap<>();
    return item ->
        known.computeIfAbsent(
            item.number(),
            number ->
                legs.stream()
                    .filter(leg -> !except.contains(leg))
                    .mapToInt(leg -> most(leg, item))
                    .sum());
  }

  private int most(LegJob leg, Item item) {
    int asked = places(leg.job());
    int most = ofHose.get(leg.name()).getOrDefault(item.number(), 0);
    if (item.kind() == ItemKind.ADAPTER) {
      most += (2 + 2 * asked) * ADAPTER_IN_BRIDGE * abreast(leg);
    } else if (most == 0) {
      most = (SPARE_OF_OTHER_GOODS + asked) * abreast(leg);
    }
    return most;
  }

  private static void countHose(LegJob leg, HoseLine hose, Map<String, Integer> most) {
    Map<String, OfOneHose> items = new HashMap<>();
    for (SectionOption option : hose.options()) {
      option
          .bill()
          .forEach(
              (item, each) ->
                  items.merge(item.number(), OfOneHose.in(option, each), OfOneHose::and));
    }
    int spares = leg.job().conditions().spareSections() * leg.copies();
    items.forEach(
        (number, item) ->
            most.merge(
                number, item.most(leg.job()) * abreast(leg) + spares * item.each, Math::max));
  }

  /**
   * An item in the sections of one make of hose.
   *
   * @param each in one section at the most
   * @param perFt in a foot of hose at the most
   */
  private record OfOneHose(int each, double perFt, double shortestFt, double longestFt) {
    static OfOneHose in(SectionOption option, int each) {
      double lengthFt = option.lengthFt();
      return new OfOneHose(each, each / lengthFt, lengthFt, lengthFt);
    }

    OfOneHose and(OfOneHose other) {
      return new OfOneHose(
          Math.max(each, other.each),
          Math.max(perFt, other.perFt),
          Math.min(shortestFt, other.shortestFt),
          Math.max(longestFt, other.longestFt));
    }

    /** No lay has a section to spare: without its shortest, its sections are too short. */
    int most(Job job) {
      double neededFt = job.run().neededFt();
      int asked = places(job);
      int sections = Math.max(1 + asked, (int) Math.ceil(neededFt / shortestFt));
      return asked > 0
          ? each * sections
          : Math.min(each * sections, (int) Math.ceil(perFt * (neededFt + longestFt)));
    }
  }

  private static int abreast(LegJob leg) {
    return leg.copies() * leg.job().wishes().fewestLines();
  }

  /** Places on the way that may be asked for. */
  private static int places(Job job) {
    return job.accessories().stream().mapToInt(one -> Asked.of(one).count().orElse(1)).sum();
  }
}
