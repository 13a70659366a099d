package hosewright.line.layout.search;

import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.law.Physical;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.search.LegWays.Way;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which pressure is ample at each place of a layout: what needs no more there is fed, and what
 * bears as much holds, however all the rest is laid with given lines. Where it is ample, one line
 * need not be told from another by what it takes.
 */
final class Ample {
  private static final double HAIR_PSI = 1e-6;

  private final LayoutJob layout;
  private final LegPlaces places;
  private final Map<String, Worst> worst = new HashMap<>();
  private final Optional<Inlet> source;
  private final double mostNeedPsi;
  private final boolean everywhere;

  /**
   * @param source what the source gives; empty where it holds just what is needed
   */
  Ample(LayoutJob layout, LegPlaces places, Lines lines, Optional<Inlet> source) {
    this.layout = layout;
    this.places = places;
    this.source = source;
    lines
        .bySpan()
        .forEach(
            (span, ways) ->
                ways.forEach(way -> worst.merge(span.leg().name(), Worst.of(way), Worst::and)));
    this.mostNeedPsi =
        layout.atSource().stream().mapToDouble(this::mostNeedPsi).max().orElseThrow();
    this.everywhere = findEverywhere();
  }

  /**
   * The worst that any line of a leg does, psi.
   *
   * @param lostPsi the most, from its beginning to its end
   * @param bearsPsi the least
   */
  private record Worst(double lostPsi, double peakPsi, double bearsPsi) {
    private static final Worst NONE = new Worst(0, 0, Double.POSITIVE_INFINITY);

    static Worst of(Way way) {
      return new Worst(way.levels().lostPsi(), way.levels().peakPsi(), way.levels().bearsPsi());
    }

    Worst and(Worst other) {
      return new Worst(
          Math.max(lostPsi, other.lostPsi),
          Math.max(peakPsi, other.peakPsi),
          Math.min(bearsPsi, other.bearsPsi));
    }
  }

  /**
   * What is ample at a place.
   *
   * @param needPsi what needs no more is always fed
   * @param bearsPsi what bears as much always holds
   */
  record Enough(double needPsi, double bearsPsi) {
    private static final Enough ALWAYS =
        new Enough(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
  }

  /** Whether any lines together are fed and hold. */
  boolean everywhere() {
    return everywhere;
  }

  /** Where a leg begins, behind what divides the water there. */
  Enough atBeginning(LegJob leg) {
    return everywhere ? Enough.ALWAYS : new Enough(givenPsi(leg), closedPsi(leg));
  }

  /** Where a leg ends, before what divides the water there. */
  Enough atEnd(LegJob leg) {
    return everywhere
        ? Enough.ALWAYS
        : new Enough(givenPsi(leg) - worst(leg).lostPsi, closedAtEndPsi(leg));
  }

  /** Side by side at the source. */
  Enough atSource() {
    return atBeginning(layout.atSource().get(0));
  }

  private Worst worst(LegJob leg) {
    return worst.getOrDefault(leg.name(), Worst.NONE);
  }

  /** What a leg is fed with where it begins at the least; nothing is sure without a source. */
  private double givenPsi(LegJob leg) {
    if (leg.behind().isEmpty()) {
      return source.map(Inlet::flowingPsi).orElse(Double.NEGATIVE_INFINITY);
    }
    LegJob before = places.leg(leg.behind().get());
    double givenPsi = givenPsi(before) - worst(before).lostPsi;
    int place = places.behind(before).indexOf(leg);
    return places.dividers(before).stream()
        .mapToDouble(divider -> divider.feeds(place, new Inlet(givenPsi, givenPsi)).flowingPsi())
        .min()
        .orElse(givenPsi);
  }

  /** The most that stands where a leg begins with nothing flowing. */
  private double closedPsi(LegJob leg) {
    double closedPsi = source.map(Inlet::closedPsi).orElse(mostNeedPsi);
    return places.mostFed(leg, new Inlet(closedPsi, closedPsi)).closedPsi();
  }

  private double closedAtEndPsi(LegJob leg) {
    return closedPsi(leg) - leg.job().run().riseFt() * Physical.PSI_PER_FT;
  }

  private double mostNeedPsi(LegJob leg) {
    double behindPsi =
        leg.last()
            ? leg.job().needPsi()
            : places.behind(leg).stream()
                .mapToDouble(next -> mostNeedPsi(next) + dividerPsi(leg, next))
                .reduce(leastPsi(leg), Math::max);
    return Math.max(worst(leg).peakPsi, worst(leg).lostPsi + behindPsi);
  }

  /** What must stand where a leg ends whatever is behind it. */
  private double leastPsi(LegJob leg) {
    return places.dividers(leg).stream()
        .mapToDouble(Divider::leastPsi)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** The most that anything which divides the water behind a leg takes of it. */
  private double dividerPsi(LegJob before, LegJob leg) {
    int place = places.behind(before).indexOf(leg);
    return places.dividers(before).stream()
        .mapToDouble(divider -> divider.lossPsi(place))
        .max()
        .orElse(0);
  }

  private boolean findEverywhere() {
    boolean fed = source.map(given -> mostNeedPsi <= given.flowingPsi() + HAIR_PSI).orElse(true);
    return fed
        && layout.legs().stream()
            .allMatch(
                leg ->
                    worst(leg).bearsPsi >= closedPsi(leg) - HAIR_PSI
                        && dividersHold(leg)
                        && reliefsLet(leg));
  }

  private boolean dividersHold(LegJob leg) {
    double closedPsi = closedAtEndPsi(leg);
    double temperatureF = layout.whole().service().temperatureOrUsualF();
    return places.dividers(leg).stream()
        .allMatch(divider -> divider.bearsPsi(temperatureF) >= closedPsi - HAIR_PSI);
  }

  /** Whether no relief valve opens before the most is there that is needed behind it. */
  private boolean reliefsLet(LegJob leg) {
    return places.dividers(leg).stream()
        .flatMap(divider -> divider.boost().stream())
        .allMatch(
            boost ->
                places.behind(leg).stream().noneMatch(next -> boost.relieves(mostNeedPsi(next))));
  }
}
