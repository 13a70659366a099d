package hosewright.paper.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueFiles;
import hosewright.catalogue.NetPrice;
import hosewright.fleet.budget.BudgetMaker;
import hosewright.fleet.budget.BudgetRequest;
import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.HoseAges;
import hosewright.fleet.budget.KaplanMeier;
import hosewright.fleet.budget.ReplacementItems;
import hosewright.fleet.budget.SurvivalStudy;
import hosewright.fleet.budget.Weibull;
import hosewright.fleet.budget.WeibullFit;
import hosewright.fleet.record.HoseRecord;
import hosewright.fleet.record.SectionStatus;
import hosewright.paper.page.Paper;
import hosewright.paper.sheet.Spreadsheet;
import hosewright.paper.sheet.WorkbookReader;
import hosewright.quote.terms.Dealer;
import hosewright.thread.End;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class BudgetWorkbookTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
  private static final Dealer DEALER =
      new Dealer("Quillback Hose & Coupling", List.of(), "", "", "");

  private static HoseRecord section(int number, LocalDate made) {
    return new HoseRecord(
        "H-" + number,
        new HoseRecord.Make(
            2.5, 50, End.parse("2.5 NH male"), End.parse("2.5 NH female swivel"), "polyester", ""),
        50,
        new HoseRecord.Days(Optional.of(made), Optional.of(made), made, Optional.empty()),
        new HoseRecord.Place(number % 2 == 0 ? "Station 1" : "Station 2", ""),
        SectionStatus.IN_SERVICE);
  }

  /** Twelve sections due in year 1 and three in each of the next four. */
  private static FleetBudget budget(String priceChange, String escalation, String rate) {
    HoseAges ages = new HoseAges(DAY);
    for (int i = 0; i < 24; i++) {
      int monthsLeft = i < 12 ? 0 : 18 + (i - 12) / 3 * 12;
      ages.add(section(i, DAY.minusYears(10).plusMonths(monthsLeft)), false);
    }
    Catalogue catalogue = new CatalogueFiles().read();
    NetPrice prices = catalogue.listPricesOn(DAY);
    return new BudgetMaker(
            ages,
            24 * 50,
            SurvivalStudy.of(List.of()),
            new ReplacementItems(catalogue, prices),
            prices,
            CurrencyUnit.USD)
        .make(
            new BudgetRequest(
                DAY,
                5,
                OptionalInt.of(10),
                new BudgetRequest.Rates(
                    new BigDecimal(priceChange), new BigDecimal(escalation), new BigDecimal(rate)),
                2,
                1));
  }

  private static XSSFWorkbook workbook(FleetBudget budget) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    BudgetWorkbook.write(budget, DEALER, Paper.LETTER, Instant.EPOCH, out);
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }

  @Test
  void the_budget_is_what_the_breaks_and_escalation_make_by_hand() {
    // Twelve at 205.25 from ten up; then three at 219.50 rising 4 % a year, rounded to the cent.
    FleetBudget budget = budget("0", "0.04", "0");
    assertThat(budget.ageLimit().orElseThrow().years())
        .extracting(FleetBudget.MethodYear::cost)
        .containsExactly(
            usd("2463.00"), usd("684.84"), usd("712.23"), usd("740.73"), usd("770.34"));
    assertThat(budget.purchases().grouping().orElseThrow().apart()).isEqualTo(usd("2634.00"));
  }

  private static Money usd(String amount) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  @Test
  void changing_the_open_cells_gives_the_budget_made_with_those_figures() throws IOException {
    try (XSSFWorkbook workbook = workbook(budget("0", "0", "0"))) {
      WorkbookReader.named(workbook, "price_change").setCellValue(0.10);
      WorkbookReader.named(workbook, "escalation").setCellValue(0.05);
      WorkbookReader.named(workbook, "discount_rate").setCellValue(0.03);
      XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
      FleetBudget.Method expected = budget("0.10", "0.05", "0.03").ageLimit().orElseThrow();
      assertThat(WorkbookReader.cents(WorkbookReader.figure(workbook, "budget_total")))
          .isEqualByComparingTo(expected.total().getAmount());
      var total = WorkbookReader.named(workbook, "budget_total");
      double worth =
          workbook
              .getSheet("Budget")
              .getRow(total.getRowIndex() + 1)
              .getCell(2)
              .getNumericCellValue();
      assertThat(BigDecimal.valueOf(worth).setScale(2, RoundingMode.HALF_UP))
          .isEqualByComparingTo(expected.presentValue().getAmount());
    }
  }

  @Test
  void another_quantity_takes_another_break() throws IOException {
    try (XSSFWorkbook workbook = workbook(budget("0", "0", "0"))) {
      var items = workbook.getSheet("Items");
      var firstYear = items.getRow(3);
      assertThat(firstYear.getCell(3).getNumericCellValue()).isEqualTo(12);
      firstYear.getCell(3).removeFormula();
      firstYear.getCell(3).setCellValue(9);
      XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
      assertThat(firstYear.getCell(4).getNumericCellValue()).isEqualTo(219.50);
    }
  }

  /** A hundred sections of one to sixteen years, and a history that a law can be fitted to. */
  private static FleetBudget worn(int ageLimit, Optional<Weibull> law) {
    HoseAges ages = new HoseAges(DAY);
    for (int i = 0; i < 100; i++) {
      ages.add(section(i, DAY.minusMonths(12L + i * 19 % 180)), i % 25 == 0);
    }
    Catalogue catalogue = new CatalogueFiles().read();
    NetPrice prices = catalogue.listPricesOn(DAY);
    WeibullFit fit = new WeibullFit(law.orElse(new Weibull(2.8, 13.5)), -100, 0.01, 0.01, 0);
    return new BudgetMaker(
            ages,
            100 * 50,
            new SurvivalStudy(
                List.of(), KaplanMeier.of(List.of()), new WeibullFit.Attempt(fit, "")),
            new ReplacementItems(catalogue, prices),
            prices,
            CurrencyUnit.USD)
        .make(
            new BudgetRequest(
                DAY,
                10,
                OptionalInt.of(ageLimit),
                new BudgetRequest.Rates(
                    BigDecimal.ZERO, new BigDecimal("0.03"), new BigDecimal("0.02")),
                2,
                1));
  }

  @TempDir Path folder;

  /** LibreOffice recalculates the workbook as written and with another limit, shape and scale. */
  @Test
  void both_methods_follow_the_age_limit_and_the_law_in_another_spreadsheet_program()
      throws Exception {
    Weibull other = new Weibull(3.4, 10.25);
    Path asMade = folder.resolve("as-made.xlsx");
    Path changed = folder.resolve("changed.xlsx");
    FleetBudget made = worn(12, Optional.empty());
    try (XSSFWorkbook workbook = workbook(made)) {
      save(workbook, asMade);
      WorkbookReader.named(workbook, "age_limit").setCellValue(7);
      WorkbookReader.named(workbook, "weibull_shape").setCellValue(other.shape());
      WorkbookReader.named(workbook, "weibull_scale").setCellValue(other.scaleYears());
      save(workbook, changed);
    }

    List<Path> recalculated = Spreadsheet.in(folder).recalculated(List.of(asMade, changed));

    holds(recalculated.get(0), made);
    holds(recalculated.get(1), worn(7, Optional.of(other)));
  }

  private static void save(XSSFWorkbook workbook, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
  }

  private static void holds(Path file, FleetBudget budget) throws IOException {
    try (XSSFWorkbook workbook = WorkbookReader.open(file)) {
      var sheet = workbook.getSheet("Budget");
      int first =
          WorkbookReader.named(workbook, "budget_total").getRowIndex() - budget.asked().years();
      for (int i = 0; i < budget.asked().years(); i++) {
        var row = sheet.getRow(first + i);
        FleetBudget.MethodYear byAge = budget.ageLimit().orElseThrow().years().get(i);
        FleetBudget.MethodYear byLaw = budget.survival().method().orElseThrow().years().get(i);
        assertThat(row.getCell(1).getNumericCellValue()).isCloseTo(byAge.sections(), offset(1e-9));
        assertThat(WorkbookReader.cents(row.getCell(2).getNumericCellValue()))
            .isEqualByComparingTo(byAge.cost().getAmount());
        assertThat(row.getCell(3).getNumericCellValue()).isCloseTo(byLaw.sections(), offset(1e-9));
        assertThat(WorkbookReader.cents(row.getCell(4).getNumericCellValue()))
            .isEqualByComparingTo(byLaw.cost().getAmount());
      }
    }
  }

  @Test
  void locations_add_up_and_charts_are_native() throws IOException {
    FleetBudget budget = budget("0", "0.04", "0");
    try (XSSFWorkbook workbook = workbook(budget)) {
      var locations = workbook.getSheet("Locations");
      var totals = locations.getRow(locations.getLastRowNum());
      assertThat(totals.getCell(2 + 5).getNumericCellValue()).isEqualTo(24);
      assertThat(WorkbookReader.cents(totals.getCell(2 + 5 + 2).getNumericCellValue()))
          .isEqualByComparingTo(budget.ageLimit().orElseThrow().total().getAmount());
      assertThat(workbook.getSheet("Budget").getDrawingPatriarch().getCharts()).hasSize(2);
    }
  }

  @Test
  void the_same_budget_gives_the_same_bytes() throws IOException {
    ByteArrayOutputStream first = new ByteArrayOutputStream();
    ByteArrayOutputStream second = new ByteArrayOutputStream();
    BudgetWorkbook.write(budget("0", "0", "0"), DEALER, Paper.A4, Instant.EPOCH, first);
    BudgetWorkbook.write(budget("0", "0", "0"), DEALER, Paper.A4, Instant.EPOCH, second);
    assertThat(second.toByteArray()).isEqualTo(first.toByteArray());
  }
}
