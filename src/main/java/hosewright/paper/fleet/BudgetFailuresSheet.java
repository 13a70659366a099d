package hosewright.paper.fleet;

import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetBudget.Hose;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What the law expects to fail of each item in each year, live from ages, shape and scale. */
final class BudgetFailuresSheet {
  static final int[] WIDTHS = {18, 7, 15, 15, 13, 13, 15};

  private final Page page;
  private final FleetBudget budget;
  private int first;
  private int last;

  BudgetFailuresSheet(Page page, FleetBudget budget) {
    this.page = page;
    this.budget = budget;
  }

  void write(BudgetAgesSheet ages, BudgetItemsSheet items) {
    page.next();
    page.span(0, page.lastColumn(), "What fails by the law", Look.TITLE);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "Failures of the hose on hand, and of what replaced it in an earlier year: a replacement"
            + " is new at the end of the year it is bought in.",
        Look.TEXT);
    int heading =
        page.heading(
            List.of(
                "Item",
                "Year",
                "Of today's hose",
                "Of replacements",
                "Sections",
                "Unit price",
                "Cost"),
            Set.of(1, 2, 3, 4, 5, 6));
    first = heading + 1;
    for (Hose hose : budget.fleet().hose()) {
      for (int year = 1; year <= budget.asked().years(); year++) {
        row(hose, year, ages, items);
      }
    }
    last = Math.max(first, page.rowNumber());
    page.finished(heading);
  }

  private void row(Hose hose, int year, BudgetAgesSheet ages, BudgetItemsSheet items) {
    int row = page.next();
    List<String> again = new ArrayList<>();
    for (int earlier = 1; earlier < year; earlier++) {
      again.add("E%d*%s".formatted(row - earlier, ages.failsWhenNew(earlier)));
    }
    String today = ages.firstFailures(hose, year);
    page.text(0, hose.item().isEmpty() ? "no item" : hose.item(), Look.BODY)
        .number(1, year, Look.BODY_COUNT)
        .formula(2, year == 1 ? ages.atOnce(hose) + "+" + today : today, Look.BODY_NUMBER)
        .formula(3, again.isEmpty() ? "0" : String.join("+", again), Look.BODY_NUMBER)
        .formula(4, "C%d+D%d".formatted(row, row), Look.BODY_NUMBER);
    if (!hose.item().isEmpty()) {
      page.formula(5, items.priced(hose.item(), "E" + row, "B" + row), Look.BODY_MONEY)
          .formula(
              6,
              "ROUND(E%d*F%d,%d)"
                  .formatted(row, row, BudgetWorkbook.currency(budget).getDecimalPlaces()),
              Look.BODY_MONEY);
    }
  }

  /** A formula for the sections of an item in a year. */
  String sections(String itemCell, String yearCell) {
    return "SUMIFS(%s,%s,%s,%s,%s)"
        .formatted(range("E"), range("A"), itemCell, range("B"), yearCell);
  }

  /** A formula for all sections of a year, replaced by an item or not. */
  String sectionsOfYear(String year) {
    return "SUMIFS(%s,%s,%s)".formatted(range("E"), range("B"), year);
  }

  /** A formula for the cost of a year. */
  String costOfYear(String year) {
    return "SUMIFS(%s,%s,%s)".formatted(range("G"), range("B"), year);
  }

  private String range(String column) {
    return "'%s'!$%s$%d:$%s$%d".formatted(BudgetWorkbook.FAILURES, column, first, column, last);
  }
}
