package hosewright.line.layout.search;

import hosewright.catalogue.Catalogue;
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
            leg.name(), name -> dividing.among(layout.whole(), layout.behind(leg)));
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
