package hosewright.door.shell.fleet;

import hosewright.catalogue.MoneyWords;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Bars;
import hosewright.door.shell.words.Prose;
import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetBudget.Grouping;
import hosewright.fleet.budget.FleetBudget.Level;
import hosewright.fleet.budget.FleetBudget.LevelYear;
import hosewright.fleet.budget.FleetBudget.Method;
import hosewright.fleet.budget.FleetBudget.MethodYear;
import hosewright.fleet.budget.FleetBudget.Need;
import hosewright.fleet.budget.FleetBudget.Survival;
import hosewright.fleet.budget.FleetBudget.WhatIf;
import hosewright.fleet.record.TestRule;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/** A budget in words, tables and charts. */
final class FleetBudgetText {
  private final FleetBudget budget;
  private final Screen screen;
  private final Prose prose;

  private FleetBudgetText(FleetBudget budget, Screen screen) {
    this.budget = budget;
    this.screen = screen;
    this.prose = new Prose(screen);
  }

  static String of(FleetBudget budget, Screen screen) {
    FleetBudgetText text = new FleetBudgetText(budget, screen);
    text.heading();
    text.methods();
    text.survival();
    text.purchase();
    text.budget.level().ifPresent(text::level);
    text.budget.purchases().grouping().ifPresent(text::grouping);
    text.whatIf();
    return text.prose.toString();
  }

  private void heading() {
    prose.line(
        String.format(
            Locale.ROOT,
            "%,d usable sections, %,.0f ft; %d years from %s; prices rise %s a year%s; today's"
                + " worth at %s.",
            budget.fleet().sections(),
            budget.fleet().lengthFt(),
            budget.asked().years(),
            budget.asked().from(),
            percent(budget.asked().escalation()),
            budget.asked().priceChange().signum() == 0
                ? ""
                : " from today's changed by " + percent(budget.asked().priceChange()),
            percent(budget.asked().discountRate())));
    if (budget.ageLimit().isEmpty()) {
      TestRule advice = TestRule.advisedLife();
      prose.line(
          String.format(
              Locale.ROOT,
              "No age limit is set, so nothing is budgeted by age: --age-limit YEARS sets one."
                  + " NFPA 1962 leaves it to the user; %.0f years are often advised, which is no"
                  + " rule (%s).",
              advice.value(),
              advice.source()));
    }
  }

  private void methods() {
    Optional<Method> byAge = budget.ageLimit();
    Optional<Method> bySurvival = budget.survival().method();
    Table table =
        Table.of("year from", "by age", "cost", "by survival", "cost", "80 % band", "cost band")
            .numbers(1, 2, 3, 4, 5, 6);
    for (int i = 0; i < budget.asked().years(); i++) {
      Optional<MethodYear> age = year(byAge, i);
      Optional<MethodYear> lived = year(bySurvival, i);
      table.row(
          budget.asked().from().plusYears(i),
          age.map(y -> whole(y.sections())).orElse("-"),
          age.map(y -> MoneyWords.of(y.cost())).orElse("-"),
          lived.map(y -> tenth(y.sections())).orElse("-"),
          lived.map(y -> MoneyWords.of(y.cost())).orElse("-"),
          lived.map(FleetBudgetText::sectionsBand).orElse("-"),
          lived.map(FleetBudgetText::costBand).orElse("-"));
    }
    table.row(
        "total",
        byAge.map(m -> whole(m.sections())).orElse("-"),
        byAge.map(m -> MoneyWords.of(m.total())).orElse("-"),
        bySurvival.map(m -> tenth(m.sections())).orElse("-"),
        bySurvival.map(m -> MoneyWords.of(m.total())).orElse("-"),
        "",
        "");
    table.row(
        "today's worth",
        "",
        byAge.map(m -> MoneyWords.of(m.presentValue())).orElse("-"),
        "",
        bySurvival.map(m -> MoneyWords.of(m.presentValue())).orElse("-"),
        "",
        "");
    prose.block(table.on(screen));
    Bars bars = new Bars();
    byAge
        .or(() -> bySurvival)
        .ifPresent(
            method -> method.years().forEach(y -> bars.add(y.begins().toString(), y.sections())));
    prose.block("Sections to replace\n" + bars.drawn());
  }

