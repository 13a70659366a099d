package hosewright.line.layout;

import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.Item;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Ends;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.SourceKind;
import hosewright.line.bridge.BridgeGraph;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.SharedCosts;
import hosewright.line.goods.SharedCosts.Goods;
import hosewright.line.goods.Wanted;
import hosewright.line.search.LegWays;
import hosewright.line.search.Shop;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Finds the cheapest layout: every leg laid, divided where legs meet.
 *
 * <p>Exact, from the ends of the water back to the source. One way of building what lies behind a
 * place is left out only where another has the same end there, needs no more pressure, bears no
 * less, lacks no more parts, and is never dearer whatever the rest of the layout buys.
 */
public final class LayoutSearch {
  private static final double HAIR = 1e-9;

  /** Far below a cent, far above what adding up prices may lose. */
  private static final double ROUNDING = 1e-4;

  private static final double SHORTEST_SECTION_FT = 10;
  private static final int FEW_DIVIDERS = 3;
  private static final int MOST_COMPARED = 30;

  private final LayoutJob layout;
  private final Shop shop;
  private final Dividing dividing;
  private final Optional<Inlet> source;
  private final Map<Between, LegWays> ways = new HashMap<>();
  private final Map<Between, List<LegWays.Way>> found = new HashMap<>();
  private final Map<Place, List<Limb>> limbs = new HashMap<>();
  private Optional<SharedCosts> allCosts = Optional.empty();
  private Cut cut = Cut.TO_A_FEW;
  private int looked;

  /**
   * @param limited whether the source's pressure limits what is looked for; without, the layout
   *     that needs least is among what is found even where none can be fed
   */
  public LayoutSearch(LayoutJob layout, Shop shop, boolean limited) {
    this.layout = layout;
    this.shop = shop;
    this.dividing = new Dividing(shop.catalogue(), new Eligibility(layout.whole(), shop.prices()));
    this.source =
        limited ? layout.supply().map(supply -> at(supply, layout.flowGpm())) : Optional.empty();
  }

  private static Inlet at(Supply supply, double flowGpm) {
    return new Inlet(supply.pressurePsi(flowGpm), supply.closedPsi());
  }

  /** A leg between two ends. */
  private record Between(String leg, End from, End to) {}

  /** A leg, and the end it hangs on. */
  private record Place(String leg, End from) {}

  /**
   * A leg laid one way, with all behind it, added up.
   *
   * @param bearsPsi the highest pressure with nothing flowing that it stands where it begins
   */
  private record Limb(LaidLeg leg, Goods goods, int toSource, double needsPsi, double bearsPsi) {
    boolean asGoodAs(Limb other) {
      return toSource <= other.toSource
          && needsPsi <= other.needsPsi + HAIR
          && bearsPsi >= other.bearsPsi - HAIR;
    }
  }

  /** What hangs behind a place where water divides, its legs in order. */
  private record Fork(
      Optional<Divider> divider,
      List<LaidLeg> legs,
      Goods goods,
      int toSource,
      double needsPsi,
      double bearsPsi) {
    boolean asGoodAs(Fork other) {
      return toSource <= other.toSource
          && needsPsi <= other.needsPsi + HAIR
          && bearsPsi >= other.bearsPsi - HAIR;
    }
  }

  /**
   * A whole layout.
   *
   * @param legs those that begin at the source
   * @param needsPsi what the source must hold, psi
   * @param bearsPsi the highest that it stands at the source with nothing flowing, psi
   */
  public record Whole(
      List<LaidLeg> legs, Goods goods, int toSource, double needsPsi, double bearsPsi) {
    public Whole {
      legs = List.copyOf(legs);
    }
  }

