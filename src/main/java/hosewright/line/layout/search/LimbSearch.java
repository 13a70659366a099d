package hosewright.line.layout.search;

import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Goods;
import hosewright.line.goods.SharedCosts;
import hosewright.line.search.LegWays.Way;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;

/**
 * Joins the lines of legs to whole layouts, from the ends of the water back to the source: limbs
 * are laid from each place, and forks made of the limbs that begin at one.
 */
final class LimbSearch {
  private final LayoutJob layout;
  private final LegPlaces places;
  private final Material material;
  private final Bound bound;
  private final Thinning thinning;
  private final Map<Place, List<Limb>> limbs = new HashMap<>();
  private final Map<Hung, List<Fork>> forks = new HashMap<>();
  private int looked;

  /**
   * What layouts are made of.
   *
   * @param least what each part costs at the least
   * @param costs compares goods of any part
   * @param worth what pressure is worth; the bound counts it as well
   * @param ample which pressures are ample where
   * @param mostDividers how many are tried at a place, the likeliest to be cheap
   * @param anyRelief whether more may be needed behind a pump than its relief valve lets stand
   */
  record Material(
      Lines lines,
      LeastCosts least,
      SharedCosts costs,
      Worth worth,
      Ample ample,
      int mostDividers,
      boolean anyRelief) {}

  LimbSearch(
      LayoutJob layout, LegPlaces places, Material material, Bound bound, Thinning thinning) {
    this.layout = layout;
    this.places = places;
    this.material = material;
    this.bound = bound;
    this.thinning = thinning;
  }

  /** A leg, and the end it begins at. */
  private record Place(String leg, End from) {}

  /** What hangs on a divider behind a leg. */
  private record Hung(String leg, Divider divider) {}

  /** Every whole layout, but those that were left out. */
  List<Fork> all() {
    List<LegJob> legs = layout.atSource();
    return joined(
        Optional.empty(),
        legs,
        next -> material.least.atSource(legs.subList(next, legs.size())),
        material.ample.atSource());
  }

  /** How many joinings were looked at. */
  int looked() {
    return looked;
  }

  private List<Limb> limbs(LegJob leg, End from) {
    Place place = new Place(leg.name(), from);
    List<Limb> known = limbs.get(place);
    if (known == null) {
      List<Limb> all = leg.last() ? last(leg, from) : trunks(leg, from);
      boolean whole = leg.behind().isEmpty() && layout.atSource().size() == 1;
      known =
          whole
              ? all
              : thinning.of(all, Limb::sum, namesOf(List.of(leg)), material.ample.atBeginning(leg));
      limbs.put(place, known);
    }
    return known;
  }

  private List<Limb> last(LegJob leg, End from) {
    Span span = new Span(leg, from, leg.job().to());
    Job job = span.job();
    double besides = material.least.besides(leg, from);
    List<Limb> all = new ArrayList<>();
    for (Way way : material.lines.of(span)) {
      LaidLeg laid = new LaidLeg(leg, job, way, Optional.empty(), List.of(), job.needPsi());
      double ofPressure = material.worth.of(List.of(leg), laid.needsPsi());
      if (bound.allows(way.leastCost() + ofPressure + besides, way.toSource())) {
        all.add(new Limb(laid, Sum.of(way, laid.needsPsi())));
      }
    }
    return all;
  }

  private List<Limb> trunks(LegJob leg, End from) {
    double besides = material.least.besides(leg, from);
    Map<End, List<Fork>> byInlet = new LinkedHashMap<>();
    for (Divider divider : material.least.likeliest(leg, from, material.mostDividers)) {
      Span span = new Span(leg, from, divider.inlet());
      double leastCost =
          besides
              + material.least.behind(leg, divider, 0)
              + material.lines.leastCost(span, material.worth);
      if (bound.allows(leastCost)) {
        byInlet
            .computeIfAbsent(divider.inlet(), end -> new ArrayList<>())
            .addAll(forks(leg, divider));
      }
    }
    List<Limb> all = new ArrayList<>();
    byInlet.forEach((inlet, found) -> trunks(new Span(leg, from, inlet), found, besides, all));
    return all;
  }

  private void trunks(Span span, List<Fork> found, double besides, List<Limb> all) {
    LegJob leg = span.leg();
    Job job = span.job();
    List<Way> lines = linesOf(span);
    for (Fork fork : thinned(found, places.behind(leg), material.ample.atEnd(leg))) {
      for (Way way : lines) {
        looked++;
        double needsPsi = way.levels().neededPsi(fork.sum().needsPsi());
        double leastCost =
            way.leastCost() + fork.sum().leastCost() + material.worth.of(List.of(leg), needsPsi);
        int toSource = way.toSource() + fork.sum().toSource();
        if (bound.allows(leastCost + besides, toSource)) {
          all.add(trunk(leg, job, way, fork));
        }
      }
    }
  }

