package hosewright.line;

import hosewright.catalogue.Item;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The lays of a frame's legs, cheapest first. */
final class LayChoices {
  private final Job job;
  private final Availability availability;
  private final PriceFloor floor;
  private final Gaskets gaskets;
  private final Map<HoseLine, Map<Run, Bills>> bills = new IdentityHashMap<>();
  private final Map<HoseLine, Map<Terms, Offer>> known = new IdentityHashMap<>();
  private final Map<HoseLine, Map<HoseLine, Map<List<Run>, List<Offer>>>> ofPairs =
      new IdentityHashMap<>();

  LayChoices(Job job, PriceFloor floor, Gaskets gaskets) {
    this.job = job;
    this.availability = Availability.of(job);
    this.floor = floor;
    this.gaskets = gaskets;
  }

  /**
   * What may be laid.
   *
   * @param lays cheapest first; empty when sections that do not couple to each other would have to
   * @param inStock whether enough is left of what is discontinued; if not, no lay passes
   * @param leastLossPsi the least that any lay loses, psi
   */
  record Offer(List<Choice<Lay>> lays, boolean inStock, double leastLossPsi) {}

  /** All of a leg that decides which lays it has, its hose apart. */
  private record Run(int lines, double neededFt, int fewestSections) {
    static Run of(Leg leg) {
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
  private record Terms(Run run, Map<String, Double> sharedEach, boolean ownGaskets) {}

  private record Laid(Lay lay, List<Basket.Need> bill) {}

  /** Every lay of a leg with what it is made of, and of each item the fewest and the most. */
  private record Bills(List<Laid> laid, Map<String, Range> ranges) {}

  private record Range(Item item, int fewest, int most) {}

  /** The lays of each leg of a frame: alike for all frames of the same hose. */
  List<Offer> of(Frame frame) {
    List<Leg> legs = frame.legs();
    if (legs.size() == 1) {
      HoseLine hose = frame.hose();
      return List.of(offer(hose, new Terms(Run.of(legs.get(0)), Map.of(), true)));
    }
    return ofPairs
        .computeIfAbsent(frame.hose(), hose -> new IdentityHashMap<>())
        .computeIfAbsent(frame.last().hose(), hose -> new HashMap<>())
        .computeIfAbsent(legs.stream().map(Run::of).toList(), runs -> ofPair(legs, runs));
  }

  private List<Offer> ofPair(List<Leg> legs, List<Run> runs) {
    Map<String, Range> ours = bills(legs.get(0).hose(), runs.get(0)).ranges();
    Map<String, Range> theirs = bills(legs.get(1).hose(), runs.get(1)).ranges();
    Map<String, Double> sharedEach = new TreeMap<>();
    ours.forEach(
        (number, one) -> {
          Range other = theirs.get(number);
          if (other != null) {
            sharedEach.put(
                number,
                floor.ofOneOf(
                    one.item(), one.fewest() + other.fewest(), one.most() + other.most()));
          }
        });
    boolean ownGaskets = gaskets.apart(legs.get(0).hose().inlet(), legs.get(1).hose().inlet());
    List<Offer> offers = new ArrayList<>();
    for (int i = 0; i < legs.size(); i++) {
      offers.add(offer(legs.get(i).hose(), new Terms(runs.get(i), sharedEach, ownGaskets)));
    }
    return offers;
  }

  private Bills bills(HoseLine hose, Run run) {
    return bills
        .computeIfAbsent(hose, h -> new HashMap<>())
        .computeIfAbsent(run, r -> findBills(hose, r));
  }

  private Bills findBills(HoseLine hose, Run run) {
    List<Double> lengthsFt = hose.options().stream().map(SectionOption::lengthFt).toList();
    boolean couples = Joining.allowedRemovable(hose.outlet(), hose.inlet());
    List<Integer> most = hose.mostOfEach(run.lines());
    List<Laid> laid = new ArrayList<>();
    Map<String, Range> ranges = new HashMap<>();
    for (Lay lay : Lay.covering(lengthsFt, most, run.neededFt(), run.fewestSections())) {
      if (couples || lay.sections() == 1) {
        List<Basket.Need> bill = bill(hose, lay, run.lines());
        laid.add(new Laid(lay, bill));
        for (Basket.Need need : bill) {
          ranges.merge(
              need.item().number(),
              new Range(need.item(), need.quantity(), need.quantity()),
              (one, other) ->
                  new Range(
                      one.item(),
                      Math.min(one.fewest(), other.fewest()),
                      Math.max(one.most(), other.most())));
        }
      }
    }
    return new Bills(laid, ranges);
  }

  private Offer offer(HoseLine hose, Terms terms) {
    return known
        .computeIfAbsent(hose, h -> new HashMap<>())
        .computeIfAbsent(terms, t -> findOffer(hose, t));
  }

  private Offer findOffer(HoseLine hose, Terms terms) {
    List<Choice<Lay>> all = new ArrayList<>();
    List<Choice<Lay>> inStock = new ArrayList<>();
    for (Laid laid : bills(hose, terms.run()).laid()) {
      Lay lay = laid.lay();
      List<Basket.Need> bill = laid.bill();
      double lossPsi = job.service().isWater() ? lossPsi(hose, lay, terms.run()) : 0;
      double cost = cost(bill, terms.sharedEach()) + jointsCost(hose, lay, terms);
      all.add(new Choice<>(lay, cost, lossPsi, Double.POSITIVE_INFINITY));
      if (bill.stream().allMatch(need -> availability.toBeHad(need.item(), need.quantity()))) {
        inStock.add(all.get(all.size() - 1));
      }
    }
    List<Choice<Lay>> lays = inStock.isEmpty() ? all : inStock;
    lays.sort(
        Comparator.<Choice<Lay>>comparingDouble(Choice::leastCost)
            .thenComparingInt(choice -> choice.value().sections()));
    return new Offer(
        List.copyOf(lays),
        !inStock.isEmpty(),
        lays.stream().mapToDouble(Choice::lossPsi).min().orElse(0));
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
  private double jointsCost(HoseLine hose, Lay lay, Terms terms) {
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
