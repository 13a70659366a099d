package hosewright.line.layout.search;

import hosewright.job.layout.LegJob;
import hosewright.thread.End;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What parts of a layout cost at the least, and what all besides them does: the sums of least
 * prices, and of what the pressure is worth, over the cheapest choice of ends. Infinite where
 * nothing can be laid so. In the currency's major unit.
 */
final class LeastCosts {
  private final LegPlaces places;
  private final ToDoubleFunction<Span> ofLine;
  private final ToDoubleFunction<Divider> ofDivider;
  private final Worth worth;
  private final Map<Place, Double> limbs = new HashMap<>();
  private final Map<Place, Double> besides = new HashMap<>();

  /**
   * @param ofLine what a leg's line alone costs at the least, what its pressure is worth included
   * @param ofDivider what one costs alone
   */
  LeastCosts(
      LegPlaces places,
      ToDoubleFunction<Span> ofLine,
      ToDoubleFunction<Divider> ofDivider,
      Worth worth) {
    this.worth = worth;
    this.places = places;
    this.ofLine = ofLine;
    this.ofDivider = ofDivider;
  }

  private record Place(String leg, End from) {}

  /** A whole layout. */
  double all() {
    return atSource(places.atSource());
  }

  /** A whole layout with a leg laid so, however it is laid. */
  double with(Span span) {
    return besides(span.leg(), span.from()) + ofLine.applyAsDouble(span) + behind(span);
  }

  /** All but the line of a leg, laid between two ends. */
  double besides(Span span) {
    return besides(span.leg(), span.from()) + behind(span);
  }

  /** All but a leg that begins at an end, and what lies behind it. */
  double besides(LegJob leg, End from) {
    Place place = new Place(leg.name(), from);
    Double known = besides.get(place);
    if (known == null) {
      known = findBesides(leg, from);
      besides.put(place, known);
    }
    return known;
  }

  /** All but a divider and what hangs on it. */
  double besides(LegJob before, Divider divider) {
    double least = Double.POSITIVE_INFINITY;
    for (End from : places.begins(before)) {
      Span line = new Span(before, from, divider.inlet());
      least = Math.min(least, besides(before, from) + ofLine.applyAsDouble(line));
    }
    return least;
  }

  /** A leg that begins at an end, and all behind it. */
  double limb(LegJob leg, End from) {
    Place place = new Place(leg.name(), from);
    Double known = limbs.get(place);
    if (known == null) {
      known = findLimb(leg, from);
      limbs.put(place, known);
    }
    return known;
  }

  /** A divider, and what hangs on it of the legs from one of them on. */
  double behind(LegJob before, Divider divider, int first) {
    List<LegJob> legs = places.behind(before);
    double least = first == 0 ? ofDivider.applyAsDouble(divider) : 0;
    least += ofPressure(divider, legs, first);
    for (int i = first; i < legs.size(); i++) {
      least += limb(legs.get(i), divider.outlets().get(i));
    }
    return least;
  }

  /** What a divider takes on the way to legs behind it, from one of them on. */
  private double ofPressure(Divider divider, List<LegJob> legs, int first) {
    double ofPressure = 0;
    for (int i = first; i < legs.size(); i++) {
      ofPressure += worth.ofPsi(legs.get(i)) * divider.lossPsi(i);
    }
    return ofPressure;
  }

  /** Legs that begin at the source. */
  double atSource(List<LegJob> legs) {
    return legs.stream().mapToDouble(leg -> limb(leg, places.source())).sum();
  }

  private double findLimb(LegJob leg, End from) {
    double least = Double.POSITIVE_INFINITY;
    for (End to : places.ends(leg)) {
      Span span = new Span(leg, from, to);
      double behind = behind(span);
      if (behind < least) {
        least = Math.min(least, ofLine.applyAsDouble(span) + behind);
      }
    }
    return least;
  }

  /** What hangs at the end of a line; nothing at an appliance. */
  private double behind(Span span) {
    if (span.leg().last()) {
      return 0;
    }
    return places.dividers(span.leg()).stream()
        .filter(divider -> divider.inlet().equals(span.to()))
        .mapToDouble(divider -> behind(span.leg(), divider, 0))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private double findBesides(LegJob leg, End from) {
    if (leg.behind().isEmpty()) {
      return all() - limb(leg, from);
    }
    LegJob before = places.leg(leg.behind().get());
    List<LegJob> legs = places.behind(before);
    int place = legs.indexOf(leg);
    double least = Double.POSITIVE_INFINITY;
    for (Divider divider : places.dividers(before)) {
      if (divider.outlets().get(place).equals(from)) {
        double others = ofDivider.applyAsDouble(divider) + ofPressure(divider, legs, 0);
        for (int i = 0; i < legs.size(); i++) {
          others += i == place ? 0 : limb(legs.get(i), divider.outlets().get(i));
        }
        least = Math.min(least, others + besides(before, divider));
      }
    }
    return least;
  }

  /** The likeliest to be cheap of what may divide the water behind a leg that begins at an end. */
  List<Divider> likeliest(LegJob leg, End from, int most) {
    return places.dividers(leg).stream()
        .sorted(
            Comparator.comparingDouble(
                divider ->
                    ofLine.applyAsDouble(new Span(leg, from, divider.inlet()))
                        + behind(leg, divider, 0)))
        .limit(most)
        .toList();
  }
}
