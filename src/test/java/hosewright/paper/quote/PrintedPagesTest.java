package hosewright.paper.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.paper.page.Paper;
import hosewright.paper.sheet.WorkbookReader;
import hosewright.quote.Quote;
import hosewright.quote.RandomPackage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where the printed pages of a quote part. */
final class PrintedPagesTest {

  @ParameterizedTest
  @EnumSource(Paper.class)
  void a_plain_line_is_quoted_on_one_page_and_its_workbook_prints_on_four(Paper paper)
      throws IOException {
    Quote plain = PlannedQuotes.plainLine();
    try (PDDocument document = Loader.loadPDF(pdf(plain, paper))) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
    }
    XSSFWorkbook workbook = workbook(plain, paper);
    assertThat(workbook.getNumberOfSheets()).isEqualTo(4);
    for (Sheet sheet : workbook) {
      assertThat(sheet.getRowBreaks()).as(sheet.getSheetName()).isEmpty();
      assertThat(printedPt(sheet, 0, sheet.getLastRowNum()))
          .as(sheet.getSheetName())
          .isLessThanOrEqualTo(printablePt(sheet));
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void no_page_of_a_workbook_is_fuller_than_the_paper(Paper paper) throws IOException {
    for (Quote quote : List.of(SampleQuotes.awkward(), RandomPackage.of(new Random(1)).quote())) {
      for (Sheet sheet : workbook(quote, paper)) {
        int from = 0;
        for (int to : ends(sheet)) {
          assertThat(printedPt(sheet, from, to))
              .as("%s from row %d", sheet.getSheetName(), from + 1)
              .isLessThanOrEqualTo(printablePt(sheet));
          from = to + 1;
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void totals_stand_whole_under_a_line_and_the_place_to_sign_under_a_caution(Paper paper)
      throws IOException {
    for (int seed = 0; seed < 12; seed++) {
      partsWell(SampleQuotes.random(new Random(seed)), paper, "seed " + seed);
    }
  }

  private static void partsWell(Quote quote, Paper paper, String seed) throws IOException {
    XSSFWorkbook workbook = workbook(quote, paper);
    XSSFSheet sheet = workbook.getSheet("Quote");
    int total = WorkbookReader.named(workbook, "quote_total").getRowIndex();
    int lastLine = WorkbookReader.lineRows(sheet).get(quote.lines().size() - 1).getRowNum();
    int signed = rowOf(sheet, "Accepted for");

    assertThat(pageOf(sheet, lastLine)).as(seed).isEqualTo(pageOf(sheet, total));
    assertThat(pageOf(sheet, signed - 2)).as(seed).isEqualTo(pageOf(sheet, signed));
    assertThat(pageOf(sheet, sheet.getLastRowNum())).as(seed).isEqualTo(pageOf(sheet, signed));
    // Each page that has lines begins with their heading; no other page has one.
    assertThat(sheet.getRepeatingRows()).isNull();
    for (int end : ends(sheet)) {
      if (end + 1 <= lastLine) {
        assertThat(sheet.getRow(end + 1).getCell(0)).as(seed).hasToString("No.");
      }
    }
  }

  private static int rowOf(Sheet sheet, String words) {
    for (Row row : sheet) {
      if (row.getCell(0) != null && row.getCell(0).toString().startsWith(words)) {
        return row.getRowNum();
      }
    }
    throw new AssertionError(words);
  }

  private static long pageOf(Sheet sheet, int row) {
    return Arrays.stream(sheet.getRowBreaks()).filter(last -> last < row).count();
  }

  /** The last row of each page. */
  private static int[] ends(Sheet sheet) {
    int[] ends = Arrays.copyOf(sheet.getRowBreaks(), sheet.getRowBreaks().length + 1);
    ends[ends.length - 1] = sheet.getLastRowNum();
    return ends;
  }

  private static double printedPt(Sheet sheet, int from, int to) {
    double points = 0;
    for (int row = from; row <= to; row++) {
      points += sheet.getRow(row).getHeightInPoints();
    }
    return points * sheet.getPrintSetup().getScale() / 100;
  }

  /** US letter is 8.5 x 11 in, A4 210 x 297 mm (ISO 216); less what both margins take. */
  private static double printablePt(Sheet sheet) {
    boolean a4 = sheet.getPrintSetup().getPaperSize() == 9;
    boolean wide = sheet.getPrintSetup().getLandscape();
    double highIn = a4 ? (wide ? 210 : 297) / 25.4 : wide ? 8.5 : 11;
    return (highIn - 1.1) * 72;
  }

  private static byte[] pdf(Quote quote, Paper paper) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    QuotePdf.write(quote, SampleQuotes.QUILLBACK, paper, out);
    return out.toByteArray();
  }

  private static XSSFWorkbook workbook(Quote quote, Paper paper) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    QuoteWorkbook.write(quote, SampleQuotes.QUILLBACK, paper, out);
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }
}
