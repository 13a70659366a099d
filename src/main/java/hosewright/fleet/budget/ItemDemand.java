package hosewright.fleet.budget;

import hosewright.catalogue.Item;
import hosewright.fleet.record.HoseKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** A demand for kinds of hose turned into one for items, since breaks go by item. */
final class ItemDemand {
  private final int years;
  private final Map<Item, double[]> byItem = new LinkedHashMap<>();
  private final Map<String, Map<Item, double[]>> byLocation = new LinkedHashMap<>();
  private final Map<HoseKind, Double> unpriced = new LinkedHashMap<>();

  ItemDemand(Replacements demand, BudgetPrices prices) {
    this.years = demand.years();
    for (HoseAges.Place place : demand.places()) {
      Optional<Item> item = prices.item(place.kind());
      for (int year = 1; year <= years; year++) {
        double sections = demand.of(place, year);
        if (sections > 0 && item.isPresent()) {
          add(byItem, item.get(), year, sections);
          add(
              byLocation.computeIfAbsent(place.location(), key -> new LinkedHashMap<>()),
              item.get(),
              year,
              sections);
        } else if (sections > 0) {
          unpriced.merge(place.kind(), sections, Double::sum);
        }
      }
    }
  }

  private void add(Map<Item, double[]> counts, Item item, int year, double sections) {
    counts.computeIfAbsent(item, key -> new double[years + 1])[year] += sections;
  }

  Map<Item, double[]> byItem() {
    return byItem;
  }

  Money cost(int year, BudgetPrices prices, Money nothing) {
    Money sum = nothing;
    for (Map.Entry<Item, double[]> need : byItem.entrySet()) {
      sum = sum.plus(prices.cost(need.getKey(), need.getValue()[year], year));
    }
    return sum;
  }

  /** What the first year costs when each location orders for itself. */
  Money apart(BudgetPrices prices, Money nothing) {
    Money sum = nothing;
    for (Map<Item, double[]> needs : byLocation.values()) {
      for (Map.Entry<Item, double[]> need : needs.entrySet()) {
        sum = sum.plus(prices.cost(need.getKey(), need.getValue()[1], 1));
      }
    }
    return sum;
  }

  List<FleetBudget.LocationNeed> locationNeeds() {
    List<FleetBudget.LocationNeed> needs = new ArrayList<>();
    byLocation.forEach(
        (location, items) ->
            items.forEach(
                (item, sections) ->
                    needs.add(
                        new FleetBudget.LocationNeed(location, item.number(), list(sections)))));
    return needs;
  }

  List<FleetBudget.Unpriced> unpriced() {
    return unpriced.entrySet().stream()
        .map(kind -> new FleetBudget.Unpriced(kind.getKey().toString(), kind.getValue()))
        .toList();
  }

  static List<Double> list(double[] fromFirstYear) {
    List<Double> list = new ArrayList<>();
    for (int year = 1; year < fromFirstYear.length; year++) {
      list.add(fromFirstYear[year]);
    }
    return list;
  }
}
