package hosewright.paper.quote;

import hosewright.paper.page.Paper;
import hosewright.paper.sheet.Cells;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Looks;
import hosewright.paper.sheet.Page;
import hosewright.paper.sheet.SheetSetup;
import hosewright.paper.sheet.StableZip;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;

/**
 * A sheet that asks a supplier for prices: what is wanted is filled in, the price columns are open.
 * It says nothing of the buyer, of prices or of other suppliers.
 *
 * @param number the quote it is asked for
 * @param supplier code of who is asked
 * @param dealer who asks
 */
public record AskSheet(
    String number, String supplier, String supplierName, String dealer, List<Row> rows) {

  /** The columns, in the order the sheet has them; the last five are for the supplier. */
  public static final List<String> COLUMNS =
      List.of(
          "quote",
          "line",
          "wanted",
          "quantity",
          "supplier",
          "unit_price",
          "currency",
          "freight",
          "lead_days",
          "remark");

  private static final int FIRST_OPEN = 5;
  private static final int[] WIDTHS = {11, 6, 60, 10, 11, 12, 10, 11, 11, 30};

  /** One thing wanted. */
  public record Row(int line, String wanted, int quantity) {}

  public AskSheet {
    rows = List.copyOf(rows);
  }

  /** Writes it as comma-separated values (RFC 4180, UTF-8). The stream stays open. */
  public void writeCsv(OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader(COLUMNS.toArray(String[]::new)).get();
    CSVPrinter printer = new CSVPrinter(writer, format);
    for (Row row : rows) {
      printer.printRecord(
          number,
          row.line(),
          Cells.inCsv(row.wanted()),
          row.quantity(),
          supplier,
          "",
          "",
          "",
          "",
          "");
    }
    printer.flush();
  }

  /** Writes it as a workbook whose price cells are open. The stream stays open. */
  public void writeWorkbook(Paper paper, OutputStream out) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Looks looks = new Looks(workbook, CurrencyUnit.USD);
      var sheet = workbook.createSheet("Prices wanted");
      SheetSetup.printed(sheet, paper, true, dealer, "Prices wanted for " + number);
      Page page = new Page(sheet, looks, WIDTHS);
      page.next();
      page.span(0, page.lastColumn(), dealer + " asks " + supplierName + " for prices", Look.TITLE);
      page.next();
      page.span(
          0,
          page.lastColumn(),
          "Please fill in the open cells of each line you can supply: price of one, its currency"
              + " (such as USD), freight for the whole line to our dock, calendar days to our"
              + " dock.",
          Look.TEXT);
      int heading = page.heading(COLUMNS, Set.of(3, 5, 7, 8));
      for (Row row : rows) {
        page.next();
        page.text(0, number, Look.BODY)
            .number(1, row.line(), Look.BODY_ORDER)
            .text(2, row.wanted(), Look.BODY)
            .number(3, row.quantity(), Look.BODY_COUNT)
            .text(4, supplier, Look.BODY);
        for (int column = FIRST_OPEN; column < COLUMNS.size(); column++) {
          page.text(column, "", Look.NUMBER_INPUT);
        }
      }
      page.finished(heading);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      StableZip.copy(bytes.toByteArray(), out);
    }
  }
}
