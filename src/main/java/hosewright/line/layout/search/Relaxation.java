package hosewright.line.layout.search;

import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.search.LegWays.Way;
import hosewright.thread.End;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Finds what a psi is worth on each leg, so that what parts cost at the least comes near to what a
 * layout costs that is fed: by the subgradient method over a few lines of each leg (Held, Wolfe and
 * Crowder, Mathematical Programming 6 (1974) 62-88).
 */
final class Relaxation {
  private static final int STEPS = 80;
  private static final int PATIENCE = 6;

  private final LayoutJob layout;
  private final LegPlaces places;
  private final Lines lines;
  private final ToDoubleFunction<Divider> ofDivider;
  private final double sourcePsi;

  /**
   * @param lines some of each leg
   * @param sourcePsi what the source gives
   */
  Relaxation(
      LayoutJob layout,
      LegPlaces places,
      Lines lines,
      ToDoubleFunction<Divider> ofDivider,
      double sourcePsi) {
    this.layout = layout;
    this.places = places;
    this.lines = lines;
    this.ofDivider = ofDivider;
    this.sourcePsi = sourcePsi;
  }

  /**
   * The cheapest choice at some worth of pressure.
   *
   * @param cost with its pressure at its worth
   * @param needsPsi of each appliance behind a place, what must stand there, by its leg
   */
  private record Pick(double cost, Map<String, Double> needsPsi) {}

  /** What is behind a place, and a place. */
  private record Place(String leg, End from) {}

  /**
   * @param fedCost what a layout costs that is fed
   */
  Worth worth(double fedCost) {
    Map<String, Double> ofLast = new HashMap<>();
    Worth best = Worth.NOTHING;
    double most = Double.NEGATIVE_INFINITY;
    double stride = 1;
    int since = 0;
    for (int step = 0; step < STEPS; step++) {
      Worth worth = Worth.of(layout, ofLast, sourcePsi);
      Optional<Pick> pick = atSource(worth);
      if (pick.isEmpty()) {
        return Worth.NOTHING;
      }
      double cost = pick.get().cost - worth.ofSource();
      if (cost > most) {
        most = cost;
        best = worth;
        since = 0;
      } else if (++since >= PATIENCE) {
        stride /= 2;
        since = 0;
      }
      double length = stride * (fedCost - cost) / missed(pick.get(), ofLast);
      if (!(length > 0) || Double.isInfinite(length)) {
        break;
      }
      pick.get()
          .needsPsi
          .forEach(
              (leg, needPsi) ->
                  ofLast.put(
                      leg,
                      Math.max(0, ofLast.getOrDefault(leg, 0.0) + length * (needPsi - sourcePsi))));
    }
    return best;
  }

  /** Squares of what ways need too much, or too little where that is worth something. */
  private double missed(Pick pick, Map<String, Double> ofLast) {
    return pick.needsPsi.entrySet().stream()
        .filter(need -> need.getValue() > sourcePsi || ofLast.getOrDefault(need.getKey(), 0.0) > 0)
        .mapToDouble(need -> Math.pow(need.getValue() - sourcePsi, 2))
        .sum();
  }

  private Optional<Pick> atSource(Worth worth) {
    Map<Place, Optional<Pick>> known = new HashMap<>();
    Pick all = new Pick(0, Map.of());
    for (LegJob leg : layout.atSource()) {
      Optional<Pick> limb = limb(leg, places.source(), worth, known);
      if (limb.isEmpty()) {
        return Optional.empty();
      }
      all = beside(all, limb.get(), 0, 0);
    }
    return Optional.of(all);
  }

  private Optional<Pick> limb(LegJob leg, End from, Worth worth, Map<Place, Optional<Pick>> known) {
    Place place = new Place(leg.name(), from);
    Optional<Pick> pick = known.get(place);
    if (pick == null) {
      pick =
          leg.last()
              ? line(new Span(leg, from, leg.job().to()), worth, last(leg, worth))
              : places.dividers(leg).stream()
                  .flatMap(divider -> trunk(leg, from, divider, worth, known).stream())
                  .min(Comparator.comparingDouble(Pick::cost));
      known.put(place, pick);
    }
    return pick;
  }

  private static Pick last(LegJob leg, Worth worth) {
    double needPsi = leg.job().needPsi();
    return new Pick(worth.ofPsi(leg) * needPsi, Map.of(leg.name(), needPsi));
  }

  private Optional<Pick> trunk(
      LegJob leg, End from, Divider divider, Worth worth, Map<Place, Optional<Pick>> known) {
    List<LegJob> legs = places.behind(leg);
    Pick behind = new Pick(ofDivider.applyAsDouble(divider), Map.of());
    for (int i = 0; i < legs.size(); i++) {
      LegJob next = legs.get(i);
      Optional<Pick> limb = limb(next, divider.outlets().get(i), worth, known);
      if (limb.isEmpty()) {
        return Optional.empty();
      }
      behind = beside(behind, limb.get(), divider.lossPsi(i), worth.ofPsi(next));
    }
    return line(new Span(leg, from, divider.inlet()), worth, behind);
  }

  private static Pick beside(Pick one, Pick other, double lossPsi, double eachPsi) {
    Map<String, Double> needs = new HashMap<>(one.needsPsi);
    other.needsPsi.forEach((leg, psi) -> needs.put(leg, psi + lossPsi));
    return new Pick(one.cost + other.cost + eachPsi * lossPsi, needs);
  }

  /** The cheapest line before what lies behind it. */
  private Optional<Pick> line(Span span, Worth worth, Pick behind) {
    double eachPsi = worth.ofPsi(span.leg());
    Optional<Way> cheapest =
        lines.of(span).stream()
            .min(
                Comparator.comparingDouble(
                    way -> way.leastCost() + eachPsi * way.levels().lostPsi()));
    return cheapest.map(
        way -> {
          double lostPsi = way.levels().lostPsi();
          Map<String, Double> needs = new HashMap<>();
          behind.needsPsi.forEach((leg, psi) -> needs.put(leg, psi + lostPsi));
          return new Pick(behind.cost + way.leastCost() + eachPsi * lostPsi, needs);
        });
  }
}
