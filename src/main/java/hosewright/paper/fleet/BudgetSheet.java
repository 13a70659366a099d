package hosewright.paper.fleet;

import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetBudget.Method;
import hosewright.fleet.budget.FleetBudget.MethodYear;
import hosewright.fleet.budget.FleetBudget.Survival;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The first sheet: what to set aside in each year, by both methods, with charts. */
final class BudgetSheet {
  static final int[] WIDTHS = {14, 13, 16, 13, 16, 11, 11, 15, 15};
  static final String TOTAL = "budget_total";
  static final String SURVIVAL_TOTAL = "survival_total";
  static final String AGE_LIMIT = "age_limit";

  private final Page page;
  private final FleetBudget budget;
  private int first;
  private int last;
  private int chartRow;

  BudgetSheet(Page page, FleetBudget budget) {
    this.page = page;
    this.budget = budget;
  }

  void write(BudgetItemsSheet items, Optional<BudgetFailuresSheet> failures) {
    page.next();
    page.span(0, page.lastColumn(), "Hose replacement budget", Look.NAME);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        String.format(
            Locale.ROOT,
            "%,d usable sections, %,.0f ft, on %s; %d years; amounts in %s.",
            budget.fleet().sections(),
            budget.fleet().lengthFt(),
            budget.asked().from(),
            budget.asked().years(),
            BudgetWorkbook.currency(budget).getCode()),
        Look.TEXT);
    page.gap(6);
    input("Change of today's prices", budget.asked().priceChange(), "price_change");
    input("Rise of prices from year to year", budget.asked().escalation(), "escalation");
    input("Discount rate", budget.asked().discountRate(), "discount_rate");
    if (budget.ageLimit().isPresent()) {
      page.next();
      page.span(0, 2, "Age limit, years", Look.LABEL)
          .number(3, budget.asked().ageLimitYears().orElseThrow(), Look.NUMBER_INPUT)
          .named(3, AGE_LIMIT)
          .span(4, 6, "whole years", Look.SMALL);
    }
    page.gap(6);
    years(items, failures);
    notes();
    chartRow = page.rowNumber() + 1;
    page.finishedBelow(1);
  }

  private void input(String label, BigDecimal value, String name) {
    page.next();
    page.span(0, 2, label, Look.LABEL).number(3, value, Look.PERCENT_INPUT).named(3, name);
  }

  private void years(BudgetItemsSheet items, Optional<BudgetFailuresSheet> failures) {
    Optional<Method> bySurvival = budget.survival().method();
    String live =
        budget.purchases().purchaseBy().map(by -> by.replace('-', ' ')).orElse("no method");
    int heading =
        page.heading(
            List.of(
                "Year from",
                "Sections by " + live,
                "Cost by " + live,
                "Expected by survival",
                "Cost by survival",
                "80 % band, low",
                "80 % band, high",
                "Cost, low",
                "Cost, high"),
            Set.of(1, 2, 3, 4, 5, 6, 7, 8));
    first = heading + 1;
    for (int i = 0; i < budget.asked().years(); i++) {
      page.next();
      String number = "" + (i + 1);
      page.text(0, budget.asked().from().plusYears(i).toString(), Look.BODY)
          .formula(1, items.sectionsOfYear(number), Look.BODY_LOOSE)
          .formula(2, items.costOfYear(number), Look.BODY_MONEY);
      int index = i;
      bySurvival
          .map(method -> method.years().get(index))
          .ifPresent(year -> survivalYear(year, number, failures.orElseThrow()));
    }
    last = page.rowNumber();
    totals(bySurvival.isPresent());
  }

  private void survivalYear(MethodYear year, String number, BudgetFailuresSheet failures) {
    page.formula(3, failures.sectionsOfYear(number), Look.BODY_NUMBER)
        .formula(4, failures.costOfYear(number), Look.BODY_MONEY)
        .number(5, year.low().orElseThrow().sections(), Look.BODY_COUNT)
        .number(6, year.high().orElseThrow().sections(), Look.BODY_COUNT)
        .money(7, year.low().orElseThrow().cost(), Look.BODY_MONEY)
        .money(8, year.high().orElseThrow().cost(), Look.BODY_MONEY);
  }

  private void totals(boolean survival) {
    page.next();
    page.text(0, "All years", Look.TOTAL_LABEL)
        .formula(1, sum("B"), Look.LOOSE_STRONG)
        .formula(2, sum("C"), Look.MONEY_STRONG)
        .named(2, TOTAL);
    if (survival) {
      page.formula(3, sum("D"), Look.NUMBER_STRONG)
          .formula(4, sum("E"), Look.MONEY_STRONG)
          .named(4, SURVIVAL_TOTAL);
    }
    page.next();
    page.text(0, "Today's worth", Look.TOTAL_LABEL).formula(2, worth("C"), Look.MONEY_STRONG);
    if (survival) {
      page.formula(4, worth("E"), Look.MONEY_STRONG);
    }
  }

  private String sum(String column) {
    return "SUM(%s%d:%s%d)".formatted(column, first, column, last);
  }

  /** A year's cost falls at its end. */
  private String worth(String column) {
    return "NPV(discount_rate,%s%d:%s%d)".formatted(column, first, column, last);
  }

  private void notes() {
    page.gap(6);
    Survival survival = budget.survival();
    if (survival.method().isEmpty()) {
      note(
          "The test history does not suffice for a budget by survival: " + survival.reason() + ".");
    }
    note(
        "Sections and costs follow the input cells here, the counts on the sheet Ages and the"
            + " shape and scale on the sheet Survival. The band is simulated and stays as budgeted,"
            + " as do the sheets Locations (its sections), Level funding and What if.");
    budget
        .fleet()
        .unpriced()
        .forEach(
            hose ->
                note(
                    String.format(
                        Locale.ROOT,
                        "Not priced, no item replaces it: %.1f sections of %s.",
                        hose.sections(),
                        hose.hose())));
  }

  private void note(String sentence) {
    page.next();
    page.span(0, page.lastColumn(), sentence, Look.SMALL);
  }

  /** Draws the charts once the formulas have values. */
  void charts() {
    BudgetCharts charts = new BudgetCharts(page.sheet(), first - 1, last - 1);
    boolean survival = budget.survival().method().isPresent();
    charts.columns(chartRow + 1, "Sections to replace", 1, survival ? 3 : -1, "by survival", "0");
    charts.columns(chartRow + 19, "Cost", 2, survival ? 4 : -1, "by survival", "#,##0");
  }
}
