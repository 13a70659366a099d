package hosewright.paper.fleet;

import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetBudget.Hose;
import hosewright.fleet.budget.FleetBudget.PriceBreak;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is bought of each item in each year, priced from the breaks beside it. */
final class BudgetItemsSheet {
  static final int[] WIDTHS = {18, 48, 7, 11, 13, 15};
  static final int[] BREAK_WIDTHS = {18, 48, 14, 14};

  private final Page page;
  private final Page breaks;
  private final FleetBudget budget;
  private final Map<String, BreakRows> rows = new LinkedHashMap<>();
  private int first;
  private int last;

  BudgetItemsSheet(Page page, Page breaks, FleetBudget budget) {
    this.page = page;
    this.breaks = breaks;
    this.budget = budget;
  }

  void write(BudgetAgesSheet ages, Optional<BudgetFailuresSheet> failures) {
    page.next();
    page.span(0, page.lastColumn(), "What is bought", Look.TITLE);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "One row for each item and year. Sections follow the sheets Ages and "
            + (budget.ageLimit().isPresent() ? "Budget (age limit)" : "By survival")
            + " until another number is typed over them. The unit price is the break of the year's"
            + " quantity, changed and escalated as the first sheet says, rounded to the cent.",
        Look.TEXT);
    int heading =
        page.heading(
            List.of("Item", "Description", "Year", "Sections", "Unit price", "Cost"),
            Set.of(2, 3, 4, 5));
    first = heading + 1;
    for (Hose hose : budget.purchases().purchaseBy().isPresent() ? bought() : List.<Hose>of()) {
      for (int year = 1; year <= budget.asked().years(); year++) {
        row(hose, year, ages, failures);
      }
    }
    last = Math.max(first, page.rowNumber());
    page.finished(heading);
  }

  private void row(
      Hose hose, int year, BudgetAgesSheet ages, Optional<BudgetFailuresSheet> failures) {
    int row = page.next();
    int places = BudgetWorkbook.currency(budget).getDecimalPlaces();
    page.text(0, hose.item(), Look.BODY)
        .text(1, hose.description(), Look.BODY)
        .number(2, year, Look.BODY_COUNT)
        .formula(
            3,
            budget.ageLimit().isPresent()
                ? byAgeLimit(hose, year, row, ages)
                : failures.orElseThrow().sections("A" + row, "C" + row),
            Look.BODY_LOOSE_INPUT)
        .formula(4, priced(hose.item(), "D" + row, "C" + row), Look.BODY_MONEY)
        .formula(5, "ROUND(D%d*E%d,%d)".formatted(row, row, places), Look.BODY_MONEY);
  }

  /** What reaches the limit in a year, and what was bought a whole limit before. */
  private static String byAgeLimit(Hose hose, int year, int row, BudgetAgesSheet ages) {
    String reached = ages.reachLimit(hose, "C" + row);
    return year == 1
        ? ages.atOnce(hose) + "+" + reached
        : "%s+IF(C%d>%s,INDEX(D$%d:D$%d,C%d-%s),0)"
            .formatted(
                reached,
                row,
                BudgetSheet.AGE_LIMIT,
                row - year + 1,
                row - 1,
                row,
                BudgetSheet.AGE_LIMIT);
  }

  /** A formula for an item's unit price at the quantity and in the year of cells of a sheet. */
  String priced(String item, String quantityCell, String yearCell) {
    int places = BudgetWorkbook.currency(budget).getDecimalPlaces();
    String listed = rows.get(item).unitPriceAt("ROUND(" + quantityCell + ",0)");
    return "ROUND(ROUND(%s*(1+price_change),%d)*(1+escalation)^(%s-1),%d)"
        .formatted(listed, places, yearCell, places);
  }

  private List<Hose> bought() {
    return budget.fleet().hose().stream().filter(hose -> !hose.item().isEmpty()).toList();
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

  /** Writes the breaks that prices are looked up in; goes before all sheets that look. */
  void writeBreaks() {
    breaks.next();
    breaks.span(0, breaks.lastColumn(), "Price breaks the budget was made with", Look.TITLE);
    int heading =
        breaks.heading(List.of("Item", "Description", "From quantity", "Unit price"), Set.of(2, 3));
    for (Hose need : bought()) {
      int from = breaks.rowNumber() + 1;
      for (PriceBreak step : need.breaks()) {
        breaks.next();
        breaks
            .text(0, need.item(), Look.BODY)
            .text(1, need.description(), Look.BODY)
            .number(2, step.minimumQuantity(), Look.BODY_COUNT)
            .money(3, step.unitPrice(), Look.BODY_MONEY);
      }
      rows.put(
          need.item(), new BreakRows(BudgetWorkbook.BREAKS, "C", "D", from, breaks.rowNumber()));
    }
    breaks.finished(heading);
  }
}
