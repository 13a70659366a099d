package hosewright.line.search;

import hosewright.catalogue.Item;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.job.question.SourceKind;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Between;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.MakeUpOrder;
import hosewright.line.assembly.Placed;
import hosewright.line.bridge.GapBridges;
import hosewright.line.check.PracticeChecks;
import hosewright.line.goods.BuyingCosts;
import hosewright.line.goods.Goods;
import hosewright.line.goods.PriceLadders;
import hosewright.line.goods.SharedCosts;
import hosewright.line.water.LegLevels;
import hosewright.line.water.PlanHydraulics;
import hosewright.line.water.SameWater;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToIntFunction;

/**
 * Finds every line worth laying as a leg of a layout, between two ends that are given.
 *
 * <p>Exact: a line is left out only where another takes no more pressure, stands no less, lacks no
 * more parts, and is never dearer whatever the rest of the layout buys of the same goods.
 */
public final class LegWays {
  private static final double HAIR = 1e-9;

  private final Job job;
  private final Place place;
  private final Workbench bench;
  private final SharedCosts costs;
  private final LegParts parts;
  private final List<Kept> kept = new ArrayList<>();
  private Optional<Kept> lastBeat = Optional.empty();
  private Optional<List<Branch>> opened = Optional.empty();
  private final Map<Assembly, Carried> carried = new IdentityHashMap<>();
  private Wanted wanted = Wanted.ANY;
  private int looked;

  /**
   * Where a leg lies.
   *
   * @param copies how many times it is laid
   * @param beginsAtNode whether it begins at what divides the water, and not at the source
   * @param endsAtNode whether it ends there, and not at an appliance
   * @param usual whether hose that a rule ranks last is left out where there is other
   * @param shares whether it shares its flow with others, so that what it carries is not known yet
   */
  public record Place(
      int copies, boolean beginsAtNode, boolean endsAtNode, boolean usual, boolean shares) {}

  /**
   * A line that may be laid.
   *
   * @param goods what all its copies take
   * @param leastCost those at their least prices, in the currency's major unit
   * @param toSource how much of them has no price
   * @param abreast lines that meet where it ends, each at its share of the flow, of which it is the
   *     first; none where it lies alone
   */
  public record Way(
      Assembly line,
      Goods goods,
      double leastCost,
      int toSource,
      LegLevels levels,
      List<Abreast> abreast) {
    public Way {
      abreast = List.copyOf(abreast);
    }

    /** A line that lies alone. */
    public Way(Assembly line, Goods goods, double leastCost, int toSource, LegLevels levels) {
      this(line, goods, leastCost, toSource, levels, List.of());
    }

    /** Lines that meet again, with what they take together. */
    public static Way of(
        List<Abreast> abreast, Goods goods, double leastCost, int toSource, LegLevels levels) {
      return new Way(abreast.get(0).way().line(), goods, leastCost, toSource, levels, abreast);
    }

    /** The same at other least prices. */
    public Way costing(double least) {
      return new Way(line, goods, least, toSource, levels, abreast);
    }

    /** Every line of it. */
    public List<Assembly> lines() {
      return abreast.isEmpty()
          ? List.of(line)
          : abreast.stream().map(one -> one.way().line()).toList();
    }
  }

  /** A line beside others, at its share of the flow. */
  public record Abreast(Way way, double flowGpm) {}

  /**
   * Which lines are wanted.
   *
   * @param mostCost what one may cost at the most with what its pressure is worth, in the
   *     currency's major unit
   * @param mostToSource how many of its parts may have no price
   * @param eachPsi what each psi that it takes is worth, in the currency's major unit
   */
  public record Wanted(double mostCost, int mostToSource, double eachPsi) {
    public static final Wanted ANY = new Wanted(Double.POSITIVE_INFINITY, Integer.MAX_VALUE, 0);
  }

  /** A line that nothing met so far is as good as. */
  private record Kept(Way way, SharedCosts.Compared compared, List<Object> water) {}

  /**
   * @param job the leg between its ends, with the most it is fed with where that is known
   * @param restMost how many of an item other legs may buy at the most
   */
  public LegWays(
      Job job, Place place, Shop shop, BuyingCosts buying, ToIntFunction<Item> restMost) {
    this.job = job;
    this.place = place;
    this.bench =
        new Workbench(
            job,
            job.wishes().fewestLines(),
            shop.catalogue(),
            new Workbench.Prices(new PriceLadders(buying.atLeast()), shop.prices()),
            shop.currency());
    this.costs = costs(buying, restMost);
    this.parts = new LegParts(job, place.copies, shop, bench.gaskets(), costs);
  }

