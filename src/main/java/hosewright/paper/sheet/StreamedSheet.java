package hosewright.paper.sheet;

import java.util.List;
import java.util.Set;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFCell;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** A sheet written from top to bottom whose rows leave memory once they are full. */
public final class StreamedSheet {
  private final SXSSFSheet sheet;
  private final Looks looks;
  private final int[] widths;
  private SXSSFRow row;
  private int number;

  /**
   * @param widths column widths in digits, first column first
   */
  public StreamedSheet(SXSSFSheet sheet, Looks looks, int... widths) {
    this.sheet = sheet;
    this.looks = looks;
    this.widths = widths;
    for (int column = 0; column < widths.length; column++) {
      sheet.setColumnWidth(column, widths[column] * 256);
    }
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  public int lastColumn() {
    return widths.length - 1;
  }

  /** Starts the next row and gives its number as formulas write it. */
  public int next() {
    row = sheet.createRow(number);
    return ++number;
  }

  public StreamedSheet text(int column, String value, Look look) {
    return span(column, column, value, look);
  }

  public StreamedSheet span(int from, int to, String value, Look look) {
    String clean = Page.clean(value);
    boolean literal = Cells.looksLikeFormula(clean);
    for (int column = from; column <= to; column++) {
      SXSSFCell cell = row.createCell(column);
      cell.setCellStyle(literal ? looks.literal(look) : looks.of(look));
      if (column == from) {
        cell.setCellValue(clean);
      }
    }
    double widthPt = 0;
    for (int column = from; column <= to; column++) {
      widthPt += widths[column] * Page.DIGIT_PT;
    }
    double height = Page.heightPt(clean, look, widthPt);
    if (height > row.getHeightInPoints()) {
      row.setHeightInPoints((float) Math.min(Page.HIGHEST_ROW_PT, height));
    }
    if (to > from) {
      sheet.addMergedRegion(new CellRangeAddress(number - 1, number - 1, from, to));
    }
    return this;
  }

  public StreamedSheet number(int column, double value, Look look) {
    SXSSFCell cell = row.createCell(column);
    cell.setCellStyle(looks.of(look));
    cell.setCellValue(value);
    return this;
  }

  /** A formula with what it gives now, for readers that do not calculate. */
  public StreamedSheet formula(int column, String formula, double value, Look look) {
    SXSSFCell cell = row.createCell(column);
    cell.setCellStyle(looks.of(look));
    cell.setCellFormula(formula);
    cell.setCellValue(value);
    return this;
  }

  /** Gives the cell of the present row a name that formulas and readers can use. */
  public StreamedSheet named(int column, String name) {
    var defined = sheet.getWorkbook().createName();
    defined.setNameName(name);
    defined.setRefersToFormula(
        "'" + sheet.getSheetName() + "'!$" + Cells.letter(column) + "$" + number);
    return this;
  }

  /**
   * A heading row that stays in sight and repeats on every printed page.
   *
   * @param figures columns that hold figures, whose headings stand to the right as they do
   */
  public int heading(List<String> names, Set<Integer> figures) {
    int heading = next();
    for (int column = 0; column < names.size(); column++) {
      text(column, names.get(column), figures.contains(column) ? Look.HEAD_RIGHT : Look.HEAD);
    }
    sheet.createFreezePane(0, heading);
    sheet.setRepeatingRows(new CellRangeAddress(heading - 1, heading - 1, -1, -1));
    return heading;
  }

  /** Lets readers sift the rows below the heading. */
  public void sifted(int heading) {
    sheet.setAutoFilter(
        new CellRangeAddress(heading - 1, Math.max(heading, number) - 1, 0, lastColumn()));
  }
}
