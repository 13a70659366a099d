package hosewright.paper.fleet;

import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetBudget.LocationNeed;
import hosewright.paper.sheet.Cells;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** What each location needs of each item in each year, at the whole fleet's prices. */
final class BudgetLocationsSheet {
  private static final int YEARS_FROM = 2;

  private final Page page;
  private final FleetBudget budget;

  BudgetLocationsSheet(Page page, FleetBudget budget) {
    this.page = page;
    this.budget = budget;
  }

  static int[] widths(FleetBudget budget) {
    return IntStream.concat(
            IntStream.of(20, 20),
            IntStream.concat(
                IntStream.range(0, budget.asked().years()).map(year -> 8),
                IntStream.of(10, 14, 15)))
        .toArray();
  }

  void write(BudgetItemsSheet items) {
    page.next();
    page.span(0, page.lastColumn(), "By location, sections in each year", Look.TITLE);
    List<String> names = new ArrayList<>(List.of("Location", "Item"));
    for (int year = 1; year <= budget.asked().years(); year++) {
      names.add("" + year);
    }
    names.addAll(List.of("All years", "Cost, year 1", "Cost, all years"));
    Set<Integer> figures = new HashSet<>();
    IntStream.range(YEARS_FROM, names.size()).forEach(figures::add);
    int heading = page.heading(names, figures);
    int first = heading + 1;
    budget.purchases().locations().stream()
        .sorted(Comparator.comparing(LocationNeed::location).thenComparing(LocationNeed::item))
        .forEach(need -> row(need, items));
    totals(first);
    page.finished(heading);
  }

  private void row(LocationNeed need, BudgetItemsSheet items) {
    int row = page.next();
    page.text(0, need.location(), Look.BODY).text(1, need.item(), Look.BODY);
    List<String> costs = new ArrayList<>();
    for (int year = 1; year <= budget.asked().years(); year++) {
      int column = YEARS_FROM + year - 1;
      page.number(column, need.sections().get(year - 1), Look.BODY_LOOSE);
      costs.add(Cells.letter(column) + row + "*" + items.unitPrice("$B" + row, year));
    }
    int after = YEARS_FROM + budget.asked().years();
    page.formula(
            after,
            "SUM(%s%d:%s%d)".formatted(Cells.letter(YEARS_FROM), row, Cells.letter(after - 1), row),
            Look.BODY_LOOSE)
        .formula(after + 1, costs.get(0), Look.BODY_MONEY)
        .formula(after + 2, String.join("+", costs), Look.BODY_MONEY);
  }

  private void totals(int first) {
    int last = page.rowNumber();
    if (last < first) {
      return;
    }
    page.next();
    page.span(0, 1, "All locations", Look.TOTAL_LABEL);
    for (int column = YEARS_FROM; column <= page.lastColumn(); column++) {
      String letter = Cells.letter(column);
      page.formula(
          column,
          "SUM(%s%d:%s%d)".formatted(letter, first, letter, last),
          column > YEARS_FROM + budget.asked().years() ? Look.MONEY_STRONG : Look.LOOSE_STRONG);
    }
  }
}
