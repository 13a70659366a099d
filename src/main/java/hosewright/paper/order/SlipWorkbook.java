package hosewright.paper.order;

import hosewright.paper.order.Slip.Part;
import hosewright.paper.page.Paper;
import hosewright.paper.sheet.Described;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Looks;
import hosewright.paper.sheet.Page;
import hosewright.paper.sheet.SheetSetup;
import hosewright.paper.sheet.StableZip;
import hosewright.problem.PlainText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;

/**
 * A slip as a workbook (.xlsx), one sheet for each of its tables. The same slip always gives the
 * same bytes.
 */
public final class SlipWorkbook {
  private static final int NARROWEST = 60;

  private SlipWorkbook() {}

  /**
   * Writes the workbook. The stream stays open.
   *
   * @param head printed at the head of every page, such as the dealer's name
   */
  public static void write(Slip slip, String head, Paper paper, OutputStream out)
      throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      // Slips hold sums as text; the currency decides nothing here.
      Looks looks = new Looks(workbook, CurrencyUnit.USD);
      for (Part part : slip.parts()) {
        sheet(workbook, looks, slip, part, head, paper);
      }
      new Described(slip.title(), "", "", Optional.empty()).in(workbook);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      StableZip.copy(bytes.toByteArray(), out);
    }
  }

  /** A heading names a dealer, who may be called what no sheet may. */
  private static String sheetName(Part part) {
    return WorkbookUtil.createSafeSheetName(PlainText.spelt(part.heading()));
  }

  private static void sheet(
      XSSFWorkbook workbook, Looks looks, Slip slip, Part part, String head, Paper paper) {
    var sheet = workbook.createSheet(sheetName(part));
    SheetSetup.printed(sheet, paper, true, head, slip.title());
    Page page = new Page(sheet, looks, widths(part));
    page.next();
    page.span(0, page.lastColumn(), slip.title(), Look.TITLE);
    for (String fact : slip.facts()) {
      page.next();
      page.span(0, page.lastColumn(), fact, Look.TEXT);
    }
    page.gap(6);
    int heading = page.rowNumber() + 1;
    if (part.columns().isEmpty()) {
      page.next();
      page.span(0, page.lastColumn(), part.heading(), Look.SECTION);
    } else {
      heading = page.heading(part.columns(), part.figures());
    }
    for (List<String> row : part.rows()) {
      page.next();
      for (int column = 0; column < row.size(); column++) {
        cell(page, part, column, row.get(column));
      }
    }
    for (String remark : part.remarks()) {
      page.next();
      page.span(0, page.lastColumn(), remark, Look.TEXT);
    }
    page.finished(heading);
  }

  private static void cell(Page page, Part part, int column, String text) {
    if (part.figures().contains(column) && text.matches("-?\\d{1,9}")) {
      page.number(column, Integer.parseInt(text), Look.BODY_COUNT);
    } else if (part.figures().contains(column) && text.matches("-?\\d{1,12}\\.\\d{1,6}")) {
      page.number(column, new BigDecimal(text), Look.BODY_NUMBER);
    } else {
      page.text(column, text, Look.BODY);
    }
  }

  private static int[] widths(Part part) {
    return part.widths().isEmpty()
        ? new int[] {NARROWEST, NARROWEST}
        : part.widths().stream().mapToInt(Integer::intValue).toArray();
  }
}
