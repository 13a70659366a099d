package hosewright.line.layout.search;

import hosewright.line.goods.Basket;
import hosewright.line.goods.SharedCosts;
import hosewright.line.search.LegWays.Way;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lines that each leg may be laid with, by the ends that it is laid between. */
record Lines(Map<Span, List<Way>> bySpan) {

  List<Way> of(Span span) {
    return bySpan.getOrDefault(span, List.of());
  }

  /** No line between two ends costs less with what its pressure is worth; else infinite. */
  double leastCost(Span span, Worth worth) {
    return of(span).stream()
        .mapToDouble(way -> way.leastCost() + worth.of(span.leg(), way))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  int count() {
    return bySpan.values().stream().mapToInt(List::size).sum();
  }

  /** How many of each item one leg takes at the most, by the leg's name and the item's number. */
  Map<String, Map<String, Integer>> mostOfEach() {
    Map<String, Map<String, Integer>> most = new HashMap<>();
    bySpan.forEach(
        (span, ways) -> {
          Map<String, Integer> ofLeg =
              most.computeIfAbsent(span.leg().name(), name -> new HashMap<>());
          for (Way way : ways) {
            for (Basket.Need need : way.goods().needs()) {
              ofLeg.merge(need.item().number(), need.quantity(), Math::max);
            }
          }
        });
    return most;
  }

  /** The same at the least prices that their goods can have. */
  Lines costing(SharedCosts costs) {
    Map<Span, List<Way>> so = new LinkedHashMap<>();
    bySpan.forEach(
        (span, ways) ->
            so.put(span, ways.stream().map(way -> way.costing(costs.least(way.goods()))).toList()));
    return new Lines(so);
  }

  /** Those that may stand in a layout within a bound. */
  Lines within(Bound bound, LeastCosts least, Worth worth) {
    Map<Span, List<Way>> some = new LinkedHashMap<>();
    bySpan.forEach(
        (span, ways) -> {
          double besides = least.besides(span);
          List<Way> kept =
              ways.stream()
                  .filter(
                      way -> bound.allows(besides + way.leastCost() + worth.of(span.leg(), way)))
                  .toList();
          if (!kept.isEmpty()) {
            some.put(span, kept);
          }
        });
    return new Lines(some);
  }
}