  /**
   * Compares goods of a layout.
   *
   * @param restMost how many of an item may be bought besides at the most
   */
  public SharedCosts costs(BuyingCosts bought, ToIntFunction<Item> restMost) {
    return new SharedCosts(bought, bench.gaskets(), bench.billing(), restMost);
  }

  /** Lines looked at. */
  public int looked() {
    return looked;
  }

  /**
   * No line adds less to the sum of least prices and of what its pressure is worth; infinite where
   * nothing can be laid so.
   *
   * @param eachPsi what each psi that it takes is worth, in the currency's major unit
   */
  public double leastCost(double eachPsi) {
    return opened().stream()
        .mapToDouble(branch -> leastCost(branch, eachPsi))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Every line worth laying that is wanted; none where there is none. */
  public List<Way> all(Wanted which) {
    kept.clear();
    lastBeat = Optional.empty();
    wanted = which;
    for (Branch branch : opened()) {
      if (leastCost(branch, which.eachPsi) <= which.mostCost
          && branch.toSource() <= which.mostToSource) {
        search(branch);
      }
    }
    return kept.stream().map(Kept::way).toList();
  }

  /**
   * A few lines quickly: of every topology the shortest and the strongest lays, with the cheapest
   * bridges, with those that lose least and with the strongest. Those that lose least are among
   * them.
   */
  public List<Way> few() {
    kept.clear();
    lastBeat = Optional.empty();
    wanted = Wanted.ANY;
    for (Branch branch : opened()) {
      for (List<Lay> lays : branch.laysToCompare()) {
        for (List<List<Placed>> over : branch.bridgesToCompare()) {
          weigh(Assembly.of(job, branch.topology(), lays, over));
        }
      }
    }
    return kept.stream().map(Kept::way).toList();
  }

  private List<Branch> opened() {
    if (opened.isEmpty()) {
      opened = Optional.of(bench.opened(place.usual).stream().filter(this::nodesWide).toList());
    }
    return opened.get();
  }

  private double leastCost(Branch branch, double eachPsi) {
    double psi = branch.leastLayLossFromPsi(0) + branch.leastLossFromPsi(0) + risePsi();
    return branch.bounds().leastCost() * place.copies + (eachPsi == 0 ? 0 : eachPsi * psi);
  }

  private double risePsi() {
    return job.run().riseFt() * Physical.PSI_PER_FT;
  }

  /** Ports of what divides the water are as wide as the hose that hangs on them. */
  private boolean nodesWide(Branch branch) {
    if (PracticeChecks.anyWidth(job) || !place.beginsAtNode && !place.endsAtNode) {
      return true;
    }
    boolean in =
        !place.beginsAtNode
            || Between.wideEnough(job.from().sizeIn(), branch.topology().supply().inlet().sizeIn());
    boolean out =
        !place.endsAtNode
            || Between.wideEnough(job.to().sizeIn(), branch.topology().last().outlet().sizeIn());
    return in && out;
  }

  private void search(Branch branch) {
    double mostPsi = PressureBudget.enoughPsi(job, branch.topology()).orElse(Double.MAX_VALUE);
    boolean madeAnyway = MakeUpOrder.everPossible(branch.topology(), job.ends());
    List<List<Choice<List<Placed>>>> bridges = new ArrayList<>();
    for (GapBridges gap : branch.bridges()) {
      bridges.add(parts.bridges(gap, mostPsi, madeAnyway));
    }
    List<List<Choice<Lay>>> lays = new ArrayList<>();
    for (int leg = 0; leg < branch.lays().size(); leg++) {
      lays.add(parts.lays(branch.topology().legs().get(leg), branch.lays().get(leg)));
    }
    LegLaying.Worth worth = new LegLaying.Worth(place.copies, wanted.eachPsi);
    new LegLaying(lays, bridges, worth, wanted.mostCost)
        .each(
            fixedCost(branch),
            (laid, bridged) -> weigh(Assembly.of(job, branch.topology(), laid, bridged)));
  }

  /** What the parts cost that every line of a topology has, and what its rise is worth. */
  private double fixedCost(Branch branch) {
    return branch.fixedCost() * place.copies + wanted.eachPsi * risePsi();
  }

  private void weigh(Assembly line) {
    looked++;
    if (!bridgesWide(line) || !drawsTight(line)) {
      return;
    }
    Way way = way(line);
    List<Object> water = place.shares ? SameWater.met(line) : List.of();
    Kept one = new Kept(way, costs.compared(way.goods), water);
    if (way.leastCost + wanted.eachPsi * way.levels.lostPsi() > wanted.mostCost
        || way.toSource > wanted.mostToSource
        || beaten(one)) {
      return;
    }
    if (passes(way)) {
      kept.removeIf(other -> beats(one, other));
      kept.add(one);
    }
  }

  private Way way(Assembly line) {
    Goods goods =
        Goods.of(
            bench.billing().wanted(line, place.copies),
            GasketCount.of(line, place.copies, job.conditions().spareSections()));
    return new Way(line, goods, costs.least(goods), costs.toSource(goods), LegLevels.of(job, line));
  }

  /** Lines that are weighed one after another are like each other, and mostly beaten by one. */
  private boolean beaten(Kept one) {
    if (lastBeat.isPresent() && beats(lastBeat.get(), one)) {
      return true;
    }
    for (Kept other : kept) {
      if (beats(other, one)) {
        lastBeat = Optional.of(other);
        return true;
      }
    }
    return false;
  }

  private boolean beats(Kept one, Kept other) {
    return one.way.toSource <= other.way.toSource
        && one.way.levels.asGoodAs(other.way.levels)
        && one.water.equals(other.water)
        && costs.mostOver(one.compared, other.compared) <= HAIR;
  }

  /** Whether a line that draws has no more joints that may leak than it must. */
  private boolean drawsTight(Assembly line) {
    return job.source() != SourceKind.OPEN_WATER
        || Between.of(line.parts()).stream()
            .allMatch(between -> between.parts().size() <= Limit.SUCTION_ADAPTERS.value());
  }

  /** What is bridged at a node is held to the hose beside it, not to the node's own end. */
  private boolean bridgesWide(Assembly line) {
    if (PracticeChecks.anyWidth(job)) {
      return true;
    }
    List<Between> all = Between.of(line.parts());
    Between first = all.get(0);
    Between last = all.get(all.size() - 1);
    return (!place.beginsAtNode || wide(first, first.to().end().sizeIn()))
        && (!place.endsAtNode || wide(last, last.from().end().sizeIn()));
  }

  private static boolean wide(Between between, double hoseIn) {
    return between.parts().stream().allMatch(part -> Between.wideEnough(part.waterwayIn(), hoseIn));
  }

  /** A way at another flow than it was found for. */
  public Way at(Way way, double flowGpm) {
    LegLevels levels = LegLevels.of(job.flowing(flowGpm, job.needPsi()), way.line);
    return new Way(way.line, way.goods, way.leastCost, way.toSource, levels, way.abreast);
  }

  /** What a way loses at a flow, the rise included. */
  public DoubleUnaryOperator lossPsi(Way way) {
    List<LineElement> elements = PlanHydraulics.elements(job, way.line);
    return flowGpm -> LineHydraulics.lossPsi(elements, flowGpm);
  }

  /**
   * Whether a way passes every check at a flow that another choice of parts could mend. What passes
   * at a flow passes at less.
   */
  public boolean carries(Way way, double flowGpm) {
    Carried known = carried.computeIfAbsent(way.line, line -> new Carried());
    if (flowGpm > known.mostGpm && flowGpm < known.tooMuchGpm) {
      if (passes(at(way, flowGpm), job.flowing(flowGpm, job.needPsi()))) {
        known.mostGpm = flowGpm;
      } else {
        known.tooMuchGpm = flowGpm;
      }
    }
    return flowGpm <= known.mostGpm;
  }

  /** What a line was seen to carry, gpm. */
  private static final class Carried {
    private double mostGpm;
    private double tooMuchGpm = Double.POSITIVE_INFINITY;
  }

  private boolean passes(Way way) {
    return passes(way, job);
  }

  /** Whether no check fails that another choice of parts could mend, fed with just enough. */
  private boolean passes(Way way, Job job) {
    double leastPsi = way.levels.neededPsi(job.needPsi());
    double closedPsi = Math.max(leastPsi, job.supply().map(Supply::closedPsi).orElse(leastPsi));
    if (job.supply().isPresent()
        && (job.supply().get().pressurePsi(job.flowGpm()) < leastPsi - HAIR
            || closedPsi > way.levels.bearsPsi() + HAIR)) {
      return false;
    }
    return bench.evaluated(job, way.line, new Inlet(leastPsi, closedPsi)).bestThatCanBe();
  }
}
