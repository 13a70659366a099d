package hosewright.fleet.budget;

import hosewright.catalogue.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The level-funding plan of a fleet's demand under its age limit. */
final class LevelPlan {
  private LevelPlan() {}

  /** Prices are those at the break of an item's average yearly quantity. */
  static FleetBudget.Level of(
      ItemDemand demand, BudgetPrices prices, BudgetRequest request, CurrencyUnit currency) {
    List<Item> articles = new ArrayList<>(demand.byItem().keySet());
    int years = request.years();
    long[][] cents = new long[years + 1][articles.size()];
    int[] dueBy = new int[years + 1];
    for (int a = 0; a < articles.size(); a++) {
      double[] sections = demand.byItem().get(articles.get(a));
      double all = 0;
      for (int year = 1; year <= years; year++) {
        all += sections[year];
        dueBy[year] += (int) Math.round(sections[year]);
      }
      for (int year = 1; year <= years; year++) {
        cents[year][a] =
            prices
                .unit(articles.get(a), Math.round(Math.ceil(all / years)), year)
                .getAmountMinorLong();
      }
    }
    for (int year = 1; year <= years; year++) {
      dueBy[year] += dueBy[year - 1];
    }
    LevelFunding.Plan plan =
        new LevelFunding(
                dueBy,
                queue(articles, demand.byItem(), dueBy[years], years),
                cents,
                request.overdueAllowed())
            .plan();
    return new FleetBudget.Level(
        Money.ofMinor(currency, plan.yearlyCents()),
        request.overdueAllowed(),
        plan.years().stream()
            .map(
                year ->
                    new FleetBudget.LevelYear(
                        year.year(),
                        year.bought(),
                        Money.ofMinor(currency, year.spentCents()),
                        Money.ofMinor(currency, year.carriedCents()),
                        year.overdue()))
            .toList());
  }

  private static int[] queue(
      List<Item> articles, Map<Item, double[]> sections, int length, int years) {
    int[] queue = new int[length];
    int place = 0;
    for (int year = 1; year <= years; year++) {
      for (int a = 0; a < articles.size(); a++) {
        long due = Math.round(sections.get(articles.get(a))[year]);
        for (int i = 0; i < due; i++) {
          queue[place++] = a;
        }
      }
    }
    return queue;
  }
}
