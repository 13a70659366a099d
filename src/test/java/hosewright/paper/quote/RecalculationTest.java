package hosewright.paper.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.CrossCheck;
import hosewright.line.model.LinePlan;
import hosewright.paper.page.Export;
import hosewright.paper.page.Paper;
import hosewright.paper.sheet.Spreadsheet;
import hosewright.paper.sheet.WorkbookReader;
import hosewright.paper.shop.ShopWorkbook;
import hosewright.quote.Discount;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.QuoteLine.Break;
import hosewright.quote.RandomPackage;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** LibreOffice, which knows nothing of this program, recalculates every workbook. */
final class RecalculationTest {
  private static final int FEW = 12;

  /**
   * Starting it takes longer than recalculating a workbook: it is started once, for all of them.
   */
  @TempDir private static Path folder;

  private static final List<Quote> QUOTES = new ArrayList<>();
  private static final List<Quote> CHANGED = new ArrayList<>();
  private static final List<RandomPackage> PACKAGES = new ArrayList<>();
  private static Quote fitOut;
  private static List<Path> recalculated;

  @BeforeAll
  static void have_every_workbook_recalculated() throws Exception {
    Spreadsheet spreadsheet = Spreadsheet.in(folder);
    Quote discounted = PlannedQuotes.discounted();
    QUOTES.addAll(SampleQuotes.all());
    QUOTES.addAll(PlannedQuotes.all());
    QUOTES.add(discounted);
    CHANGED.addAll(List.of(SampleQuotes.hydrantLine(), discounted));
    List<Path> files = new ArrayList<>();
    for (Quote quote : QUOTES) {
      files.add(saved(quote, quote.number() + ".xlsx"));
    }
    for (Quote quote : CHANGED) {
      files.add(withOtherQuantities(quote));
    }
    files.add(withAnotherFlow());
    // A few in the suite; all five hundred in LongPackagesTest.
    for (int seed = 0; seed < FEW; seed++) {
      PACKAGES.add(RandomPackage.of(new Random(seed)));
      files.add(saved(PACKAGES.get(seed).quote(), "package-" + seed + ".xlsx"));
    }
    fitOut = PlannedQuotes.fitOut();
    files.add(saved(fitOut, "fit-out.xlsx"));
    for (Quote quote : QUOTES) {
      files.add(
          Export.to(folder, quote.number() + "-shop.xlsx", false)
              .write(out -> ShopWorkbook.write(quote, SampleQuotes.QUILLBACK, Paper.LETTER, out)));
    }
    recalculated = spreadsheet.recalculated(files);
  }

  @Test
  void every_line_and_total_comes_out_as_quoted() throws Exception {
    for (int i = 0; i < QUOTES.size(); i++) {
      try (XSSFWorkbook workbook = WorkbookReader.open(recalculated.get(i))) {
        holdsMoney(workbook, QUOTES.get(i));
        holdsPressures(workbook, QUOTES.get(i).plan());
        holdsNoError(workbook);
      }
    }
  }

  @Test
  void every_package_comes_to_what_a_plain_reckoning_says() throws Exception {
    for (int i = 0; i < FEW; i++) {
      try (XSSFWorkbook workbook = WorkbookReader.open(recalculated.get(packages() + i))) {
        PackageSums.hold(workbook, PACKAGES.get(i));
        holdsNoError(workbook);
      }
    }
  }

  @Test
  void each_job_of_a_package_keeps_its_own_pressures_and_the_breaks_are_shared() throws Exception {
    try (XSSFWorkbook workbook = WorkbookReader.open(recalculated.get(packages() + FEW))) {
      holdsNoError(workbook);
      for (Quote.GroupSum group : fitOut.groupSums()) {
        assertThat(WorkbookReader.amount(workbook, "quote_subtotal_" + group.group()))
            .isEqualByComparingTo(group.subtotal().getAmount());
      }
      assertThat(WorkbookReader.amount(workbook, "quote_total"))
          .isEqualByComparingTo(fitOut.total().getAmount());
      for (Group group : fitOut.groups()) {
        if (group.laid()) {
          assertThat(
                  WorkbookReader.figure(workbook, "required_psi", "Hydraulics " + group.number()))
              .isCloseTo(group.plan().hydraulics().requiredSourcePsi(), offset(0.01));
        }
      }
    }
  }