  /**
   * What is left aside.
   *
   * @param width how many ways of each part are kept: the cheapest, and those that need least
   * @param fewDividers whether only the likeliest dividers are tried
   * @param mostCost what a layout already found costs, in the currency's major unit
   * @param mostToSource how many parts it lacks
   * @param leastOfAll what all legs and dividers cost at the least, by name of the leg
   */
  private record Cut(
      int width,
      boolean fewDividers,
      double mostCost,
      int mostToSource,
      Map<String, Least> leastOfAll) {
    static final Cut TO_A_FEW = toAFew(true);

    static Cut toAFew(boolean fewDividers) {
      return new Cut(6, fewDividers, Double.POSITIVE_INFINITY, Integer.MAX_VALUE, Map.of());
    }

    /** What one leg may cost at the most, all others costing the least. */
    double mostOf(String leg) {
      double others =
          ofAll() - Optional.ofNullable(leastOfAll.get(leg)).map(Least::line).orElse(0.0);
      return mostCost - others + ROUNDING;
    }

    double ofAll() {
      return leastOfAll.values().stream().mapToDouble(one -> one.line + one.divider).sum();
    }
  }

  /** What a leg costs at the least, and what divides the water behind it. */
  private record Least(double line, double divider) {}

  /** Some good layouts, found quickly; if any can be fed, one of them can. */
  public List<Whole> some() {
    List<Whole> some = all();
    if (some.isEmpty()) {
      cut = Cut.toAFew(false);
      limbs.clear();
      some = all();
    }
    return some;
  }

  /**
   * Every layout that may be better than one of {@link #some}.
   *
   * @param mostCost what that one costs, in the currency's major unit
   * @param mostToSource how many parts it lacks
   */
  public List<Whole> better(double mostCost, int mostToSource) {
    Map<String, Least> least = new HashMap<>();
    for (LegJob leg : layout.legs()) {
      least.put(leg.name(), leastOf(leg));
    }
    cut = new Cut(Integer.MAX_VALUE, false, mostCost, mostToSource, least);
    limbs.clear();
    found.clear();
    return all();
  }

  /** What a leg and what divides the water behind it cost at the least. */
  private Least leastOf(LegJob leg) {
    double line = Double.POSITIVE_INFINITY;
    for (End from : begins(leg)) {
      for (End to : ends(leg)) {
        line = Math.min(line, way(leg, from, to).leastCost());
      }
    }
    double divider =
        leg.last() ? 0 : dividers(leg).stream().mapToDouble(this::leastOf).min().orElse(0);
    return new Least(line, divider);
  }

  private double leastOf(Divider divider) {
    return anyCosts().least(new Goods(Wanted.one(divider.item()), List.of()));
  }

  private List<Divider> dividers(LegJob leg) {
    return dividing.among(layout.whole(), layout.behind(leg));
  }

