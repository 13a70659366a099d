package hosewright.paper.fleet;

import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetBudget.AgeCount;
import hosewright.fleet.budget.FleetBudget.Hose;
import hosewright.paper.sheet.Cells;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The hose on hand by age and by the item that replaces it, with the year in which each age reaches
 * the age limit and the chance that the law gives it to fail in each year.
 *
 * <p>One row for each age, so that a column of counts can be multiplied by a column of chances.
 */
final class BudgetAgesSheet {
  private static final int COUNTS_FROM = 3;

  private final Page page;
  private final FleetBudget budget;
  private final int chancesFrom;
  private int atOnce;
  private int fresh;
  private int first;
  private int last;

  BudgetAgesSheet(Page page, FleetBudget budget) {
    this.page = page;
    this.budget = budget;
    this.chancesFrom = COUNTS_FROM + budget.fleet().hose().size();
  }

  static int[] widths(FleetBudget budget) {
    int chances = budget.survival().law().shape().isPresent() ? budget.asked().years() : 0;
    return IntStream.concat(
            IntStream.of(14, 10, 10),
            IntStream.concat(
                budget.fleet().hose().stream().mapToInt(hose -> 18),
                IntStream.range(0, chances).map(year -> 10)))
        .toArray();
  }

  void write() {
    page.next();
    page.span(0, page.lastColumn(), "Sections on hand by age", Look.TITLE);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "Under each item the sections it would replace, on the first day of the budget. Hose of so"
            + " many full months is taken to be half a month older. The chances are the Weibull"
            + " law's, for a section sound today, to fail for the first time in each year.",
        Look.TEXT);
    boolean law = budget.survival().law().shape().isPresent();
    List<String> names = new ArrayList<>(List.of("Age, months", "Age, years", "Limit in year"));
    budget
        .fleet()
        .hose()
        .forEach(hose -> names.add(hose.item().isEmpty() ? "no item" : hose.item()));
    IntStream.rangeClosed(1, law ? budget.asked().years() : 0)
        .forEach(year -> names.add("Year " + year));
    Set<Integer> figures = new HashSet<>();
    IntStream.range(0, names.size()).forEach(figures::add);
    int heading = page.heading(names, figures);
    writeAtOnce();
    writeNew(law);
    writeAges(law);
    page.finished(heading);
  }

  private void writeAtOnce() {
    atOnce = page.next();
    page.text(0, "go at once", Look.BODY);
    for (int i = 0; i < budget.fleet().hose().size(); i++) {
      page.number(COUNTS_FROM + i, budget.fleet().hose().get(i).atOnce(), Look.BODY_INPUT);
    }
  }

  private void writeNew(boolean law) {
    fresh = page.next();
    page.text(0, "new", Look.BODY).number(1, 0, Look.BODY_NUMBER);
    chances(law, fresh);
  }

  private void writeAges(boolean law) {
    SortedMap<Integer, int[]> counts = new TreeMap<>();
    for (int i = 0; i < budget.fleet().hose().size(); i++) {
      for (AgeCount count : budget.fleet().hose().get(i).ages()) {
        counts.computeIfAbsent(count.months(), age -> new int[budget.fleet().hose().size()])[i] =
            count.sections();
      }
    }
    first = page.rowNumber() + 1;
    counts.forEach(
        (months, sections) -> {
          int row = page.next();
          page.number(0, months, Look.BODY_COUNT)
              .formula(1, "(A%d+0.5)/12".formatted(row), Look.BODY_NUMBER);
          if (budget.ageLimit().isPresent()) {
            page.formula(
                2,
                "MAX(1,INT((%s*12-A%d+11)/12))".formatted(BudgetSheet.AGE_LIMIT, row),
                Look.BODY_COUNT);
          }
          for (int i = 0; i < sections.length; i++) {
            page.number(COUNTS_FROM + i, sections[i], Look.BODY_INPUT);
          }
          chances(law, row);
        });
    last = Math.max(first, page.rowNumber());
  }

  /** Sound until a year begins, and failed before it ends. */
  private void chances(boolean law, int row) {
    for (int year = 1; law && year <= budget.asked().years(); year++) {
      String now = hazard("B" + row);
      page.formula(
          chancesFrom + year - 1,
          "EXP(%s-%s)-EXP(%s-%s)"
              .formatted(
                  now, hazard("B" + row + "+" + (year - 1)), now, hazard("B" + row + "+" + year)),
          Look.FINE);
    }
  }

  private static String hazard(String age) {
    return "((%s)/weibull_scale)^weibull_shape".formatted(age);
  }

  /** A formula for the sections of an item that go at once. */
  String atOnce(Hose hose) {
    return BudgetWorkbook.AGES + "!$" + column(hose) + "$" + atOnce;
  }

  /** A formula for the sections of an item that reach the age limit in a year. */
  String reachLimit(Hose hose, String yearCell) {
    return "SUMIFS(%s,%s,%s)".formatted(range(column(hose)), range("C"), yearCell);
  }

  /** A formula for the failures expected among the sections of an item on hand today. */
  String firstFailures(Hose hose, int year) {
    return "SUMPRODUCT(%s,%s)"
        .formatted(range(column(hose)), range(Cells.letter(chancesFrom + year - 1)));
  }

  /** A formula for the chance that a new section fails in a year after it was bought. */
  String failsWhenNew(int yearsLater) {
    return "%s!$%s$%d"
        .formatted(BudgetWorkbook.AGES, Cells.letter(chancesFrom + yearsLater - 1), fresh);
  }

  private String column(Hose hose) {
    return Cells.letter(COUNTS_FROM + budget.fleet().hose().indexOf(hose));
  }

  private String range(String column) {
    return "%s!$%s$%d:$%s$%d".formatted(BudgetWorkbook.AGES, column, first, column, last);
  }
}