  @Test
  void the_houses_workbook_weighs_every_line_and_finds_each_friction_loss_again() throws Exception {
    int checked = 0;
    for (int i = 0; i < QUOTES.size(); i++) {
      Quote quote = QUOTES.get(i);
      try (XSSFWorkbook workbook =
          WorkbookReader.open(recalculated.get(packages() + FEW + 1 + i))) {
        holdsNoError(workbook);
        double weightLb = quote.lines().stream().mapToDouble(l -> l.goods().weightLb()).sum();
        assertThat(WorkbookReader.figure(workbook, "picked_weight_lb"))
            .isCloseTo(weightLb, offset(1e-6));
        for (CrossCheck check : quote.plan().hydraulics().crossCheck()) {
          String name = check.c().isPresent() ? "hw_friction_psi" : "dw_friction_psi";
          assertThat(WorkbookReader.figure(workbook, name))
              .isCloseTo(check.frictionLossPsi(), offset(0.01));
          checked++;
        }
      }
    }
    assertThat(checked).isGreaterThan(10);
  }

  private static int packages() {
    return QUOTES.size() + CHANGED.size() + 1;
  }

  @Test
  void a_changed_quantity_moves_the_break_its_discount_the_line_the_tax_and_the_total()
      throws Exception {
    assertThat(CHANGED.get(1).lines()).anyMatch(line -> line.price().discount().isPresent());
    for (int i = 0; i < CHANGED.size(); i++) {
      Path file = recalculated.get(QUOTES.size() + i);
      try (XSSFWorkbook workbook = WorkbookReader.open(file)) {
        holdsOtherQuantities(workbook, CHANGED.get(i));
      }
    }
  }

  private static int otherQuantity(int line) {
    int[] quantities = {25, 4, 0, 25, 24, 12};
    return quantities[line % quantities.length];
  }

