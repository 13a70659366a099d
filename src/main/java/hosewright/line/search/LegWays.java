package hosewright.line.search;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Station;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Between;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Placed;
import hosewright.line.bridge.BridgeGraph;
import hosewright.line.bridge.GapBridges;
import hosewright.line.check.PracticeChecks;
import hosewright.line.goods.Basket;
import hosewright.line.goods.BuyingCosts;
import hosewright.line.goods.Goods;
import hosewright.line.goods.PriceLadders;
import hosewright.line.goods.SharedCosts;
import hosewright.line.hose.LegLays;
import hosewright.line.water.PlanHydraulics;
import hosewright.line.water.SeenPressure;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

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
  private final List<Kept> kept = new ArrayList<>();
  private Optional<List<Branch>> opened = Optional.empty();
  private Wanted wanted = Wanted.ANY;
  private final Shop shop;
  private final BuyingCosts buying;
  private OptionalDouble mostSavedOnBridges = OptionalDouble.empty();
  private int looked;

  /**
   * Where a leg lies.
   *
   * @param copies how many times it is laid
   * @param beginsAtNode whether it begins at what divides the water, and not at the source
   * @param endsAtNode whether it ends there, and not at an appliance
   * @param usual whether hose that a rule ranks last is left out where there is other
   */
  public record Place(int copies, boolean beginsAtNode, boolean endsAtNode, boolean usual) {}

  /**
   * A line that may be laid.
   *
   * @param goods what all its copies take
   * @param leastCost those at their least prices, in the currency's major unit
   * @param toSource how much of them has no price
   */
  public record Way(Assembly line, Goods goods, double leastCost, int toSource, Levels levels) {

    /** The same line at other least prices. */
    public Way costing(double least) {
      return new Way(line, goods, least, toSource, levels);
    }
  }

  /**
   * Which lines are wanted.
   *
   * @param mostCost what one may cost at the most with what its pressure is worth, in the
   *     currency's major unit
   * @param mostToSource how many of its parts may have no price
   * @param eachPsi what each psi that it takes is worth, in the currency's major unit
   */
  public record Wanted(double mostCost, int mostToSource, double eachPsi) {
    static final Wanted ANY = new Wanted(Double.POSITIVE_INFINITY, Integer.MAX_VALUE, 0);
  }

  /** A line that nothing met so far is as good as. */
  private record Kept(Way way, SharedCosts.Compared compared) {}

  /**
   * What a line does to the pressure where it begins, psi.
   *
   * @param lostPsi from its beginning to its end, the rise included
   * @param peakPsi the most that any place on the way takes of it, so that none is under suction
   * @param bearsPsi the highest that all its parts stand there with nothing flowing; infinite where
   *     none is rated
   */
  public record Levels(double lostPsi, double peakPsi, double bearsPsi) {

    boolean asGoodAs(Levels other) {
      return lostPsi <= other.lostPsi + HAIR
          && peakPsi <= other.peakPsi + HAIR
          && bearsPsi >= other.bearsPsi - HAIR;
    }
  }

  /**
   * @param job the leg between its ends, with the most it is fed with where that is known
   * @param restMost how many of an item other legs may buy at the most
   */
  public LegWays(
      Job job, Place place, Shop shop, BuyingCosts buying, ToIntFunction<Item> restMost) {
    this.job = job;
    this.place = place;
    this.shop = shop;
    this.buying = buying;
    this.bench =
        new Workbench(
            job,
            job.wishes().fewestLines(),
            shop.catalogue(),
            new PriceLadders(buying.atLeast()),
            shop.currency());
    this.costs = costs(buying, restMost);
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

  private double mostSaved(HoseLine hose) {
    return hose.options().stream()
        .flatMap(option -> option.bill().keySet().stream())
        .distinct()
        .mapToDouble(costs::mostSaved)
        .sum();
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
    List<List<Choice<List<Placed>>>> bridges = new ArrayList<>();
    for (GapBridges gap : branch.bridges()) {
      bridges.add(bridges(gap, mostPsi));
    }
    List<List<Choice<Lay>>> lays = new ArrayList<>();
    for (int leg = 0; leg < branch.lays().size(); leg++) {
      lays.add(lays(branch.topology().legs().get(leg), branch.lays().get(leg)));
    }
    new Branched(branch, lays, bridges).lay();
  }

  /**
   * A lay or a bridge that may be worth taking.
   *
   * @param compared what it takes
   */
  private record Part<T>(Choice<T> choice, SharedCosts.Compared compared) {}

  private <T> Part<T> part(Choice<T> choice, Goods goods) {
    return new Part<>(choice, costs.compared(goods));
  }

  /**
   * Adds a part unless another loses no more, stands as much, and is never dearer.
   *
   * @param mostPsi what nothing is asked to stand more than
   * @param others what the other may cost besides its goods
   */
  private <T> void add(
      Part<T> part, List<Part<T>> parts, double mostPsi, ToDoubleFunction<T> others) {
    for (Part<T> other : parts) {
      Choice<T> choice = other.choice();
      if (choice.lossPsi() <= part.choice().lossPsi() + HAIR
          && choice.ratedPsi() >= Math.min(mostPsi, part.choice().ratedPsi()) - HAIR
          && costs.mostOver(other.compared(), part.compared())
                  + others.applyAsDouble(choice.value())
              <= HAIR) {
        return;
      }
    }
    parts.add(part);
  }

  /**
   * The bridges over a gap that are worth taking, up to the first that is dearer, however the rest
   * is bought, than one that takes as little as any and stands as much as is ever asked.
   */
  private List<Choice<List<Placed>>> bridges(GapBridges gap, double mostPsi) {
    List<Part<List<Placed>>> bridges = new ArrayList<>();
    double enough = Double.POSITIVE_INFINITY;
    int at = 0;
    Optional<Choice<List<Placed>>> next = gap.at(at);
    while (next.isPresent() && next.get().leastCost() * place.copies <= enough) {
      Choice<List<Placed>> choice = next.get();
      add(part(choice, goods(choice.value())), bridges, mostPsi, this::mostGaskets);
      if (choice.lossPsi() <= gap.leastLossPsi() + HAIR && choice.ratedPsi() >= mostPsi) {
        enough =
            Math.min(
                enough,
                costs.mostOver(goods(choice.value()), Goods.NOTHING)
                    + mostGaskets(choice.value())
                    + mostSavedOnBridges());
      }
      next = gap.at(++at);
    }
    return bridges.stream().map(Part::choice).toList();
  }

  private Goods goods(List<Placed> bridge) {
    return Goods.of(
        bridge.stream()
            .flatMap(
                part ->
                    part.item().stream()
                        .map(item -> new Basket.Need(item, part.lines() * place.copies)))
            .toList(),
        List.of());
  }

  /** What gaskets in and at a bridge cost at the most, each with one to spare. */
  private double mostGaskets(List<Placed> bridge) {
    return bridge.stream()
        .flatMap(part -> Stream.of(part.upstream(), part.downstream()))
        .flatMap(Optional::stream)
        .filter(End::carriesGasket)
        .mapToDouble(
            end -> bench.gaskets().mostEach(end) * (place.copies * job.wishes().fewestLines() + 1))
        .sum();
  }

  /** No bridge saves more than this on what the rest buys of its adapters. */
  private double mostSavedOnBridges() {
    if (mostSavedOnBridges.isEmpty()) {
      double most =
          shop.catalogue().ofKind(ItemKind.ADAPTER).stream()
              .filter(item -> shop.prices().breakQuantities(item).size() > 1)
              .mapToDouble(costs::mostSaved)
              .max()
              .orElse(0);
      mostSavedOnBridges = OptionalDouble.of(most * BridgeGraph.MOST_ADAPTERS);
    }
    return mostSavedOnBridges.getAsDouble();
  }

  /** The lays of a leg that are worth taking. */
  private List<Choice<Lay>> lays(LegShape leg, LegLays lays) {
    Choice<Lay> shortest = lays.shortest();
    double mostPsi = PressureBudget.mostCarriedPsi(job, leg.hose());
    double saved = mostSaved(leg.hose());
    double enough =
        shortest.ratedPsi() >= mostPsi
            ? costs.mostOver(goods(leg, shortest.value()), Goods.NOTHING) + saved
            : Double.POSITIVE_INFINITY;
    List<Part<Lay>> kept = new ArrayList<>();
    kept.add(part(shortest, goods(leg, shortest.value())));
    lays.each(
        begun -> begun.cost() * place.copies > enough,
        choice -> add(part(choice, goods(leg, choice.value())), kept, mostPsi, lay -> 0));
    return kept.stream().map(Part::choice).distinct().toList();
  }

  private Goods goods(LegShape leg, Lay lay) {
    int lines = leg.lines() * place.copies;
    Basket basket = new Basket();
    basket.addSections(leg.hose(), lay, lines, job.conditions().spareSections());
    return Goods.of(
        basket.needs(), GasketCount.between(leg.hose(), lay.sections() * lines).stream().toList());
  }

  /** What is left to choose in a topology: its lays, then its bridges. */
  private final class Branched {
    private final Branch branch;
    private final List<List<Choice<Lay>>> lays;
    private final List<List<Choice<List<Placed>>>> bridges;
    private final List<Lay> laid = new ArrayList<>();
    private final List<List<Placed>> bridged = new ArrayList<>();

    Branched(
        Branch branch, List<List<Choice<Lay>>> lays, List<List<Choice<List<Placed>>>> bridges) {
      this.branch = branch;
      this.lays = lays;
      this.bridges = bridges;
    }

    /** What the parts cost that every line of it has, and what its rise is worth. */
    private double fixedCost() {
      double cost = branch.bounds().leastCost();
      for (LegLays leg : branch.lays()) {
        cost -= leg.leastCost();
      }
      for (GapBridges gap : branch.bridges()) {
        cost -= gap.leastCost();
      }
      return cost * place.copies + wanted.eachPsi * risePsi();
    }

    private double worth(Choice<?> choice) {
      return choice.leastCost() * place.copies + wanted.eachPsi * choice.lossPsi();
    }

    private <T> double least(List<Choice<T>> choices) {
      return choices.stream().mapToDouble(this::worth).min().orElse(Double.POSITIVE_INFINITY);
    }

    void lay() {
      double leastCost = fixedCost();
      for (List<Choice<Lay>> choices : lays) {
        leastCost += least(choices);
      }
      for (List<Choice<List<Placed>>> choices : bridges) {
        leastCost += least(choices);
      }
      lay(leastCost);
    }

    /**
     * @param leastCost no line with what is chosen costs less
     */
    private void lay(double leastCost) {
      if (laid.size() == lays.size()) {
        bridge(leastCost);
        return;
      }
      List<Choice<Lay>> choices = lays.get(laid.size());
      double elsewhere = leastCost - least(choices);
      for (Choice<Lay> choice : choices) {
        double cost = elsewhere + worth(choice);
        if (cost <= wanted.mostCost) {
          laid.add(choice.value());
          lay(cost);
          laid.remove(laid.size() - 1);
        }
      }
    }

    private void bridge(double leastCost) {
      if (bridged.size() == bridges.size()) {
        weigh(Assembly.of(job, branch.topology(), laid, bridged));
        return;
      }
      List<Choice<List<Placed>>> choices = bridges.get(bridged.size());
      double elsewhere = leastCost - least(choices);
      for (Choice<List<Placed>> choice : choices) {
        double cost = elsewhere + worth(choice);
        if (cost <= wanted.mostCost) {
          bridged.add(choice.value());
          bridge(cost);
          bridged.remove(bridged.size() - 1);
        }
      }
    }
  }

  private void weigh(Assembly line) {
    looked++;
    if (!bridgesWide(line)) {
      return;
    }
    Way way = way(line);
    Kept one = new Kept(way, costs.compared(way.goods));
    if (way.leastCost + wanted.eachPsi * way.levels.lostPsi > wanted.mostCost
        || way.toSource > wanted.mostToSource
        || kept.stream().anyMatch(other -> beats(other, one))) {
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
    return new Way(line, goods, costs.least(goods), costs.toSource(goods), levels(line));
  }

  private boolean beats(Kept one, Kept other) {
    return one.way.toSource <= other.way.toSource
        && one.way.levels.asGoodAs(other.way.levels)
        && costs.mostOver(one.compared, other.compared) <= HAIR;
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

  private Levels levels(Assembly line) {
    if (!job.service().isWater()) {
      return new Levels(0, 0, Double.POSITIVE_INFINITY);
    }
    List<LineElement> elements = PlanHydraulics.elements(job, line);
    List<Station> profile = LineHydraulics.profile(elements, job.flowGpm(), 0, 0);
    double lowestPsi = profile.stream().mapToDouble(Station::flowingPsi).min().orElseThrow();
    // What a source never puts on it, nothing need bear.
    double bearsPsi = job.supply().map(Supply::closedPsi).orElse(Double.POSITIVE_INFINITY);
    for (SeenPressure seen : SeenPressure.along(line, PlanHydraulics.stations(profile))) {
      double carriedPsi = carriedPsi(seen.part());
      bearsPsi = Math.min(bearsPsi, carriedPsi - seen.highestPsi());
    }
    return new Levels(-profile.get(profile.size() - 1).flowingPsi(), -lowestPsi, bearsPsi);
  }

  private double carriedPsi(Placed part) {
    return part.isHose()
        ? PressureBudget.carriedPsi(job, part.rating())
        : part.rating()
            .workingPsiAt(job.service().temperatureOrUsualF())
            .orElse(Double.POSITIVE_INFINITY);
  }

  /** Whether no check fails that another choice of parts could mend, fed with just enough. */
  private boolean passes(Way way) {
    double leastPsi = Math.max(job.needPsi() + way.levels.lostPsi, way.levels.peakPsi);
    double closedPsi = Math.max(leastPsi, job.supply().map(Supply::closedPsi).orElse(leastPsi));
    if (job.supply().isPresent()
        && (job.supply().get().pressurePsi(job.flowGpm()) < leastPsi - HAIR
            || closedPsi > way.levels.bearsPsi + HAIR)) {
      return false;
    }
    return bench.evaluated(way.line, new Inlet(leastPsi, closedPsi)).bestThatCanBe();
  }
}
