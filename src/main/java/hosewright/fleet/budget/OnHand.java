package hosewright.fleet.budget;

import hosewright.catalogue.Item;
import hosewright.fleet.budget.FleetBudget.AgeCount;
import hosewright.fleet.budget.FleetBudget.Hose;
import hosewright.fleet.budget.FleetBudget.PriceBreak;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Usable sections by the item that would replace them and by age: what both budgets start from. */
final class OnHand {
  private final Map<Optional<Item>, int[]> ages = new LinkedHashMap<>();
  private final Map<Optional<Item>, Integer> atOnce = new LinkedHashMap<>();

  private OnHand() {}

  /**
   * The sections counted.
   *
   * @param breaks today's net prices of an item
   */
  static List<Hose> of(
      HoseAges fleet, BudgetPrices prices, Function<Item, List<PriceBreak>> breaks) {
    OnHand onHand = new OnHand();
    fleet
        .counts()
        .forEach(
            (place, months) -> {
              int[] sum = onHand.ages(prices.item(place.kind()));
              for (int age = 0; age < months.length; age++) {
                sum[age] += months[age];
              }
            });
    fleet
        .mustGo()
        .forEach(
            (place, count) -> {
              Optional<Item> item = prices.item(place.kind());
              onHand.ages(item);
              onHand.atOnce.merge(item, count, Integer::sum);
            });
    List<Hose> hose = new ArrayList<>();
    onHand.ages.forEach(
        (item, months) ->
            hose.add(
                new Hose(
                    item.map(Item::number).orElse(""),
                    item.map(Item::description).orElse(""),
                    onHand.atOnce.getOrDefault(item, 0),
                    counted(months),
                    item.map(breaks).orElse(List.of()))));
    return hose;
  }

  private int[] ages(Optional<Item> item) {
    return ages.computeIfAbsent(item, key -> new int[HoseAges.OLDEST_MONTHS + 1]);
  }

  private static List<AgeCount> counted(int[] months) {
    List<AgeCount> counts = new ArrayList<>();
    for (int age = 0; age < months.length; age++) {
      if (months[age] > 0) {
        counts.add(new AgeCount(age, months[age]));
      }
    }
    return counts;
  }
}
