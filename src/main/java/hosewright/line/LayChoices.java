package hosewright.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The lays of a frame's legs, cheapest first. */
final class LayChoices {
  private final Job job;
  private final Availability availability;
  private final PriceFloor floor;
  private final Gaskets gaskets;
  private final Map<HoseLine, Map<Terms, Offer>> known = new IdentityHashMap<>();
  private final Map<HoseLine, Set<String>> numbers = new IdentityHashMap<>();

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

  /**
   * All of a leg that decides what its lays cost, its hose apart.
   *
   * @param shared numbers of items that another leg may buy as well, so that a price break may be
   *     reached together
   */
  private record Terms(
      int lines, double neededFt, int fewestSections, boolean alone, Set<String> shared) {}

  /** The lays of each leg of a frame: alike for all frames of the same hose. */
  List<Offer> of(Frame frame) {
    List<Leg> legs = frame.legs();
    Set<String> shared = legs.size() == 1 ? Set.of() : shared(legs.get(0), legs.get(1));
    List<Offer> offers = new ArrayList<>();
    for (Leg leg : legs) {
      Terms terms =
          new Terms(leg.lines(), leg.neededFt(), leg.fewestSections(), legs.size() == 1, shared);
      offers.add(
          known
              .computeIfAbsent(leg.hose(), hose -> new HashMap<>())
              .computeIfAbsent(terms, t -> offer(leg.hose(), t)));
    }
    return offers;
  }

  private Set<String> shared(Leg one, Leg other) {
    Set<String> shared = new TreeSet<>(itemNumbers(one));
    shared.retainAll(itemNumbers(other));
    return shared;
  }

  private Set<String> itemNumbers(Leg leg) {
    return numbers.computeIfAbsent(leg.hose(), hose -> leg.itemNumbers());
  }

  private Offer offer(HoseLine hose, Terms terms) {
    List<Double> lengthsFt = hose.options().stream().map(SectionOption::lengthFt).toList();
    boolean couples = Joining.allowedRemovable(hose.outlet(), hose.inlet());
    List<Choice<Lay>> all = new ArrayList<>();
    List<Choice<Lay>> inStock = new ArrayList<>();
    List<Integer> most = hose.mostOfEach(terms.lines());
    for (Lay lay : Lay.covering(lengthsFt, most, terms.neededFt(), terms.fewestSections())) {
      if (couples || lay.sections() == 1) {
        List<Basket.Need> bill = bill(hose, lay, terms.lines());
        double lossPsi = job.service().isWater() ? lossPsi(hose, lay, terms) : 0;
        double cost = cost(bill, terms.shared()) + jointsCost(hose, lay, terms);
        all.add(new Choice<>(lay, cost, lossPsi, Double.POSITIVE_INFINITY));
        if (bill.stream().allMatch(need -> availability.toBeHad(need.item(), need.quantity()))) {
          inStock.add(all.get(all.size() - 1));
        }
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

  private double lossPsi(HoseLine hose, Lay lay, Terms terms) {
    return LegFigures.frictionPsi(job, hose, lay, job.flowGpm() / terms.lines());
  }

  private List<Basket.Need> bill(HoseLine hose, Lay lay, int lines) {
    Basket basket = new Basket();
    basket.addSections(hose, lay, lines, job.conditions().spareSections());
    return basket.needs();
  }

  /**
   * Exact, unless the buyer asks for more of the same besides the line or another leg does; what
   * may be bought for both legs counts at the best price there is.
   */
  private double cost(List<Basket.Need> bill, Set<String> shared) {
    double cost = 0;
    for (Basket.Need need : bill) {
      cost +=
          shared.contains(need.item().number())
              ? floor.ofOneOfAny(need.item()) * need.quantity()
              : floor.ofAtLeast(need.item(), need.quantity());
    }
    return cost;
  }

  /**
   * The gaskets between sections; those at either end come on top in the whole plan. Of two legs
   * nothing is counted: they may share their spares and their price breaks.
   */
  private double jointsCost(HoseLine hose, Lay lay, Terms terms) {
    int joints = Math.max(0, lay.sections() - terms.fewestSections()) * terms.lines();
    return terms.alone()
        ? GasketCount.between(hose, joints)
            .map(count -> gaskets.leastCost(count.end(), count.bought() + count.spare()))
            .orElse(0.0)
        : 0;
  }
}
