package hosewright.line.search;

import hosewright.catalogue.Item;
import hosewright.job.Job;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Joining;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.SectionOption;
import hosewright.line.assembly.Topology;
import hosewright.line.goods.Availability;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Gaskets;
import hosewright.line.goods.PriceFloor;
import hosewright.line.hose.Cover;
import hosewright.line.hose.LegLays;
import hosewright.line.water.BornePressure;
import hosewright.line.water.FrictionChoice;
import hosewright.line.water.LegFigures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The lays of a topology's legs, cheapest first. */
final class LayChoices {
  private final Job job;
  private final Availability availability;
  private final PriceFloor floor;
  private final Gaskets gaskets;
  private final Map<HoseLine, Map<PricedWith, LegLays>> known = new IdentityHashMap<>();
  private final Map<HoseLine, Map<HoseLine, Map<List<Run>, List<LegLays>>>> ofPairs =
      new IdentityHashMap<>();

  LayChoices(Job job, PriceFloor floor, Gaskets gaskets) {
    this.job = job;
    this.availability = Availability.of(job);
    this.floor = floor;
    this.gaskets = gaskets;
  }

  /** All of a leg that decides which lays it has, its hose apart. */
  private record Run(int lines, double neededFt, int fewestSections) {
    static Run of(LegShape leg) {
      return new Run(leg.lines(), leg.neededFt(), leg.fewestSections());
    }
  }

  /**
   * All of a leg that decides what its lays cost, its hose apart.
   *
   * @param sharedEach the least one of each item costs that another leg buys as well, so that a
   *     price break may be reached together
   * @param ownGaskets whether no other leg may use the same gaskets
   */
  private record PricedWith(Run run, Map<String, Double> sharedEach, boolean ownGaskets) {}

  /** The lays of each leg of a topology: alike for all topologies of the same hose. */
  List<LegLays> of(Topology topology) {
    List<LegShape> legs = topology.legs();
    if (legs.size() == 1) {
      return List.of(lays(topology.hose(), new PricedWith(Run.of(legs.get(0)), Map.of(), true)));
    }
    return ofPairs
        .computeIfAbsent(topology.hose(), hose -> new IdentityHashMap<>())
        .computeIfAbsent(topology.last().hose(), hose -> new HashMap<>())
        .computeIfAbsent(legs.stream().map(Run::of).toList(), runs -> ofPair(legs, runs));
  }

  private List<LegLays> ofPair(List<LegShape> legs, List<Run> runs) {
    Map<String, MostOf> ours = mostOfEach(legs.get(0).hose(), runs.get(0));
    Map<String, MostOf> theirs = mostOfEach(legs.get(1).hose(), runs.get(1));
    Map<String, Double> sharedEach = new TreeMap<>();
    ours.forEach(
        (number, one) -> {
          MostOf other = theirs.get(number);
          if (other != null) {
            sharedEach.put(number, floor.ofOneOf(one.item(), 1, one.most() + other.most()));
          }
        });
    boolean ownGaskets = gaskets.apart(legs.get(0).hose().inlet(), legs.get(1).hose().inlet());
    List<LegLays> lays = new ArrayList<>();
    for (int i = 0; i < legs.size(); i++) {
      lays.add(lays(legs.get(i).hose(), new PricedWith(runs.get(i), sharedEach, ownGaskets)));
    }
    return lays;
  }

  private LegLays lays(HoseLine hose, PricedWith terms) {
    return known
        .computeIfAbsent(hose, h -> new HashMap<>())
        .computeIfAbsent(terms, t -> find(hose, t));
  }

  private LegLays find(HoseLine hose, PricedWith terms) {
    Run run = terms.run();
    Cover cover = cover(hose, run, hose.mostOfEach(run.lines()));
    return new LegLays(
        cover,
        cover(hose, run, mostToBeHad(hose, run)),
        Joining.allowedRemovable(hose.outlet(), hose.inlet()),
        hose.options().stream().mapToDouble(SectionOption::weightLb).toArray(),
        leastEach(hose, terms),
        new LegLays.Judge(
            hose::mayBe,
            lay -> priced(hose, lay, terms),
            lay ->
                bill(hose, lay, run.lines()).stream()
                    .allMatch(need -> availability.toBeHad(need.item(), need.quantity()))),
        () -> leastLossPsi(hose, cover, run));
  }

  private static Cover cover(HoseLine hose, Run run, List<Integer> most) {
    List<Double> lengthsFt = hose.options().stream().map(SectionOption::lengthFt).toList();
    return new Cover(lengthsFt, most, run.neededFt(), run.fewestSections());
  }

