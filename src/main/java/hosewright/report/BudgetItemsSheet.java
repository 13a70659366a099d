package hosewright.report;

import hosewright.fleet.FleetBudget;
import hosewright.fleet.FleetBudget.Need;
import hosewright.fleet.FleetBudget.PriceBreak;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is bought of each item in each year, priced from the breaks beside it. */
final class BudgetItemsSheet {
  static final int[] WIDTHS = {18, 48, 7, 11, 13, 15};
  static final int[] BREAK_WIDTHS = {18, 48, 14, 14};

  private final Page page;
  private final Page breaks;
  private final FleetBudget budget;
  private final Map<String, BreaksSheet.Rows> rows = new LinkedHashMap<>();
  private int first;
  private int last;

  BudgetItemsSheet(Page page, Page breaks, FleetBudget budget) {
    this.page = page;
    this.breaks = breaks;
    this.budget = budget;
  }

  void write() {
    writeBreaks();
    page.next();
    page.span(0, page.lastColumn(), "What is bought", Look.TITLE);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "One row for each item and year. The unit price is the break of the year's quantity,"
            + " changed and escalated as the first sheet says, rounded to the cent.",
        Look.TEXT);
    int heading =
        page.heading(
            List.of("Item", "Description", "Year", "Sections", "Unit price", "Cost"),
            Set.of(2, 3, 4, 5));
    first = heading + 1;
    for (Need need : budget.needs()) {
      for (int year = 1; year <= budget.years(); year++) {
        row(need, year);
      }
    }
    last = Math.max(first, page.rowNumber());
    page.finished(heading);
  }

  private void row(Need need, int year) {
    int row = page.next();
    double sections = need.sections().get(year - 1);
    int places = BudgetWorkbook.currency(budget).getDecimalPlaces();
    String listed =
        rows.get(need.item()).unitPriceAt("ROUND(D" + row + ",0)", BudgetWorkbook.BREAKS, "C", "D");
    page.text(0, need.item(), Look.BODY)
        .text(1, need.description(), Look.BODY)
        .number(2, year, Look.BODY_COUNT)
        .number(3, sections, sections == Math.rint(sections) ? Look.BODY_INPUT : Look.BODY_NUMBER)
        .formula(
            4,
            "ROUND(ROUND(%s*(1+price_change),%d)*(1+escalation)^(C%d-1),%d)"
                .formatted(listed, places, row, places),
            Look.BODY_MONEY)
        .formula(5, "ROUND(D%d*E%d,%d)".formatted(row, row, places), Look.BODY_MONEY);
  }

  /** A formula for the cost of a year, whose number stands in a cell of another sheet. */
  String costOfYear(String yearCell) {
    return "SUMIFS(%s,%s,%s)".formatted(range("F"), range("C"), yearCell);
  }

  /** A formula for the sections of a year. */
  String sectionsOfYear(String yearCell) {
    return "SUMIFS(%s,%s,%s)".formatted(range("D"), range("C"), yearCell);
  }

  /** A formula for an item's unit price in a year. */
  String unitPrice(String itemCell, int year) {
    return "SUMIFS(%s,%s,%s,%s,%d)".formatted(range("E"), range("A"), itemCell, range("C"), year);
  }

  private String range(String column) {
    return BudgetWorkbook.ITEMS + "!$" + column + "$" + first + ":$" + column + "$" + last;
  }

  private void writeBreaks() {
    breaks.next();
    breaks.span(0, breaks.lastColumn(), "Price breaks the budget was made with", Look.TITLE);
    int heading =
        breaks.heading(List.of("Item", "Description", "From quantity", "Unit price"), Set.of(2, 3));
    for (Need need : budget.needs()) {
      int from = breaks.rowNumber() + 1;
      for (PriceBreak step : need.breaks()) {
        breaks.next();
        breaks
            .text(0, need.item(), Look.BODY)
            .text(1, need.description(), Look.BODY)
            .number(2, step.minimumQuantity(), Look.BODY_COUNT)
            .money(3, step.unitPrice(), Look.BODY_MONEY);
      }
      rows.put(need.item(), new BreaksSheet.Rows(from, breaks.rowNumber()));
    }
    breaks.finished(heading);
  }
}
