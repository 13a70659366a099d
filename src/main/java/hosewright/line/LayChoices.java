package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.thread.Mating;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The lays of a frame, cheapest first. */
final class LayChoices {
  private final Job job;
  private final PriceFloor floor;
  private final Gaskets gaskets;

  LayChoices(Job job, PriceFloor floor, Gaskets gaskets) {
    this.job = job;
    this.floor = floor;
    this.gaskets = gaskets;
  }

  /** Empty when sections that do not couple to each other would have to. */
  List<Choice<Lay>> of(Frame frame) {
    HoseLine hose = frame.hose();
    List<Double> lengthsFt = hose.options().stream().map(SectionOption::lengthFt).toList();
    boolean couples = Mating.of(hose.outlet(), hose.inlet()).mates();
    List<Choice<Lay>> choices = new ArrayList<>();
    for (Lay lay : Lay.covering(lengthsFt, job.run().neededFt())) {
      if (couples || lay.sections() == 1) {
        choices.add(
            new Choice<>(
                lay,
                sectionsCost(frame, lay) + jointsCost(frame, lay),
                PressureBudget.layLossPsi(job, frame, lay.lengthFt())));
      }
    }
    choices.sort(
        Comparator.<Choice<Lay>>comparingDouble(Choice::leastCost)
            .thenComparingInt(choice -> choice.value().sections()));
    return choices;
  }

  /** Exact, since nothing else in a plan is made of hose or what goes on it. */
  private double sectionsCost(Frame frame, Lay lay) {
    Map<String, Integer> quantities = new LinkedHashMap<>();
    Map<String, Item> items = new LinkedHashMap<>();
    for (int i = 0; i < frame.hose().options().size(); i++) {
      int sections = lay.counts().get(i) * frame.lines();
      if (sections > 0) {
        frame
            .hose()
            .options()
            .get(i)
            .bill()
            .forEach(
                (item, quantity) -> {
                  items.put(item.number(), item);
                  quantities.merge(item.number(), quantity * sections, Integer::sum);
                });
      }
    }
    double cost = 0;
    for (Map.Entry<String, Integer> line : quantities.entrySet()) {
      cost += floor.ofAll(items.get(line.getKey()), line.getValue());
    }
    return cost;
  }

  /** The gaskets between sections; those at either end come on top in the whole plan. */
  private double jointsCost(Frame frame, Lay lay) {
    int joints = (lay.sections() - 1) * frame.lines();
    return GasketCount.between(frame.hose(), joints)
        .flatMap(
            count ->
                gaskets
                    .item(count.end())
                    .map(item -> floor.ofAll(item, count.bought() + count.spare())))
        .orElse(0.0);
  }
}