  /** Of each option, no more than the shelf or the supplier has. */
  private List<Integer> mostToBeHad(HoseLine hose, Run run) {
    List<Integer> most = new ArrayList<>(hose.mostOfEach(run.lines()));
    for (int i = 0; i < most.size(); i++) {
      Map<Item, Integer> bill = hose.options().get(i).bill();
      for (Map.Entry<Item, Integer> need : bill.entrySet()) {
        int perSection = need.getValue() * run.lines();
        int sections = availability.mostOf(need.getKey()) / perSection;
        most.set(i, Math.min(most.get(i), sections));
      }
    }
    return most;
  }

  /** The most that lays may buy of an item. */
  private record MostOf(Item item, int most) {}

  private Map<String, MostOf> mostOfEach(HoseLine hose, Run run) {
    Map<String, MostOf> items = new HashMap<>();
    double longestFt = hose.options().get(0).lengthFt();
    for (SectionOption option : hose.options()) {
      int sections =
          Math.max(
              run.fewestSections(),
              (int) Math.ceil((run.neededFt() + longestFt) / option.lengthFt()));
      int alike = sections * run.lines() + job.conditions().spareSections();
      option
          .bill()
          .forEach(
              (item, quantity) ->
                  items.merge(
                      item.number(),
                      new MostOf(item, alike * quantity),
                      (one, other) -> one.most() < other.most() ? other : one));
    }
    return items;
  }

  /** The least that one section of each option may cost, side by side with its likes. */
  private double[] leastEach(HoseLine hose, PricedWith terms) {
    Map<String, MostOf> mostOfEach = mostOfEach(hose, terms.run());
    double[] least = new double[hose.options().size()];
    for (int i = 0; i < least.length; i++) {
      for (Map.Entry<Item, Integer> need : hose.options().get(i).bill().entrySet()) {
        Item item = need.getKey();
        Double shared = terms.sharedEach().get(item.number());
        double each =
            shared == null ? floor.ofOneOf(item, 1, mostOfEach.get(item.number()).most()) : shared;
        least[i] += each * need.getValue() * terms.run().lines();
      }
    }
    return least;
  }

  /** Owned hose and bought may differ in what a foot of them loses. */
  private double leastLossPsi(HoseLine hose, Cover cover, Run run) {
    if (!job.service().isWater()) {
      return 0;
    }
    double flowGpm = job.flowGpm() / run.lines();
    if (hose.options().stream().noneMatch(SectionOption::isOwned)) {
      return FrictionChoice.of(job, hose).law().lossPsi(flowGpm, cover.shortestFt());
    }
    return cover.least(
        hose.options().stream()
            .mapToDouble(
                option ->
                    FrictionChoice.of(job, hose, option.isOwned())
                        .law()
                        .lossPsi(flowGpm, option.lengthFt()))
            .toArray());
  }

  private Choice<Lay> priced(HoseLine hose, Lay lay, PricedWith terms) {
    Run run = terms.run();
    double lossPsi = job.service().isWater() ? lossPsi(hose, lay, run) : 0;
    double cost =
        cost(bill(hose, lay, run.lines()), terms.sharedEach()) + jointsCost(hose, lay, terms);
    return new Choice<>(lay, cost, lossPsi, carriedPsi(hose, lay));
  }

  /** What the weakest section of a lay may carry, psi. */
  private double carriedPsi(HoseLine hose, Lay lay) {
    double psi = Double.POSITIVE_INFINITY;
    for (int i = 0; i < lay.counts().size(); i++) {
      if (lay.counts().get(i) > 0) {
        psi = Math.min(psi, BornePressure.hosePsi(job, hose.options().get(i).rating()));
      }
    }
    return psi;
  }

  private double lossPsi(HoseLine hose, Lay lay, Run run) {
    return LegFigures.frictionPsi(job, hose, lay, job.flowGpm() / run.lines());
  }

  private List<Basket.Need> bill(HoseLine hose, Lay lay, int lines) {
    Basket basket = new Basket();
    basket.addSections(hose, lay, lines, job.conditions().spareSections());
    return basket.needs();
  }

  /**
   * Exact, unless the buyer asks for more of the same besides the line or another leg buys it too.
   */
  private double cost(List<Basket.Need> bill, Map<String, Double> sharedEach) {
    double cost = 0;
    for (Basket.Need need : bill) {
      Double each = sharedEach.get(need.item().number());
      cost += each == null ? floor.ofAtLeast(need.item(), need.quantity()) : each * need.quantity();
    }
    return cost;
  }

  /**
   * The gaskets between sections; those at either end come on top in the whole plan. Where two legs
   * may use the same, none is counted: they share their spares and their price breaks.
   */
  private double jointsCost(HoseLine hose, Lay lay, PricedWith terms) {
    if (!terms.ownGaskets()) {
      return 0;
    }
    Run run = terms.run();
    int joints = Math.max(0, lay.sections() - run.fewestSections()) * run.lines();
    return GasketCount.between(hose, joints)
        .map(count -> gaskets.leastCost(count.end(), count.bought() + count.spare()))
        .orElse(0.0);
  }
}
