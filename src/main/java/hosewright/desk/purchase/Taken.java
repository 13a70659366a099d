package hosewright.desk.purchase;

import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Part;
import java.util.HashMap;
import java.util.Map;

/**
 * What part of a purchase takes of things there are only so many of.
 *
 * @param shelf pieces that must come from the shelf, by item number
 * @param owned sections that the buyer has
 */
record Taken(Map<String, Integer> shelf, Map<OwnedKind, Integer> owned) {
  static final Taken NOTHING = new Taken(Map.of(), Map.of());

  Taken {
    shelf = Map.copyOf(shelf);
    owned = Map.copyOf(owned);
  }

  /**
   * Sections that are taken for each other.
   *
   * @param coupling size and family of their ends
   */
  record OwnedKind(double lengthFt, double sizeIn, String coupling) {}

  /** Both together. */
  Taken and(Taken other) {
    return new Taken(sum(shelf, other.shelf), sum(owned, other.owned));
  }

  private static <K> Map<K, Integer> sum(Map<K, Integer> one, Map<K, Integer> other) {
    Map<K, Integer> sum = new HashMap<>(one);
    other.forEach((key, count) -> sum.merge(key, count, Integer::sum));
    return sum;
  }

  /** The buyer's sections that a plan lays. */
  static Map<OwnedKind, Integer> laid(LinePlan plan) {
    Map<OwnedKind, Integer> laid = new HashMap<>();
    for (Leg leg : plan.layout().hoseLegs()) {
      for (Part part : leg.sections()) {
        if (part.isBuyers()) {
          laid.merge(
              new OwnedKind(
                  part.section().orElseThrow().lengthFt(),
                  leg.hose().orElseThrow().sizeIn(),
                  part.upstream().orElseThrow().sizeAndFamily()),
              part.count() * leg.lines(),
              Integer::sum);
        }
      }
    }
    return laid;
  }
}
