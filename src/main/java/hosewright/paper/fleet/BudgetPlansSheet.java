package hosewright.paper.fleet;

import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetBudget.Level;
import hosewright.fleet.budget.FleetBudget.LevelYear;
import hosewright.fleet.budget.FleetBudget.WhatIf;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The level-funding plan, and the totals under other limits and prices. */
final class BudgetPlansSheet {
  static final int[] LEVEL_WIDTHS = {10, 12, 16, 16, 12, 16};
  static final int[] WHAT_IF_WIDTHS = {16, 16, 14, 18, 18};

  private BudgetPlansSheet() {}

  static void level(Page page, FleetBudget budget) {
    page.next();
    page.span(0, page.lastColumn(), "Level funding", Look.TITLE);
    Optional<Level> level = budget.level();
    page.next();
    if (level.isEmpty()) {
      page.span(0, page.lastColumn(), "No age limit is set, so nothing falls due.", Look.TEXT);
      page.finishedBelow(1);
      return;
    }
    page.span(
        0,
        page.lastColumn(),
        "The least equal yearly spend that never leaves more than "
            + level.get().overdueAllowed()
            + " sections overdue at a year's end. Oldest first; money left over is kept for later"
            + " years without interest; prices at the break of an item's average yearly quantity.",
        Look.TEXT);
    page.next();
    page.span(0, 2, "Equal yearly spend", Look.LABEL)
        .money(3, level.get().yearly(), Look.MONEY_STRONG)
        .named(3, "level_yearly");
    int heading =
        page.heading(
            List.of("Year", "Bought", "Spent", "Kept, as planned", "Overdue", "Kept, recalculated"),
            Set.of(0, 1, 2, 3, 4, 5));
    for (LevelYear year : level.get().years()) {
      int row = page.next();
      page.number(0, year.year(), Look.BODY_COUNT)
          .number(1, year.bought(), Look.BODY_COUNT)
          .money(2, year.spent(), Look.BODY_MONEY)
          .money(3, year.carried(), Look.BODY_MONEY)
          .number(4, year.overdue(), Look.BODY_COUNT)
          .formula(
              5,
              "level_yearly*A%d-SUM(C$%d:C%d)".formatted(row, heading + 1, row),
              Look.BODY_MONEY);
    }
    page.finished(heading);
  }

  static void whatIf(Page page, FleetBudget budget) {
    page.next();
    page.span(0, page.lastColumn(), "Other age limits and prices", Look.TITLE);
    int heading =
        page.heading(
            List.of("Age limit, years", "Prices", "Sections", "Total", "Today's worth"),
            Set.of(0, 1, 2, 3, 4));
    for (WhatIf answer : budget.whatIf()) {
      page.next();
      page.number(0, answer.ageLimitYears(), Look.BODY_COUNT)
          .text(
              1,
              answer.priceChange().movePointRight(2).stripTrailingZeros().toPlainString() + " %",
              Look.BODY_CENTRE)
          .number(2, answer.sections(), Look.BODY_COUNT)
          .money(3, answer.total(), Look.BODY_MONEY)
          .money(4, answer.presentValue(), Look.BODY_MONEY);
    }
    page.finished(heading);
  }
}
