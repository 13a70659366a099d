package hosewright.line.layout.search;

import hosewright.catalogue.Catalogue;
import hosewright.hydraulics.Boost;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.law.Physical;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Eligibility;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where each leg of a layout may begin and end, as far as the catalogue divides water there. */
final class LegPlaces {
  private final LayoutJob layout;
  private final Dividing dividing;
  private final Map<String, List<Divider>> dividers = new HashMap<>();
  private final Map<String, List<LegJob>> behind = new HashMap<>();
  private List<Span> spans = List.of();

  LegPlaces(LayoutJob layout, Catalogue catalogue, Eligibility eligibility) {
    this.layout = layout;
    this.dividing = new Dividing(catalogue, eligibility);
  }

  End source() {
    return layout.whole().from();
  }

  List<LegJob> atSource() {
    return layout.atSource();
  }

  List<LegJob> behind(LegJob leg) {
    return behind.computeIfAbsent(leg.name(), name -> layout.behind(leg));
  }

  /** What may divide the water where a leg ends; none where it ends at an appliance. */
  List<Divider> dividers(LegJob leg) {
    return leg.last()
        ? List.of()
        : dividers.computeIfAbsent(
            leg.name(),
            name ->
                layout
                    .pumpBehind(leg)
                    .map(pump -> Dividing.among(pump, layout.behind(leg)))
                    .or(
                        () ->
                            layout
                                .boosterBehind(leg)
                                .map(asked -> dividing.among(asked, layout.behind(leg))))
                    .orElseGet(() -> behindIt(leg)));
  }

  private List<Divider> behindIt(LegJob leg) {
    return leg.joined().isEmpty()
        ? dividing.among(layout.whole(), layout.behind(leg))
        : dividing.joining(layout.whole(), leg);
  }

  /** Every end that a leg may begin at. */
  Set<End> begins(LegJob leg) {
    if (leg.behind().isEmpty()) {
      return Set.of(layout.whole().from());
    }
    LegJob before = leg(leg.behind().get());
    int place = layout.behind(before).indexOf(leg);
    Set<End> begins = new LinkedHashSet<>();
    dividers(before).forEach(divider -> begins.add(divider.outlets().get(place)));
    return begins;
  }

  /** Every end that a leg may end at. */
  Set<End> ends(LegJob leg) {
    Set<End> ends = new LinkedHashSet<>();
    if (leg.last()) {
      ends.add(leg.job().to());
    }
    dividers(leg).forEach(divider -> ends.add(divider.inlet()));
    return ends;
  }

  /** The first leg behind which the catalogue has nothing that divides the water so. */
  Optional<LegJob> undivided() {
    return layout.legs().stream().filter(leg -> !leg.last() && dividers(leg).isEmpty()).findFirst();
  }

  /** How much higher than the source a leg begins, ft. */
  double elevationFt(LegJob leg) {
    return leg.behind()
        .map(this::leg)
        .map(before -> elevationFt(before) + before.job().run().riseFt())
        .orElse(0.0);
  }

  /**
   * The most that a leg can be fed with where it begins, as if hose took nothing.
   *
   * @param source what the source gives
   */
  Inlet mostFed(LegJob leg, Inlet source) {
    if (leg.behind().isEmpty()) {
      return source;
    }
    LegJob before = leg(leg.behind().get());
    Inlet begins = mostFed(before, source);
    double upPsi = before.job().run().riseFt() * Physical.PSI_PER_FT;
    Inlet ends = new Inlet(begins.flowingPsi() - upPsi, begins.closedPsi() - upPsi);
    double flowingPsi = Double.NEGATIVE_INFINITY;
    double closedPsi = Double.NEGATIVE_INFINITY;
    for (Optional<Boost> boost : boosts(before)) {
      flowingPsi =
          Math.max(
              flowingPsi,
              boost.map(one -> one.outletPsi(ends.flowingPsi())).orElse(ends.flowingPsi()));
      closedPsi =
          Math.max(
              closedPsi,
              boost.map(one -> one.closedOutletPsi(ends.closedPsi())).orElse(ends.closedPsi()));
    }
    return new Inlet(flowingPsi, closedPsi);
  }

  /** What may be done to pressure where a leg ends; nothing by what only divides. */
  private Set<Optional<Boost>> boosts(LegJob leg) {
    Set<Optional<Boost>> boosts = new LinkedHashSet<>();
    dividers(leg).forEach(divider -> boosts.add(divider.boost()));
    return boosts.isEmpty() ? Set.of(Optional.empty()) : boosts;
  }

  /** Whether a leg ends at a pump of the buyer's. */
  boolean endsAtPump(LegJob leg) {
    return layout.pumpBehind(leg).isPresent();
  }

  /** Whether a leg begins at what is chosen with it: what divides the water, or a strainer. */
  boolean beginsAtNode(LegJob leg) {
    return leg.behind().isPresent()
        ? layout.pumpBefore(leg).isEmpty()
        : layout.drafting().isPresent();
  }

  LegJob leg(String name) {
    return layout.legs().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  /** Every leg between every two ends that it may be laid between. */
  List<Span> spans() {
    if (spans.isEmpty()) {
      spans = findSpans();
    }
    return spans;
  }

  private List<Span> findSpans() {
    List<Span> spans = new ArrayList<>();
    for (LegJob leg : layout.legs()) {
      for (End from : begins(leg)) {
        for (End to : ends(leg)) {
          spans.add(new Span(leg, from, to));
        }
      }
    }
    return spans;
  }
}