  private static Path withOtherQuantities(Quote quote) throws IOException {
    Path file = saved(quote, "changed-" + quote.number() + ".xlsx");
    try (XSSFWorkbook workbook = WorkbookReader.open(file)) {
      XSSFSheet sheet = workbook.getSheet("Quote");
      List<XSSFRow> lines = WorkbookReader.lineRows(sheet);
      for (int i = 0; i < quote.lines().size(); i++) {
        lines.get(i).getCell(3).setCellValue(otherQuantity(i));
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
    return file;
  }

  private static void holdsOtherQuantities(XSSFWorkbook workbook, Quote quote) {
    BigDecimal subtotal = BigDecimal.ZERO;
    XSSFSheet sheet = workbook.getSheet("Quote");
    List<XSSFRow> lines = WorkbookReader.lineRows(sheet);
    for (int i = 0; i < quote.lines().size(); i++) {
      BigDecimal unit = priceAt(quote.lines().get(i), otherQuantity(i));
      BigDecimal extended = unit.multiply(BigDecimal.valueOf(otherQuantity(i)));
      subtotal = subtotal.add(extended);
      XSSFRow row = lines.get(i);
      assertThat(WorkbookReader.cents(row.getCell(5).getNumericCellValue()))
          .isEqualByComparingTo(unit);
      assertThat(WorkbookReader.cents(row.getCell(6).getNumericCellValue()))
          .isEqualByComparingTo(extended);
    }
    BigDecimal freight = quote.totals().freight().getAmount();
    BigDecimal tax =
        subtotal
            .add(freight)
            .multiply(quote.totals().charging().taxRate())
            .setScale(2, RoundingMode.HALF_UP);
    assertThat(WorkbookReader.amount(workbook, "quote_tax")).isEqualByComparingTo(tax);
    assertThat(WorkbookReader.amount(workbook, "quote_total"))
        .isEqualByComparingTo(subtotal.add(freight).add(tax));
  }

  private static Path withAnotherFlow() throws IOException {
    Path file = saved(SampleQuotes.hydrantLine(), "flow.xlsx");
    try (XSSFWorkbook workbook = WorkbookReader.open(file)) {
      WorkbookReader.named(workbook, "flow_gpm").setCellValue(150);
      WorkbookReader.named(workbook, "source_psi").setBlank();
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
    return file;
  }

  @Test
  void a_changed_flow_moves_the_pressures() throws Exception {
    Path file = recalculated.get(packages() - 1);
    try (XSSFWorkbook workbook = WorkbookReader.open(file)) {
      // C = 15.5 at 150 gpm over 100 ft loses 34.88 psi (common practice, no source): 4.5 times it.
      assertThat(WorkbookReader.figure(workbook, "friction_psi")).isCloseTo(156.94, offset(0.01));
      // With no source pressure given, what is needed arrives, and the last station shows it.
      assertThat(WorkbookReader.figure(workbook, "delivered_psi")).isCloseTo(50, offset(1e-6));
      XSSFSheet sheet = workbook.getSheet("Hydraulics");
      int last = WorkbookReader.named(workbook, "profile_last").getRowIndex();
      assertThat(sheet.getRow(last).getCell(4).getNumericCellValue()).isCloseTo(50, offset(1e-4));
    }
  }

  private static void holdsMoney(XSSFWorkbook workbook, Quote quote) {
    XSSFSheet sheet = workbook.getSheet("Quote");
    List<XSSFRow> lines = WorkbookReader.lineRows(sheet);
    for (int i = 0; i < quote.lines().size(); i++) {
      QuoteLine line = quote.lines().get(i);
      XSSFRow row = lines.get(i);
      assertThat(WorkbookReader.cents(row.getCell(5).getNumericCellValue()))
          .isEqualByComparingTo(line.price().unitPrice().getAmount());
      assertThat(WorkbookReader.cents(row.getCell(6).getNumericCellValue()))
          .isEqualByComparingTo(line.price().extended().getAmount());
    }
    assertThat(WorkbookReader.amount(workbook, "quote_subtotal"))
        .isEqualByComparingTo(quote.totals().subtotal().getAmount());
    assertThat(WorkbookReader.amount(workbook, "quote_freight"))
        .isEqualByComparingTo(quote.totals().freight().getAmount());
    assertThat(WorkbookReader.amount(workbook, "quote_tax"))
        .isEqualByComparingTo(quote.totals().tax().getAmount());
    assertThat(WorkbookReader.amount(workbook, "quote_total"))
        .isEqualByComparingTo(quote.total().getAmount());
  }

  private static void holdsPressures(XSSFWorkbook workbook, LinePlan plan) {
    Hydraulics result = plan.hydraulics();
    double attackPsi = 0;
    if (plan.layout().branchLeg().isPresent()) {
      attackPsi = WorkbookReader.figure(workbook, "attack_friction_psi");
      assertThat(attackPsi)
          .isCloseTo(plan.layout().branchLeg().get().water().friction().lossPsi(), offset(0.01));
    }
    assertThat(WorkbookReader.figure(workbook, "friction_psi") + attackPsi)
        .isCloseTo(result.frictionLossPsi(), offset(0.01));
    assertThat(WorkbookReader.figure(workbook, "required_psi"))
        .isCloseTo(result.requiredSourcePsi(), offset(0.01));
    assertThat(WorkbookReader.figure(workbook, "delivered_psi"))
        .isCloseTo(result.deliveredPsi(), offset(0.01));
    XSSFSheet sheet = workbook.getSheet("Hydraulics");
    int first = WorkbookReader.named(workbook, "profile_first").getRowIndex();
    for (int i = 0; i < result.profile().size(); i++) {
      var row = sheet.getRow(first + i);
      assertThat(row.getCell(4).getNumericCellValue())
          .isCloseTo(result.profile().get(i).flowingPsi(), offset(0.01));
      assertThat(row.getCell(5).getNumericCellValue())
          .isCloseTo(result.profile().get(i).closedPsi(), offset(0.01));
    }
  }

  private static void holdsNoError(XSSFWorkbook workbook) {
    workbook.forEach(
        sheet ->
            sheet.forEach(
                row ->
                    row.forEach(
                        cell -> {
                          assertThat(cell.getCellType()).isNotEqualTo(CellType.ERROR);
                          if (cell.getCellType() == CellType.FORMULA) {
                            assertThat(cell.getCachedFormulaResultType())
                                .as(sheet.getSheetName() + " " + cell.getAddress())
                                .isNotEqualTo(CellType.ERROR);
                          }
                        })));
  }

  private static BigDecimal priceAt(QuoteLine line, int quantity) {
    BigDecimal price = line.price().breaks().get(0).unitPrice().getAmount();
    for (Break step : line.price().breaks()) {
      if (step.minimumQuantity() <= quantity) {
        price = step.unitPrice().getAmount();
      }
    }
    BigDecimal off = line.price().discount().map(Discount::fraction).orElse(BigDecimal.ZERO);
    return price.multiply(BigDecimal.ONE.subtract(off)).setScale(2, RoundingMode.HALF_UP);
  }

  private static Path saved(Quote quote, String name) throws IOException {
    return Export.to(folder, name, false)
        .write(out -> QuoteWorkbook.write(quote, SampleQuotes.QUILLBACK, Paper.LETTER, out));
  }
}