  /** Every end that a leg may begin at. */
  private Set<End> begins(LegJob leg) {
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
  private Set<End> ends(LegJob leg) {
    Set<End> ends = new LinkedHashSet<>();
    if (leg.last()) {
      ends.add(leg.job().to());
    } else {
      dividers(leg).forEach(divider -> ends.add(divider.inlet()));
    }
    return ends;
  }

  private LegJob leg(String name) {
    return layout.legs().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  /**
   * What divides the water behind a leg, the likeliest to be cheap first; only a few where a few
   * are wanted.
   */
  private List<Divider> likeliest(LegJob leg, End from) {
    List<Divider> all = dividers(leg);
    if (!cut.fewDividers) {
      return all;
    }
    List<LegJob> behind = layout.behind(leg);
    return all.stream()
        .sorted(
            Comparator.comparingDouble(
                (Divider divider) -> {
                  double cost = leastOf(divider, leg, from);
                  for (int i = 0; i < behind.size(); i++) {
                    LegJob next = behind.get(i);
                    for (End to : ends(next)) {
                      cost += way(next, divider.outlets().get(i), to).leastCost();
                      break;
                    }
                  }
                  return cost;
                }))
        .limit(FEW_DIVIDERS)
        .toList();
  }

  private double leastOf(Divider divider, LegJob leg, End from) {
    return way(leg, from, divider.inlet()).leastCost() + leastOf(divider);
  }

  /**
   * Whether goods for some legs leave too little for the others.
   *
   * @param behind the leg behind which the legs are divided, if the goods hold what divides them
   */
  private boolean tooDear(Goods goods, int toSource, List<LaidLeg> legs, Optional<String> behind) {
    if (toSource > cut.mostToSource) {
      return true;
    }
    if (toSource < cut.mostToSource || cut.leastOfAll.isEmpty()) {
      return false;
    }
    double others = cut.ofAll() - behind.map(leg -> cut.leastOfAll.get(leg).divider).orElse(0.0);
    for (LaidLeg leg : legs) {
      others -=
          leg.all()
              .map(one -> cut.leastOfAll.get(one.asked().name()))
              .mapToDouble(one -> one.line + one.divider)
              .sum();
    }
    return anyCosts().least(goods) + others > cut.mostCost + ROUNDING;
  }

  private List<Whole> all() {
    Job whole = layout.whole();
    List<Fork> forks = forks(layout.atSource(), whole.from(), Optional.empty());
    return forks.stream()
        .filter(fork -> source.isEmpty() || fed(fork, source.get()))
        .map(fork -> new Whole(fork.legs, fork.goods, fork.toSource, fork.needsPsi, fork.bearsPsi))
        .sorted(Comparator.comparingInt(Whole::toSource).thenComparingDouble(Whole::needsPsi))
        .toList();
  }

  private static boolean fed(Fork fork, Inlet source) {
    return fork.needsPsi <= source.flowingPsi() + 1e-6
        && fork.bearsPsi >= source.closedPsi() - 1e-6;
  }

  /** Legs that no line at all can be laid for between any ends, by name. */
  public List<String> withoutLine() {
    return layout.legs().stream()
        .map(LegJob::name)
        .filter(name -> found.keySet().stream().anyMatch(at -> at.leg.equals(name)))
        .filter(
            name ->
                found.entrySet().stream()
                    .filter(at -> at.getKey().leg.equals(name))
                    .allMatch(at -> at.getValue().isEmpty()))
        .toList();
  }

  /** The first leg behind which the catalogue has nothing that divides the water so. */
  public Optional<LegJob> undivided() {
    return layout.legs().stream()
        .filter(leg -> !leg.last())
        .filter(leg -> dividing.among(layout.whole(), layout.behind(leg)).isEmpty())
        .findFirst();
  }

  /** Lines looked at. */
  public int looked() {
    return ways.values().stream().mapToInt(LegWays::looked).sum() + looked;
  }

  private List<Limb> limbs(LegJob leg, End from) {
    Place place = new Place(leg.name(), from);
    List<Limb> known = limbs.get(place);
    if (known == null) {
      known =
          few(
              leg.last() ? ends(leg, from) : trunks(leg, from),
              limb -> new Weight(limb.toSource, anyCosts().least(limb.goods), limb.needsPsi));
      limbs.put(place, known);
    }
    return known;
  }

  private List<Limb> ends(LegJob leg, End from) {
    Job job = leg.job();
    List<Limb> all = new ArrayList<>();
    for (LegWays.Way way : ways(leg, from, job.to())) {
      LaidLeg laid =
          new LaidLeg(
              leg, between(leg, from, job.to()), way, Optional.empty(), List.of(), job.needPsi());
      if (!tooDear(way.goods(), way.toSource(), List.of(laid), Optional.empty())) {
        all.add(limb(laid, way.goods(), way.toSource(), Double.POSITIVE_INFINITY));
      }
    }
    return all;
  }

  private List<Limb> trunks(LegJob leg, End from) {
    List<LegJob> behind = layout.behind(leg);
    Map<End, List<Fork>> byInlet = new LinkedHashMap<>();
    for (Divider divider : likeliest(leg, from)) {
      byInlet
          .computeIfAbsent(divider.inlet(), end -> new ArrayList<>())
          .addAll(forks(behind, from, Optional.of(divider)));
    }
    List<Limb> all = new ArrayList<>();
    byInlet.forEach(
        (inlet, forks) -> {
          if (forks.isEmpty()) {
            return;
          }
          List<LegWays.Way> lines = ways(leg, from, inlet);
          if (lines.isEmpty()) {
            return;
          }
          SharedCosts costs = costs(leg, from, inlet);
          List<Limb> of = new ArrayList<>();
          for (Fork fork : keptForks(forks, costs)) {
            for (LegWays.Way way : lines) {
              looked++;
              LaidLeg laid =
                  new LaidLeg(
                      leg,
                      between(leg, from, inlet).flowing(leg.job().flowGpm(), fork.needsPsi),
                      way,
                      fork.divider,
                      fork.legs,
                      fork.needsPsi);
              Goods goods = way.goods().and(fork.goods);
              int toSource = way.toSource() + fork.toSource;
              if (!tooDear(goods, toSource, List.of(laid), Optional.empty())) {
                of.add(limb(laid, goods, toSource, fork.bearsPsi));
              }
            }
          }
          all.addAll(leg.behind().isEmpty() ? of : keptLimbs(of, costs));
        });
    return all;
  }

  private static Limb limb(LaidLeg laid, Goods goods, int toSource, double endBearsPsi) {
    double risePsi = laid.job().run().riseFt() * Physical.PSI_PER_FT;
    return new Limb(
        laid,
        goods,
        toSource,
        laid.needsPsi(),
        Math.min(laid.way().levels().bearsPsi(), endBearsPsi + risePsi));
  }

  private List<Limb> keptLimbs(List<Limb> limbs, SharedCosts costs) {
    return kept(
        limbs,
        limb -> costs.least(limb.goods),
        (one, other) -> one.asGoodAs(other) && costs.mostOver(one.goods, other.goods) <= HAIR);
  }

  private List<Fork> keptForks(List<Fork> forks, SharedCosts costs) {
    return kept(
        forks,
        fork -> costs.least(fork.goods),
        (one, other) -> one.asGoodAs(other) && costs.mostOver(one.goods, other.goods) <= HAIR);
  }

  /**
   * Those that none of the cheapest is as good as. Comparing with every other would leave out a few
   * more, and take longer than it saves.
   */
  private <T> List<T> kept(List<T> all, ToDoubleFunction<T> least, BiPredicate<T, T> asGoodAs) {
    if (cut.width < Integer.MAX_VALUE) {
      return all;
    }
    List<T> kept = new ArrayList<>();
    for (T one : all.stream().sorted(Comparator.comparingDouble(least)).toList()) {
      if (kept.stream().limit(MOST_COMPARED).noneMatch(other -> asGoodAs.test(other, one))) {
        kept.add(one);
      }
    }
    return kept;
  }

  /** Every way to lay legs side by side from one place. */
  private List<Fork> forks(List<LegJob> legs, End from, Optional<Divider> divider) {
    Goods own =
        divider.map(one -> new Goods(Wanted.one(one.item()), List.of())).orElse(Goods.NOTHING);
    List<Fork> forks = new ArrayList<>();
    forks.add(new Fork(divider, List.of(), own, 0, Double.NEGATIVE_INFINITY, bearsPsi(divider)));
    double wholeGpm = legs.stream().mapToDouble(LegJob::flowGpm).sum();
    for (int i = 0; i < legs.size(); i++) {
      LegJob leg = legs.get(i);
      int place = i;
      double lossPsi =
          divider.map(one -> one.lossPsi(place, wholeGpm, leg.job().flowGpm())).orElse(0.0);
      List<Limb> limbs = limbs(leg, divider.map(one -> one.outlets().get(place)).orElse(from));
      List<Fork> longer = new ArrayList<>();
      for (Fork fork : forks) {
        for (Limb limb : limbs) {
          looked++;
          Fork next = longer(fork, limb, lossPsi);
          if (!tooDear(
              next.goods, next.toSource, next.legs, divider.flatMap(one -> leg.behind()))) {
            longer.add(next);
          }
        }
      }
      forks =
          few(
              i == 0 || longer.size() <= 1 ? longer : keptForks(longer, anyCosts()),
              fork -> new Weight(fork.toSource, anyCosts().least(fork.goods), fork.needsPsi));
    }
    return forks;
  }

  private record Weight(int toSource, double cost, double needsPsi) {
    static final Comparator<Weight> CHEAPEST =
        Comparator.comparingInt(Weight::toSource).thenComparingDouble(Weight::cost);
    static final Comparator<Weight> LEAST_NEED =
        Comparator.comparingDouble(Weight::needsPsi).thenComparing(CHEAPEST);
  }

  /** The cheapest and those that need least, where only a few are wanted. */
  private <T> List<T> few(List<T> all, Function<T, Weight> weight) {
    if (all.size() <= cut.width) {
      return all;
    }
    Set<T> few = Collections.newSetFromMap(new IdentityHashMap<>());
    all.stream()
        .sorted(Comparator.comparing(weight, Weight.CHEAPEST))
        .limit(cut.width)
        .forEach(few::add);
    all.stream()
        .sorted(Comparator.comparing(weight, Weight.LEAST_NEED))
        .limit(cut.width)
        .forEach(few::add);
    return all.stream().filter(few::contains).toList();
  }

  private static Fork longer(Fork fork, Limb limb, double lossPsi) {
    List<LaidLeg> legs = new ArrayList<>(fork.legs);
    legs.add(limb.leg);
    return new Fork(
        fork.divider,
        legs,
        fork.goods.and(limb.goods),
        fork.toSource + limb.toSource,
        Math.max(fork.needsPsi, limb.needsPsi + lossPsi),
        Math.min(fork.bearsPsi, limb.bearsPsi));
  }

  private double bearsPsi(Optional<Divider> divider) {
    double temperatureF = layout.whole().service().temperatureOrUsualF();
    return divider
        .map(one -> one.item().rating().workingPsiAt(temperatureF).orElse(Double.POSITIVE_INFINITY))
        .orElse(Double.POSITIVE_INFINITY);
  }

  private SharedCosts anyCosts() {
    return allCosts.orElseThrow();
  }

  private SharedCosts costs(LegJob leg, End from, End to) {
    return way(leg, from, to).costs();
  }

  private List<LegWays.Way> ways(LegJob leg, End from, End to) {
    return found.computeIfAbsent(
        new Between(leg.name(), from, to),
        between -> way(leg, from, to).all(cut.mostOf(leg.name())));
  }

  private LegWays way(LegJob leg, End from, End to) {
    Between between = new Between(leg.name(), from, to);
    LegWays known = ways.get(between);
    if (known == null) {
      LegWays.Place place = new LegWays.Place(leg.copies(), leg.behind().isPresent(), !leg.last());
      known =
          new LegWays(
              fed(leg, from, to),
              place,
              shop,
              item -> restMost(item, leg.name()),
              item -> restMost(item, ""));
      if (allCosts.isEmpty()) {
        allCosts = Optional.of(known.costs(item -> restMost(item, "")));
      }
      ways.put(between, known);
    }
    return known;
  }

  /** With the most that a leg can be fed with where it begins, if that is known. */
  private Job fed(LegJob leg, End from, End to) {
    double upPsi = elevationFt(leg) * Physical.PSI_PER_FT;
    return between(leg, from, to)
        .withSupply(
            source.map(most -> new Inlet(most.flowingPsi() - upPsi, most.closedPsi() - upPsi)));
  }

  private static Job between(LegJob leg, End from, End to) {
    Job job = leg.job();
    return job.between(
            new Ends(
                leg.behind().isEmpty() ? job.source() : SourceKind.OUTLET,
                from,
                leg.last() ? job.appliance() : ApplianceKind.APPLIANCE,
                to))
        .withSupply(Optional.empty());
  }

  /** How much higher than the source a leg begins, ft. */
  private double elevationFt(LegJob leg) {
    return leg.behind()
        .map(
            name -> {
              LegJob before = leg(name);
              return elevationFt(before) + before.job().run().riseFt();
            })
        .orElse(0.0);
  }

  /** More than all legs but one can use of an item: a bound for what the rest may buy. */
  private int restMost(Item item, String except) {
    double neededFt = 0;
    int lines = 0;
    for (LegJob leg : layout.legs()) {
      if (!leg.name().equals(except) && mayUse(leg, item)) {
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
