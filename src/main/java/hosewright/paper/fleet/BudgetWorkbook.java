package hosewright.paper.fleet;

import hosewright.fleet.budget.FleetBudget;
import hosewright.paper.page.Paper;
import hosewright.paper.sheet.Described;
import hosewright.paper.sheet.Looks;
import hosewright.paper.sheet.Page;
import hosewright.paper.sheet.SheetSetup;
import hosewright.paper.sheet.StableZip;
import hosewright.quote.terms.Dealer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A replacement budget as a workbook (.xlsx) whose figures are live: change the age limit, the
 * law's shape or scale, the count of an age, the escalation or the discount rate, and sections,
 * prices, costs and today's worth follow.
 */
public final class BudgetWorkbook {
  static final String BUDGET = "Budget";
  static final String ITEMS = "Items";
  static final String LOCATIONS = "Locations";
  static final String LEVEL = "Level funding";
  static final String SURVIVAL = "Survival";
  static final String WHAT_IF = "What if";
  static final String AGES = "Ages";
  static final String FAILURES = "By survival";
  static final String BREAKS = "Breaks";

  private final FleetBudget budget;
  private final Dealer dealer;
  private final Paper paper;
  private final XSSFWorkbook workbook;
  private final Looks looks;

  private BudgetWorkbook(FleetBudget budget, Dealer dealer, Paper paper, XSSFWorkbook workbook) {
    this.budget = budget;
    this.dealer = dealer;
    this.paper = paper;
    this.workbook = workbook;
    this.looks = new Looks(workbook, currency(budget));
  }

  /**
   * Writes the workbook. The stream stays open. The same budget gives the same bytes.
   *
   * @throws IllegalStateException when the recalculated total is not the budget's
   */
  public static void write(
      FleetBudget budget, Dealer dealer, Paper paper, Instant madeAt, OutputStream out)
      throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      new BudgetWorkbook(budget, dealer, paper, workbook).fill(madeAt);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      StableZip.copy(bytes.toByteArray(), out);
    }
  }

  private void fill(Instant madeAt) {
    workbook.setCellFormulaValidation(false);
    BudgetSheet first = new BudgetSheet(page(BUDGET, false, BudgetSheet.WIDTHS), budget);
    Page items = page(ITEMS, false, BudgetItemsSheet.WIDTHS);
    Page locations = page(LOCATIONS, true, BudgetLocationsSheet.widths(budget));
    Page level = page(LEVEL, false, BudgetPlansSheet.LEVEL_WIDTHS);
    Page survival = page(SURVIVAL, false, BudgetSurvivalSheet.WIDTHS);
    Page ages = page(AGES, true, BudgetAgesSheet.widths(budget));
    Optional<BudgetFailuresSheet> failures =
        budget
            .survival()
            .method()
            .map(
                method ->
                    new BudgetFailuresSheet(
                        page(FAILURES, false, BudgetFailuresSheet.WIDTHS), budget));
    Page whatIf = page(WHAT_IF, false, BudgetPlansSheet.WHAT_IF_WIDTHS);
    Page breaks = page(BREAKS, false, BudgetItemsSheet.BREAK_WIDTHS);
    BudgetItemsSheet itemsSheet = new BudgetItemsSheet(items, breaks, budget);
    itemsSheet.writeBreaks();
    BudgetAgesSheet agesSheet = new BudgetAgesSheet(ages, budget);
    agesSheet.write();
    failures.ifPresent(sheet -> sheet.write(agesSheet, itemsSheet));
    itemsSheet.write(agesSheet, failures);
    first.write(itemsSheet, failures);
    new BudgetLocationsSheet(locations, budget).write(itemsSheet);
    BudgetPlansSheet.level(level, budget);
    new BudgetSurvivalSheet(survival, budget).write();
    BudgetPlansSheet.whatIf(whatIf, budget);
    XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
    totalsHold();
    first.charts();
    BudgetSurvivalSheet.chart(survival, budget);
    properties(madeAt);
  }

  private Page page(String name, boolean landscape, int... widths) {
    SheetSetup.printed(
        workbook.createSheet(name),
        paper,
        landscape,
        dealer.name(),
        "Hose budget from " + budget.asked().from());
    return new Page(workbook.getSheet(name), looks, widths);
  }

  private void totalsHold() {
    budget
        .ageLimit()
        .or(() -> budget.survival().method())
        .ifPresent(method -> holds(BudgetSheet.TOTAL, method.total()));
    budget
        .survival()
        .method()
        .ifPresent(method -> holds(BudgetSheet.SURVIVAL_TOTAL, method.total()));
  }

  private void holds(String name, Money total) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    double shown =
        workbook
            .getSheet(at.getSheetName())
            .getRow(at.getRow())
            .getCell(at.getCol())
            .getNumericCellValue();
    int places = currency(budget).getDecimalPlaces();
    double cent = BigDecimal.ONE.movePointLeft(places).doubleValue();
    if (Math.abs(shown - total.getAmount().doubleValue()) > cent / 2) {
      throw new IllegalStateException("the workbook adds up to " + shown + ", not " + total);
    }
  }

  private void properties(Instant madeAt) {
    new Described(
            "Hose replacement budget from " + budget.asked().from(),
            "",
            dealer.name(),
            Optional.of(madeAt))
        .in(workbook);
  }

  static CurrencyUnit currency(FleetBudget budget) {
    return budget.whatIf().get(0).total().getCurrencyUnit();
  }
}
