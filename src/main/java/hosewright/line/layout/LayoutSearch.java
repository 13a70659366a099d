package hosewright.line.layout;

import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Availability;
import hosewright.line.goods.BuyingCosts;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.Goods;
import hosewright.line.goods.SharedCosts;
import hosewright.line.layout.Cut.Least;
import hosewright.line.search.LegWays;
import hosewright.line.search.Shop;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds the cheapest layout: every leg laid, divided where legs meet.
 *
 * <p>Exact, from the ends of the water back to the source. One way of building what lies behind a
 * place is left out only where another has the same end there, needs no more pressure, bears no
 * less, lacks no more parts, and is never dearer whatever the rest of the layout buys.
 */
public final class LayoutSearch {
  private static final double HAIR_PSI = 1e-6;
  private static final int FEW_DIVIDERS = 3;
  private static final int MOST_COMPARED = 30;

  private final LayoutJob layout;
  private final Shop shop;
  private final LegPlaces places;
  private final MostBought most;
  private final BuyingCosts buying;
  private final Optional<Inlet> source;
  private final Map<Between, LegWays> ways = new HashMap<>();
  private final Map<Between, List<LegWays.Way>> found = new HashMap<>();
  private final Map<Place, List<Limb>> limbs = new HashMap<>();
  private Optional<SharedCosts> beyondAll = Optional.empty();
  private Cut cut = Cut.toAFew(true);
  private int looked;

  /**
   * @param limited whether the source's pressure limits what is looked for; without, the layout
   *     that needs least is among what is found even where none can be fed
   */
  public LayoutSearch(LayoutJob layout, Shop shop, boolean limited) {
    this.layout = layout;
    this.shop = shop;
    this.places =
        new LegPlaces(layout, shop.catalogue(), new Eligibility(layout.whole(), shop.prices()));
    this.most = new MostBought(layout);
    this.buying = new BuyingCosts(shop.prices(), Availability.of(layout.whole()), most.byAll());
    this.source = limited ? layout.fed() : Optional.empty();
  }

  /** A leg between two ends. */
  private record Between(String leg, End from, End to) {}

