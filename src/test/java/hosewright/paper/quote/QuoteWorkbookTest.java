package hosewright.paper.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.paper.page.Paper;
import hosewright.paper.sheet.WorkbookReader;
import hosewright.quote.Basis;
import hosewright.quote.Quote;
import hosewright.quote.Totals;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class QuoteWorkbookTest {

  static List<Quote> quotes() {
    return SampleQuotes.all();
  }

  @ParameterizedTest
  @MethodSource("quotes")
  void every_total_is_a_formula_with_its_result_beside_it(Quote quote) throws IOException {
    XSSFWorkbook workbook = workbook(quote);

    for (String name : List.of("quote_subtotal", "quote_taxable", "quote_tax", "quote_total")) {
      assertThat(WorkbookReader.named(workbook, name).getCellType()).isEqualTo(CellType.FORMULA);
    }
    assertThat(WorkbookReader.amount(workbook, "quote_subtotal"))
        .isEqualByComparingTo(quote.totals().subtotal().getAmount());
    assertThat(WorkbookReader.amount(workbook, "quote_tax"))
        .isEqualByComparingTo(quote.totals().tax().getAmount());
    assertThat(WorkbookReader.amount(workbook, "quote_total"))
        .isEqualByComparingTo(quote.total().getAmount());
  }

  @ParameterizedTest
  @MethodSource("quotes")
  void the_same_quote_gives_the_same_bytes(Quote quote) {
    assertThat(bytes(quote)).isEqualTo(bytes(quote));
  }

  @Test
  void no_text_of_a_buyer_becomes_a_formula() throws IOException {
    XSSFWorkbook workbook = workbook(SampleQuotes.awkward());

    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      workbook
          .getSheetAt(i)
          .forEach(
              row ->
                  row.forEach(
                      cell -> {
                        if (cell.getCellType() == CellType.FORMULA) {
                          assertThat(cell.getCellFormula())
                              .isNotEqualTo("1+1")
                              .doesNotContain("HYPERLINK", "cmd", "A1:A9", "FOB");
                        } else if (cell.getCellType() == CellType.STRING
                            && !cell.getStringCellValue().isEmpty()
                            && "=+-@\t\r".indexOf(cell.getStringCellValue().charAt(0)) >= 0) {
                          assertThat(cell.getCellStyle().getQuotePrefixed())
                              .as("kept text when typed again: %s", cell.getStringCellValue())
                              .isTrue();
                        }
                      }));
    }
    XSSFSheet sheet = workbook.getSheet("Quote");
    XSSFCell item = sheet.getRow(WorkbookReader.headingRow(sheet) + 1).getCell(1);
    assertThat(item.getCellType()).isEqualTo(CellType.STRING);
    assertThat(item.getStringCellValue()).isEqualTo("=1+1");
  }

  @Test
  void only_input_cells_are_open_and_no_password_guards_the_rest() throws IOException {
    Quote quote = SampleQuotes.hydrantLine();
    XSSFWorkbook workbook = workbook(quote);

    workbook.forEach(
        sheet -> {
          XSSFSheet protectedSheet = (XSSFSheet) sheet;
          assertThat(protectedSheet.isSheetLocked()).as(sheet.getSheetName()).isTrue();
          var protection = protectedSheet.getCTWorksheet().getSheetProtection();
          assertThat(protection.isSetPassword() || protection.isSetHashValue()).isFalse();
        });
    XSSFSheet sheet = workbook.getSheet("Quote");
    int open = 0;
    for (var row : sheet) {
      for (var cell : row) {
        open += cell.getCellStyle().getLocked() ? 0 : 1;
      }
    }
    assertThat(open).as("open cells: the quantities").isEqualTo(quote.lines().size());
    assertThat(WorkbookReader.named(workbook, "flow_gpm").getCellStyle().getLocked()).isFalse();
    assertThat(WorkbookReader.named(workbook, "quote_total").getCellStyle().getLocked()).isTrue();
  }

  @Test
  void every_sheet_prints_one_page_wide_on_the_paper_asked_for() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    QuoteWorkbook.write(SampleQuotes.hydrantLine(), SampleQuotes.QUILLBACK, Paper.A4, out);
    XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));

    workbook.forEach(
        sheet -> {
          // Excel passes over manual page breaks where it fits a sheet to pages by itself.
          assertThat(sheet.getFitToPage()).isFalse();
          int digits = 0;
          for (int column = 0; sheet.getRow(0).getCell(column) != null; column++) {
            digits += sheet.getColumnWidth(column) / 256;
          }
          // An inch less of A4 than it is wide; a digit of Arial 10 is 0.556 em.
          double wideIn = (sheet.getPrintSetup().getLandscape() ? 297 : 210) / 25.4 - 1;
          assertThat(digits * 5.56 / 72 * sheet.getPrintSetup().getScale() / 100)
              .as(sheet.getSheetName())
              .isBetween(wideIn * 0.9, wideIn);
          assertThat(sheet.getPrintSetup().getScale())
              .as(
                  "print of %s stays readable: 10 points shown as 7.5 at the least",
                  sheet.getSheetName())
              .isGreaterThanOrEqualTo((short) 75);
          assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.A4_PAPERSIZE);
          assertThat(sheet.getFooter().getRight()).contains("&P", "&N");
          // A lone ampersand in a page header would start a command.
          assertThat(sheet.getHeader().getLeft()).isEqualTo("Quillback Hose && Coupling");
        });
  }

  @Test
  void the_file_says_when_the_quote_was_made_not_when_the_file_was() throws IOException {
    Quote quote = SampleQuotes.hydrantLine();
    var properties = workbook(quote).getProperties().getCoreProperties();

    assertThat(properties.getCreated()).isEqualTo(Date.from(quote.validity().madeAt()));
    assertThat(properties.getModified()).isEqualTo(Date.from(quote.validity().madeAt()));
    assertThat(properties.getTitle()).isEqualTo("Quote Q-000001, revision 1");
  }

  @Test
  void a_workbook_that_would_not_agree_with_its_quote_is_refused() {
    Quote q = SampleQuotes.hydrantLine();
    Quote wrong =
        new Quote(
            q.name(),
            q.status(),
            q.customer(),
            q.validity(),
            new Basis(q.basis().title(), q.basis().jobYaml(), q.plan(), Optional.empty()),
            q.offer(),
            new Totals(
                q.totals().subtotal(),
                q.totals().freight(),
                q.totals().tax(),
                q.total().plus(Money.of(CurrencyUnit.USD, 0.01)),
                q.totals().charging()));

    assertThatThrownBy(() -> bytes(wrong))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("quote_total");
  }

  @Test
  void a_buyer_gets_quote_joints_hydraulics_and_checks_and_nothing_of_the_house()
      throws IOException {
    assertThat(sheets(workbook(SampleQuotes.hydrantLine())))
        .containsExactly("Quote", "Joints", "Hydraulics", "Checks");
  }

  @Test
  void a_draft_says_that_it_is_no_offer_and_an_issued_quote_does_not() throws IOException {
    Quote draft = SampleQuotes.hydrantLine();

    assertThat(text(workbook(inStatus(draft, Quote.Status.DRAFT)))).contains("DRAFT: not an offer");
    assertThat(text(workbook(inStatus(draft, Quote.Status.ISSUED)))).doesNotContain("DRAFT");
  }

  private static Quote inStatus(Quote q, Quote.Status status) {
    return new Quote(
        q.name(), status, q.customer(), q.validity(), q.basis(), q.offer(), q.totals());
  }

  private static String text(XSSFWorkbook workbook) {
    StringBuilder text = new StringBuilder();
    workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> text.append(cell))));
    return text.toString();
  }

  private static List<String> sheets(XSSFWorkbook workbook) {
    return IntStream.range(0, workbook.getNumberOfSheets())
        .mapToObj(workbook::getSheetName)
        .toList();
  }

  static XSSFWorkbook workbook(Quote quote) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes(quote)));
  }

  static byte[] bytes(Quote quote) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      QuoteWorkbook.write(quote, SampleQuotes.QUILLBACK, Paper.LETTER, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