  /** Where pressure is ample everywhere, lines of a trunk are told apart by their goods alone. */
  private List<Way> linesOf(Span span) {
    List<Way> lines = material.lines.of(span);
    return material.ample.everywhere()
        ? thinning.of(
            lines,
            way -> Sum.of(way, way.levels().lostPsi()),
            Set.of(span.leg().name()),
            material.ample.atBeginning(span.leg()))
        : lines;
  }

  private static Limb trunk(LegJob leg, Job job, Way way, Fork fork) {
    Sum behind = fork.sum();
    LaidLeg laid =
        new LaidLeg(
            leg,
            job.flowing(job.flowGpm(), behind.needsPsi()),
            way,
            fork.divider(),
            fork.legs(),
            behind.needsPsi());
    double risePsi = job.run().riseFt() * Physical.PSI_PER_FT;
    return new Limb(laid, Sum.of(way, laid.needsPsi()).before(behind, risePsi));
  }

  /** Every way to hang all legs behind a leg on a divider. */
  private List<Fork> forks(LegJob before, Divider divider) {
    Hung hung = new Hung(before.name(), divider);
    List<Fork> known = forks.get(hung);
    if (known == null) {
      known = hang(before, divider);
      forks.put(hung, known);
    }
    return known;
  }

  private List<Fork> hang(LegJob before, Divider divider) {
    double besides = material.least.besides(before, divider);
    return joined(
        Optional.of(divider),
        places.behind(before),
        next -> besides + material.least.behind(before, divider, next),
        material.ample.atEnd(before));
  }

  /**
   * Every way to lay legs from one place.
   *
   * @param besides what all costs at the least but the legs before one
   */
  private List<Fork> joined(
      Optional<Divider> divider,
      List<LegJob> legs,
      IntToDoubleFunction besides,
      Ample.Enough enough) {
    List<Fork> all = List.of(begun(divider, legs));
    for (int i = 0; i < legs.size(); i++) {
      int place = i;
      End end = divider.map(one -> one.outlets().get(place)).orElse(places.source());
      double lossPsi = divider.map(one -> one.lossPsi(place)).orElse(0.0);
      Predicate<Sum> allowed = allowing(legs, i, besides.applyAsDouble(i + 1));
      List<Limb> limbs = letThrough(divider, limbs(legs.get(i), end));
      all = longer(all, limbs, lossPsi, allowed);
      if (i < legs.size() - 1) {
        all = thinned(all, legs.subList(0, i + 1), enough);
      }
    }
    return all;
  }

  /** Those that a pump lets enough stand before, as they are seen from before it. */
  private List<Limb> letThrough(Optional<Divider> divider, List<Limb> limbs) {
    if (divider.flatMap(Divider::boost).isEmpty()) {
      return limbs;
    }
    return limbs.stream()
        .filter(limb -> material.anyRelief || divider.get().lets(limb.sum()))
        .map(limb -> new Limb(limb.leg(), divider.get().seen(limb.sum())))
        .toList();
  }

  private Fork begun(Optional<Divider> divider, List<LegJob> legs) {
    double temperatureF = layout.whole().service().temperatureOrUsualF();
    List<Integer> copies = legs.stream().map(LegJob::copies).toList();
    Goods goods =
        divider
            .flatMap(one -> one.item().map(item -> Goods.one(item, one.gasketsToBuy(copies))))
            .orElse(Goods.NOTHING);
    double bearsPsi =
        divider.map(one -> one.bearsPsi(temperatureF)).orElse(Double.POSITIVE_INFINITY);
    return new Fork(
        divider,
        List.of(),
        new Sum(
            goods,
            material.costs.least(goods),
            material.costs.toSource(goods),
            divider.map(Divider::leastPsi).orElse(Double.NEGATIVE_INFINITY),
            bearsPsi));
  }

  /**
   * Whether a fork of legs up to one of them may stand in a layout.
   *
   * @param besides what all else costs at the least
   */
  private Predicate<Sum> allowing(List<LegJob> legs, int last, double besides) {
    List<LegJob> hung = legs.subList(0, last + 1);
    return sum ->
        bound.allows(
            sum.leastCost() + material.worth.of(hung, sum.needsPsi()) + besides, sum.toSource());
  }

  private List<Fork> longer(
      List<Fork> forks, List<Limb> limbs, double lossPsi, Predicate<Sum> allowed) {
    List<Fork> longer = new ArrayList<>();
    for (Fork fork : forks) {
      for (Limb limb : limbs) {
        looked++;
        Sum both = fork.sum().beside(limb.sum(), lossPsi);
        if (allowed.test(both)) {
          longer.add(fork.with(limb, both));
        }
      }
    }
    return longer;
  }

  private List<Fork> thinned(List<Fork> forks, List<LegJob> legs, Ample.Enough enough) {
    return thinning.of(forks, Fork::sum, namesOf(legs), enough);
  }

  /** Some legs and all behind them, by name. */
  private Set<String> namesOf(List<LegJob> legs) {
    Set<String> names = new HashSet<>();
    for (LegJob leg : legs) {
      names.add(leg.name());
      names.addAll(namesOf(places.behind(leg)));
    }
    return names;
  }
}
