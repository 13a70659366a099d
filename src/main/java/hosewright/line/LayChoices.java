package hosewright.line;

import hosewright.hydraulics.FrictionLaw;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** The lays of a frame, cheapest first. */
final class LayChoices {
  private final Job job;
  private final Availability availability;
  private final PriceFloor floor;
  private final Gaskets gaskets;
  private final Map<HoseLine, Offer> known = new IdentityHashMap<>();

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

  /** The lays of a frame: alike for all frames of the same hose. */
  Offer of(Frame frame) {
    return known.computeIfAbsent(frame.hose(), hose -> offer(hose, frame.lines()));
  }

  private Offer offer(HoseLine hose, int lines) {
    List<Double> lengthsFt = hose.options().stream().map(SectionOption::lengthFt).toList();
    boolean couples = Joining.allowedRemovable(hose.outlet(), hose.inlet());
    List<Choice<Lay>> all = new ArrayList<>();
    List<Choice<Lay>> inStock = new ArrayList<>();
    List<Integer> most = hose.mostOfEach(lines);
    for (Lay lay : Lay.covering(lengthsFt, most, job.run().neededFt())) {
      if (couples || lay.sections() == 1) {
        List<Basket.Need> bill = bill(hose, lay, lines);
        double lossPsi = job.service().isWater() ? lossPsi(hose, lay, lines) : 0;
        double cost = cost(bill) + jointsCost(hose, lay, lines);
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

  private double lossPsi(HoseLine hose, Lay lay, int lines) {
    double lossPsi = 0;
    for (int i = 0; i < hose.options().size(); i++) {
      SectionOption option = hose.options().get(i);
      double lengthFt = lay.counts().get(i) * option.lengthFt();
      if (lengthFt > 0) {
        FrictionLaw law = FrictionChoice.of(job, hose, option.isOwned()).law();
        lossPsi += law.lossPsi(job.flowGpm() / lines, lengthFt);
      }
    }
    return lossPsi;
  }

  private List<Basket.Need> bill(HoseLine hose, Lay lay, int lines) {
    Basket basket = new Basket();
    basket.addSections(hose, lay, lines, job.conditions().spareSections());
    return basket.needs();
  }

  /** Exact, unless the buyer asks for more of the same besides the line. */
  private double cost(List<Basket.Need> bill) {
    double cost = 0;
    for (Basket.Need need : bill) {
      cost += floor.ofAtLeast(need.item(), need.quantity());
    }
    return cost;
  }

  /** The gaskets between sections; those at either end come on top in the whole plan. */
  private double jointsCost(HoseLine hose, Lay lay, int lines) {
    return GasketCount.between(hose, (lay.sections() - 1) * lines)
        .map(count -> gaskets.leastCost(count.end(), count.bought() + count.spare()))
        .orElse(0.0);
  }
}