  private static Optional<MethodYear> year(Optional<Method> method, int index) {
    return method.map(m -> m.years().get(index));
  }

  private static String sectionsBand(MethodYear year) {
    return year.low().orElseThrow().sections() + " to " + year.high().orElseThrow().sections();
  }

  private static String costBand(MethodYear year) {
    return year.low().orElseThrow().cost().getAmount()
        + " to "
        + year.high().orElseThrow().cost().getAmount();
  }

  private void survival() {
    Survival survival = budget.survival();
    if (survival.method().isEmpty()) {
      prose.line("The test history does not suffice for a budget: " + survival.reason() + ".");
    } else {
      prose.line(
          String.format(
              Locale.ROOT,
              "From %,d sections' history, %,d of them worn out: a Weibull law of shape %.2f and"
                  + " scale %.1f years; half outlive %.1f years. It differs from the product limit"
                  + " (Kaplan-Meier) by %s at most.",
              survival.history().lives(),
              survival.history().failures(),
              survival.law().shape().orElseThrow(),
              survival.law().scaleYears().orElseThrow(),
              survival.law().medianYears().orElseThrow(),
              survival
                  .largestGap()
                  .map(gap -> String.format(Locale.ROOT, "%.1f points", gap * 100))
                  .orElse("an amount that too few at risk leave open")));
    }
    prose.line("How the history was read:");
    survival.conventions().forEach(convention -> prose.line("  ", "- " + convention));
  }

  private void purchase() {
    if (budget.purchases().needs().isEmpty()) {
      return;
    }
    prose.line("First year's purchase, by " + budget.purchases().purchaseBy().orElseThrow() + ":");
    Table table = Table.of("item", "description", "sections", "cost").numbers(2, 3);
    for (Need need : budget.purchases().needs()) {
      if (need.firstYear() > 0) {
        table.row(
            need.item(), need.description(), need.firstYear(), MoneyWords.of(need.costs().get(0)));
      }
    }
    prose.block(table.on(screen));
    budget
        .fleet()
        .unpriced()
        .forEach(
            hose ->
                prose.line(
                    "Not priced, no item of the catalogue replaces it: "
                        + tenth(hose.sections())
                        + " sections of "
                        + hose.hose()
                        + "."));
  }

  private void level(Level level) {
    prose.line(
        "Level funding: "
            + MoneyWords.of(level.yearly())
            + " every year is the least equal spend that never leaves more than "
            + level.overdueAllowed()
            + " sections overdue (oldest first, money left over kept for later years).");
    Table table = Table.of("year", "bought", "spent", "kept", "overdue").numbers(0, 1, 2, 3, 4);
    for (LevelYear year : level.years()) {
      table.row(
          year.year(),
          year.bought(),
          MoneyWords.of(year.spent()),
          MoneyWords.of(year.carried()),
          year.overdue());
    }
    prose.block(table.on(screen));
  }

  private void grouping(Grouping grouping) {
    prose.line(
        "Ordering together: the first year costs "
            + MoneyWords.of(grouping.apart())
            + " when each location orders for itself and "
            + MoneyWords.of(grouping.together())
            + " together. All years cost "
            + MoneyWords.of(grouping.eachYear())
            + " ordered year by year and "
            + MoneyWords.of(grouping.ahead())
            + " when "
            + grouping.orders().size()
            + " orders take the next year's need along.");
  }

  private void whatIf() {
    prose.line("What if: total of all years under other age limits and prices");
    Table table =
        Table.of("age limit", "prices", "sections", "total", "today's worth")
            .numbers(0, 1, 2, 3, 4);
    for (WhatIf answer : budget.whatIf()) {
      table.row(
          answer.ageLimitYears(),
          percent(answer.priceChange()),
          whole(answer.sections()),
          MoneyWords.of(answer.total()),
          MoneyWords.of(answer.presentValue()));
    }
    prose.block(table.on(screen));
  }

  private static String percent(BigDecimal fraction) {
    return fraction.movePointRight(2).stripTrailingZeros().toPlainString() + " %";
  }

  private static String whole(double sections) {
    return String.format(Locale.ROOT, "%,.0f", sections);
  }

  private static String tenth(double sections) {
    return String.format(Locale.ROOT, "%,.1f", sections);
  }
}
