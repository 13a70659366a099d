package hosewright.line.search;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Station;
import hosewright.hydraulics.Supply;
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
import hosewright.line.goods.Availability;
import hosewright.line.goods.Basket;
import hosewright.line.goods.SharedCosts;
import hosewright.line.goods.SharedCosts.Goods;
import hosewright.line.goods.Wanted;
import hosewright.line.hose.LegLays;
import hosewright.line.water.PlanHydraulics;
import hosewright.line.water.SeenPressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;
import org.joda.money.Money;

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
  private final List<Way> kept = new ArrayList<>();
  private final Shop shop;
  private OptionalDouble mostSavedOnBridges = OptionalDouble.empty();
  private int looked;

  /**
   * Where a leg lies.
   *
   * @param copies how many times it is laid
   * @param beginsAtNode whether it begins at what divides the water, and not at the source
   * @param endsAtNode whether it ends there, and not at an appliance
   */
  public record Place(int copies, boolean beginsAtNode, boolean endsAtNode) {}

  /**
   * A line that may be laid.
   *
   * @param goods what all its copies take
   * @param toSource how much of that has no price
   */
  public record Way(Assembly line, Goods goods, int toSource, Levels levels) {}

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
  public LegWays(Job job, Place place, Shop shop, ToIntFunction<Item> restMost) {
    this.job = job;
    this.place = place;
    this.shop = shop;
    NetPrice prices = shop.prices();
    this.bench =
        new Workbench(
            job, job.wishes().fewestLines(), shop.catalogue(), atBest(prices), shop.currency());
    this.costs =
        new SharedCosts(prices, Availability.of(job), bench.gaskets(), bench.billing(), restMost);
  }

  /** Prices as if everything were bought by the most: no purchase has any of it for less. */
  private static NetPrice atBest(NetPrice prices) {
    return new NetPrice() {
      @Override
      public Optional<Money> unitPrice(Item item, int quantity) {
        int most = breakQuantities(item).stream().mapToInt(Integer::intValue).max().orElse(1);
        return prices.unitPrice(item, most);
      }

      @Override
      public List<Integer> breakQuantities(Item item) {
        return prices.breakQuantities(item);
      }
    };
  }

  /** Compares goods at the prices of this leg's buyer. */
  public SharedCosts costs() {
    return costs;
  }

  /** Lines looked at. */
  public int looked() {
    return looked;
  }

  /** Every line worth laying; none where nothing can be laid so. */
  public List<Way> all() {
    for (Branch branch : bench.opened()) {
      if (!place.beginsAtNode && !place.endsAtNode || nodesWide(branch)) {
        search(branch);
      }
    }
    return List.copyOf(kept);
  }

  /** Ports of what divides the water are as wide as the hose that hangs on them. */
  private boolean nodesWide(Branch branch) {
    if (PracticeChecks.anyWidth(job)) {
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
    List<List<Placed>> chosen = new ArrayList<>();
    List<List<List<Placed>>> bridges = new ArrayList<>();
    for (GapBridges gap : branch.bridges()) {
      bridges.add(bridges(gap, mostPsi));
    }
    lays(branch, new ArrayList<>(), bridges, chosen);
  }

  /**
   * The bridges over a gap up to the first that is dearer, however the rest is bought, than one that
   * takes as little as any and stands as much as is ever asked.
   */
  private List<List<Placed>> bridges(GapBridges gap, double mostPsi) {
    List<List<Placed>> bridges = new ArrayList<>();
    double mostCost = Double.POSITIVE_INFINITY;
    Optional<Choice<List<Placed>>> next = gap.at(0);
    while (next.isPresent() && next.get().leastCost() * place.copies <= mostCost) {
      Choice<List<Placed>> choice = next.get();
      bridges.add(choice.value());
      if (choice.lossPsi() <= gap.leastLossPsi() + HAIR && choice.ratedPsi() >= mostPsi) {
        mostCost = Math.min(mostCost, mostCost(choice.value()) + mostSavedOnBridges());
      }
      next = gap.at(bridges.size());
    }
    return bridges;
  }

  private double mostCost(List<Placed> bridge) {
    List<Basket.Need> needs =
        bridge.stream()
            .flatMap(
                part ->
                    part.item().stream()
                        .map(item -> new Basket.Need(item, part.lines() * place.copies)))
            .toList();
    return costs.mostOver(goods(needs), Goods.NOTHING);
  }

  private static Goods goods(List<Basket.Need> needs) {
    return new Goods(new Wanted(needs, List.of(), false, List.of()), List.of());
  }

  /** No bridge saves more than this on what the rest buys of its adapters. */
  private double mostSavedOnBridges() {
    if (mostSavedOnBridges.isEmpty()) {
      double most = shop.catalogue().ofKind(ItemKind.ADAPTER).stream()
          .filter(item -> shop.prices().breakQuantities(item).size() > 1)
          .mapToDouble(costs::mostSaved)
          .max()
          .orElse(0);
      mostSavedOnBridges = OptionalDouble.of(most * BridgeGraph.MOST_ADAPTERS);
    }
    return mostSavedOnBridges.getAsDouble();
  }

  private void lays(
      Branch branch,
      List<Lay> laid,
      List<List<List<Placed>>> bridges,
      List<List<Placed>> chosen) {
    if (laid.size() == branch.lays().size()) {
      bridge(branch, laid, bridges, chosen);
      return;
    }
    LegLays lays = branch.lays().get(laid.size());
    LegShape leg = branch.topology().legs().get(laid.size());
    Choice<Lay> shortest = lays.shortest();
    boolean strongest =
        leg.hose().options().stream()
            .allMatch(
                option ->
                    PressureBudget.carriedPsi(job, option.rating()) <= shortest.ratedPsi() + HAIR);
    double enough = strongest ? mostCost(leg, shortest.value()) : Double.POSITIVE_INFINITY;
    lays.each(
        begun -> begun.cost() * place.copies > enough,
        choice -> {
          laid.add(choice.value());
          lays(branch, laid, bridges, chosen);
          laid.remove(laid.size() - 1);
        });
  }

  /** What a lay costs at the most, and may save beside its likes: all that cost more lose more. */
  private double mostCost(LegShape leg, Lay lay) {
    HoseLine hose = leg.hose();
    int lines = leg.lines() * place.copies;
    Basket basket = new Basket();
    basket.addSections(hose, lay, lines, job.conditions().spareSections());
    List<GasketCount> gaskets =
        GasketCount.between(hose, lay.sections() * lines).stream().toList();
    double saved =
        hose.options().stream()
            .flatMap(option -> option.bill().keySet().stream())
            .distinct()
            .mapToDouble(costs::mostSaved)
            .sum();
    Goods goods = new Goods(goods(basket.needs()).wanted(), gaskets);
    return costs.mostOver(goods, Goods.NOTHING) + saved;
  }

  private void bridge(
      Branch branch,
      List<Lay> laid,
      List<List<List<Placed>>> bridges,
      List<List<Placed>> chosen) {
    if (chosen.size() == bridges.size()) {
      weigh(Assembly.of(job, branch.topology(), laid, chosen));
      return;
    }
    for (List<Placed> choice : bridges.get(chosen.size())) {
      chosen.add(choice);
      bridge(branch, laid, bridges, chosen);
      chosen.remove(chosen.size() - 1);
    }
  }

  private void weigh(Assembly line) {
    looked++;
    Way way = way(line);
    if (!bridgesWide(line) || kept.stream().anyMatch(other -> beats(other, way))) {
      return;
    }
    if (passes(way)) {
      kept.removeIf(other -> beats(way, other));
      kept.add(way);
    }
  }

  private Way way(Assembly line) {
    Goods goods =
        new Goods(
            bench.billing().wanted(line, place.copies),
            GasketCount.of(line, place.copies, job.conditions().spareSections()));
    return new Way(line, goods, costs.toSource(goods), levels(line));
  }

  private boolean beats(Way one, Way other) {
    return one.toSource <= other.toSource
        && one.levels.asGoodAs(other.levels)
        && costs.mostOver(one.goods, other.goods) <= HAIR;
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
    return between.parts().stream()
        .allMatch(part -> Between.wideEnough(part.waterwayIn(), hoseIn));
  }

  private Levels levels(Assembly line) {
    if (!job.service().isWater()) {
      return new Levels(0, 0, Double.POSITIVE_INFINITY);
    }
    List<LineElement> elements = PlanHydraulics.elements(job, line);
    List<Station> profile = LineHydraulics.profile(elements, job.flowGpm(), 0, 0);
    double lowestPsi =
        profile.stream().mapToDouble(Station::flowingPsi).min().orElseThrow();
    double bearsPsi = Double.POSITIVE_INFINITY;
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