  /** A leg, and the end it hangs on. */
  private record Place(String leg, End from) {}

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
    layout.atSource().forEach(leg -> putLeast(leg, least));
    cut = Cut.below(mostCost, mostToSource, least);
    limbs.clear();
    found.clear();
    return all();
  }

  /** Notes what a leg costs at the least, and every leg behind it; gives both together. */
  private double putLeast(LegJob leg, Map<String, Least> all) {
    double behind = 0;
    for (LegJob next : layout.behind(leg)) {
      behind += putLeast(next, all);
    }
    double line = Double.POSITIVE_INFINITY;
    for (End from : places.begins(leg)) {
      for (End to : places.ends(leg)) {
        line = Math.min(line, way(leg, from, to).leastCost());
      }
    }
    double divider = places.dividers(leg).stream().mapToDouble(this::leastOf).min().orElse(0);
    Least least = new Least(line, divider, behind);
    all.put(leg.name(), least);
    return least.limb();
  }

  private double leastOf(Divider divider) {
    return beyondAll().least(Goods.one(divider.item()));
  }

  private List<Whole> all() {
    return forks(layout.atSource(), layout.whole().from(), Optional.empty()).stream()
        .filter(fork -> source.isEmpty() || feeds(source.get(), fork.sum()))
        .map(LayoutSearch::whole)
        .sorted(Comparator.comparingInt(Whole::toSource).thenComparingDouble(Whole::needsPsi))
        .toList();
  }

  private static Whole whole(Fork fork) {
    Sum sum = fork.sum();
    return new Whole(fork.legs(), sum.goods(), sum.toSource(), sum.needsPsi(), sum.bearsPsi());
  }

  private static boolean feeds(Inlet source, Sum sum) {
    return sum.needsPsi() <= source.flowingPsi() + HAIR_PSI
        && sum.bearsPsi() >= source.closedPsi() - HAIR_PSI;
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
    return places.undivided();
  }

  /** Lines and joinings looked at. */
  public int looked() {
    return ways.values().stream().mapToInt(LegWays::looked).sum() + looked;
  }

  private List<Limb> limbs(LegJob leg, End from) {
    Place place = new Place(leg.name(), from);
    List<Limb> known = limbs.get(place);
    if (known == null) {
      known = few(leg.last() ? ends(leg, from) : trunks(leg, from), Limb::sum);
      limbs.put(place, known);
    }
    return known;
  }

  private List<Limb> ends(LegJob leg, End from) {
    Job job = LegPlaces.between(leg, from, leg.job().to());
    List<Limb> all = new ArrayList<>();
    for (LegWays.Way way : ways(leg, from, job.to())) {
      if (!cut.tooDear(way.leastCost(), way.toSource(), cut.ofLimb(leg))) {
        LaidLeg laid = new LaidLeg(leg, job, way, Optional.empty(), List.of(), job.needPsi());
        all.add(
            new Limb(
                laid,
                new Sum(
                    way.goods(),
                    way.leastCost(),
                    way.toSource(),
                    laid.needsPsi(),
                    way.levels().bearsPsi())));
      }
    }
    return all;
  }

  private List<Limb> trunks(LegJob leg, End from) {
    Map<End, List<Fork>> byInlet = new LinkedHashMap<>();
    for (Divider divider : likeliest(leg, from)) {
      byInlet
          .computeIfAbsent(divider.inlet(), end -> new ArrayList<>())
          .addAll(forks(layout.behind(leg), from, Optional.of(divider)));
    }
    List<Limb> all = new ArrayList<>();
    byInlet.forEach(
        (inlet, forks) -> {
          if (!forks.isEmpty()) {
            all.addAll(trunks(leg, from, inlet, forks));
          }
        });
    return all;
  }

  private List<Limb> trunks(LegJob leg, End from, End inlet, List<Fork> forks) {
    List<LegWays.Way> lines = ways(leg, from, inlet);
    SharedCosts costs = way(leg, from, inlet).costs();
    Job job = LegPlaces.between(leg, from, inlet);
    List<Limb> all = new ArrayList<>();
    for (Fork fork : kept(forks, Fork::sum, costs)) {
      for (LegWays.Way way : lines) {
        looked++;
        double leastCost = way.leastCost() + fork.sum().leastCost();
        int toSource = way.toSource() + fork.sum().toSource();
        if (!cut.tooDear(leastCost, toSource, cut.ofLimb(leg))) {
          all.add(trunk(leg, job, way, fork));
        }
      }
    }
    return leg.behind().isEmpty() ? all : kept(all, Limb::sum, costs);
  }

  private static Limb trunk(LegJob leg, Job job, LegWays.Way way, Fork fork) {
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
    return new Limb(
        laid,
        new Sum(
            way.goods().and(behind.goods()),
            way.leastCost() + behind.leastCost(),
            way.toSource() + behind.toSource(),
            laid.needsPsi(),
            Math.min(way.levels().bearsPsi(), behind.bearsPsi() + risePsi)));
  }

  /** What divides the water behind a leg; where a few are wanted, those likeliest to be cheap. */
  private List<Divider> likeliest(LegJob leg, End from) {
    List<Divider> all = places.dividers(leg);
    return cut.fewDividers()
        ? all.stream()
            .sorted(Comparator.comparingDouble(divider -> likelyCost(divider, leg, from)))
            .limit(FEW_DIVIDERS)
            .toList()
        : all;
  }

  private double likelyCost(Divider divider, LegJob leg, End from) {
    double cost = way(leg, from, divider.inlet()).leastCost() + leastOf(divider);
    List<LegJob> behind = layout.behind(leg);
    for (int i = 0; i < behind.size(); i++) {
      Optional<End> to = places.ends(behind.get(i)).stream().findFirst();
      if (to.isPresent()) {
        cost += way(behind.get(i), divider.outlets().get(i), to.get()).leastCost();
      }
    }
    return cost;
  }

  /** Every way to lay legs side by side from one place. */
  private List<Fork> forks(List<LegJob> legs, End from, Optional<Divider> divider) {
    List<Fork> forks = List.of(begun(divider));
    double wholeGpm = legs.stream().mapToDouble(LegJob::flowGpm).sum();
    double leastOfPart =
        divider.isPresent() ? cut.ofDivider(legs.get(0).behind().orElseThrow()) : 0;
    for (int i = 0; i < legs.size(); i++) {
      LegJob leg = legs.get(i);
      int place = i;
      double lossPsi =
          divider.map(one -> one.lossPsi(place, wholeGpm, leg.job().flowGpm())).orElse(0.0);
      List<Limb> limbs = limbs(leg, divider.map(one -> one.outlets().get(place)).orElse(from));
      leastOfPart += cut.ofLimb(leg);
      List<Fork> longer = longer(forks, limbs, lossPsi, leastOfPart);
      boolean compared = i > 0 && longer.size() > 1;
      forks = few(compared ? kept(longer, Fork::sum, beyondAll()) : longer, Fork::sum);
    }
    return forks;
  }

  private Fork begun(Optional<Divider> divider) {
    double temperatureF = layout.whole().service().temperatureOrUsualF();
    Goods goods = divider.map(one -> Goods.one(one.item())).orElse(Goods.NOTHING);
    double bearsPsi =
        divider
            .flatMap(
                one -> one.item().rating().workingPsiAt(temperatureF).stream().boxed().findFirst())
            .orElse(Double.POSITIVE_INFINITY);
    double leastCost = divider.map(this::leastOf).orElse(0.0);
    return new Fork(
        divider, List.of(), new Sum(goods, leastCost, 0, Double.NEGATIVE_INFINITY, bearsPsi));
  }

  private List<Fork> longer(
      List<Fork> forks, List<Limb> limbs, double lossPsi, double leastOfPart) {
    List<Fork> longer = new ArrayList<>();
    for (Fork fork : forks) {
      for (Limb limb : limbs) {
        looked++;
        Sum one = fork.sum();
        Sum other = limb.sum();
        double leastCost = one.leastCost() + other.leastCost();
        int toSource = one.toSource() + other.toSource();
        if (!cut.tooDear(leastCost, toSource, leastOfPart)) {
          Sum both =
              new Sum(
                  one.goods().and(other.goods()),
                  leastCost,
                  toSource,
                  Math.max(one.needsPsi(), other.needsPsi() + lossPsi),
                  Math.min(one.bearsPsi(), other.bearsPsi()));
          longer.add(fork.with(limb, both));
        }
      }
    }
    return longer;
  }

  /**
   * Those that none of the cheapest is as good as; all where a few are kept anyway. Comparing with
   * every other would leave out a few more, and take longer than it saves.
   */
  private <T> List<T> kept(List<T> all, Function<T, Sum> sum, SharedCosts costs) {
    if (cut.toAFew()) {
      return all;
    }
    List<T> kept = new ArrayList<>();
    for (T one :
        all.stream()
            .sorted(Comparator.comparingDouble(each -> sum.apply(each).leastCost()))
            .toList()) {
      boolean beaten =
          kept.stream()
              .limit(MOST_COMPARED)
              .anyMatch(other -> sum.apply(other).asGoodAs(sum.apply(one), costs));
      if (!beaten) {
        kept.add(one);
      }
    }
    return kept;
  }

  /** The cheapest and those that need least, where only a few are wanted. */
  private <T> List<T> few(List<T> all, Function<T, Sum> sum) {
    if (all.size() <= cut.width()) {
      return all;
    }
    Set<T> few = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Comparator<Sum> first : List.of(Sum.CHEAPEST_FIRST, Sum.LEAST_NEED_FIRST)) {
      all.stream().sorted(Comparator.comparing(sum, first)).limit(cut.width()).forEach(few::add);
    }
    return all.stream().filter(few::contains).toList();
  }

  /** Compares goods beside anything that all legs may buy. */
  private SharedCosts beyondAll() {
    if (beyondAll.isEmpty()) {
      LegJob any = layout.atSource().get(0);
      End to = places.ends(any).stream().findFirst().orElse(any.job().to());
      beyondAll = Optional.of(way(any, layout.whole().from(), to).costs(most.byAll()));
    }
    return beyondAll.get();
  }

  private List<LegWays.Way> ways(LegJob leg, End from, End to) {
    return found.computeIfAbsent(
        new Between(leg.name(), from, to), between -> way(leg, from, to).all(cut.mostOf(leg)));
  }

  private LegWays way(LegJob leg, End from, End to) {
    Between between = new Between(leg.name(), from, to);
    LegWays known = ways.get(between);
    if (known == null) {
      known =
          new LegWays(
              fed(leg, from, to),
              new LegWays.Place(leg.copies(), leg.behind().isPresent(), !leg.last()),
              shop,
              buying,
              most.besides(leg));
      ways.put(between, known);
    }
    return known;
  }

  /** With the most that a leg can be fed with where it begins, if that is known. */
  private Job fed(LegJob leg, End from, End to) {
    double upPsi = places.elevationFt(leg) * Physical.PSI_PER_FT;
    return LegPlaces.between(leg, from, to)
        .withSupply(
            source.map(most -> new Inlet(most.flowingPsi() - upPsi, most.closedPsi() - upPsi)));
  }
}
