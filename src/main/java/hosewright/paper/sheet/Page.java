package hosewright.paper.sheet;

import hosewright.paper.page.Lettering;
import hosewright.problem.PlainText;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.joda.money.Money;

/**
 * One sheet being written from top to bottom.
 *
 * <p>Row heights are worked out here, because spreadsheet programs do not fit the height of merged
 * cells and some do not fit any height on opening.
 */
public final class Page {
  /** Longest text a cell of this file format holds. */
  private static final int LONGEST_TEXT = 32_767;

  /** The highest row the file format holds, points. */
  static final double HIGHEST_ROW_PT = 409;

  private static final double LINE_SPACING = 1.22;
  private static final double CELL_MARGIN_PT = 4;

  /**
   * Widths are counted in digits of the first font, which are as wide as this where letters are not
   * fitted to the dots of a screen; where they are, letters shrink with the columns.
   */
  static final double DIGIT_PT = 5.56;

  private static final double INDENT_PT = 7;

  private final XSSFSheet sheet;
  private final Looks looks;
  private final int[] widths;
  private final Map<Integer, Double> heights = new HashMap<>();
  private final double paperPt;
  private int row = -1;
  private boolean ownNames;

  /** The first row of the present printed page. */
  private int pageStart;

  private boolean together;

  /**
   * @param widths column widths in digits, first column first
   */
  public Page(XSSFSheet sheet, Looks looks, int... widths) {
    this.sheet = sheet;
    this.looks = looks;
    this.widths = widths;
    for (int column = 0; column < widths.length; column++) {
      sheet.setColumnWidth(column, widths[column] * 256);
    }
    this.paperPt = SheetSetup.scaled(sheet, widthPt(0, lastColumn()));
  }

  public XSSFSheet sheet() {
    return sheet;
  }

  public int lastColumn() {
    return widths.length - 1;
  }

  /** Starts the next row and gives its number as formulas write it (1 for the first). */
  public int next() {
    settle();
    row++;
    sheet.createRow(row);
    return row + 1;
  }

  /** Where the row that is done no longer fits, a printed page begins with it. */
  private void settle() {
    if (!together && row > pageStart && heightPt(pageStart, row) > paperPt) {
      breakBefore(row);
    }
  }

  private void breakBefore(int ofRow) {
    sheet.setRowBreak(ofRow - 1);
    pageStart = ofRow;
  }

  /** How high rows stand, both included, points. */
  private double heightPt(int from, int to) {
    double points = 0;
    for (int one = from; one <= to; one++) {
      points += heights.getOrDefault(one, (double) sheet.getDefaultRowHeightInPoints());
    }
    return points;
  }

  /** Whether so much more fits on the present printed page, below the present row. */
  public boolean hasRoom(double points) {
    return heightPt(pageStart, row) + points <= paperPt;
  }

  /** Writes rows that no printed page parts, unless they are more than a page. */
  public void together(Runnable rows) {
    settle();
    int first = row + 1;
    boolean within = together;
    together = true;
    rows.run();
    together = within;
    if (within || first <= pageStart || heightPt(pageStart, row) <= paperPt) {
      return;
    }
    if (heightPt(first, row) <= paperPt) {
      breakBefore(first);
      return;
    }
    for (int one = first; one <= row; one++) {
      if (one > pageStart && heightPt(pageStart, one) > paperPt) {
        breakBefore(one);
      }
    }
  }

  /** The height of a row that shows this text whole in one column, points. */
  public double heightPt(String text, Look look, int column) {
    return heightPt(clean(text), look, widthPt(column, column));
  }

  /** Leaves a gap of a few points. */
  public Page gap(double points) {
    next();
    heights.put(row, points);
    sheet.getRow(row).setHeightInPoints((float) points);
    return this;
  }

  public int rowNumber() {
    return row + 1;
  }

  public Page text(int column, String value, Look look) {
    return span(column, column, value, look);
  }

  /** Text over several columns of the present row. */
  public Page span(int from, int to, String value, Look look) {
    String clean = clean(value);
    boolean literal = Cells.looksLikeFormula(clean);
    XSSFCellStyle style = literal ? looks.literal(look) : looks.of(look);
    for (int column = from; column <= to; column++) {
      cell(column).setCellStyle(style);
    }
    // An empty text would cost as much as a full one and show the same.
    if (!clean.isEmpty()) {
      cell(from).setCellValue(clean);
    }
    if (to > from) {
      sheet.addMergedRegion(new CellRangeAddress(row, row, from, to));
    }
    makeRoom(clean, look, from, to);
    return this;
  }

  public Page number(int column, double value, Look look) {
    XSSFCell cell = cell(column);
    cell.setCellStyle(looks.of(look));
    cell.setCellValue(value);
    makeRoom("0", look, column, column);
    return this;
  }

  public Page money(int column, Money value, Look look) {
    return number(column, value.getAmount().doubleValue(), look);
  }

  public Page number(int column, BigDecimal value, Look look) {
    return number(column, value.doubleValue(), look);
  }

  public Page formula(int column, String formula, Look look) {
    XSSFCell cell = cell(column);
    cell.setCellStyle(looks.of(look));
    cell.setCellFormula(formula);
    makeRoom("0", look, column, column);
    return this;
  }

  /** Sets the formula of a cell that is written already, in the look it has. */
  public void formulaAt(int rowNumber, int column, String formula) {
    sheet.getRow(rowNumber - 1).getCell(column).setCellFormula(formula);
  }

  /** Keeps names given from now on to this sheet, where others of its kind have the same. */
  public Page withNamesOfItsOwn() {
    ownNames = true;
    return this;
  }

  /** Gives the cell of the present row a name that formulas and readers can use. */
  public Page named(int column, String name) {
    XSSFName defined = sheet.getWorkbook().createName();
    if (ownNames) {
      defined.setSheetIndex(sheet.getWorkbook().getSheetIndex(sheet));
    }
    defined.setNameName(name);
    defined.setRefersToFormula(
        "'" + sheet.getSheetName() + "'!$" + Cells.letter(column) + "$" + rowNumber());
    return this;
  }

  /**
   * A heading row of a table.
   *
   * @param figures columns that hold figures, whose headings stand to the right as they do
   */
  public int heading(List<String> names, Set<Integer> figures) {
    int number = next();
    for (int column = 0; column < names.size(); column++) {
      text(column, names.get(column), figures.contains(column) ? Look.HEAD_RIGHT : Look.HEAD);
    }
    return number;
  }

  /** Puts a PNG picture on rows of its own, across the columns given. */
  public Page picture(byte[] png, int from, int to, double heightPt) {
    int top = row + 1;
    // The file format holds no row high enough for a long drawing.
    int rows = (int) Math.ceil(heightPt / 200);
    for (int i = 0; i < rows; i++) {
      gap(heightPt / rows);
    }
    int index = sheet.getWorkbook().addPicture(png, Workbook.PICTURE_TYPE_PNG);
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    // Ending inside the last column keeps the next one out of the printed page.
    int inLast = Units.toEMU(widthPt(to, to) - 1);
    XSSFClientAnchor anchor = drawing.createAnchor(0, 0, inLast, 0, from, top, to, row + 1);
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    drawing.createPicture(anchor, index);
    return this;
  }

  /** Starts a new printed page with the next row. */
  public Page newSheetOfPaper() {
    sheet.setRowBreak(row);
    pageStart = row + 1;
    return this;
  }

  /** Ends the sheet: what stays in sight, what repeats on every page, what is locked. */
  public void finished(int headingRow) {
    SheetSetup.repeated(sheet, headingRow);
    finishedBelow(headingRow);
  }

  /** Ends a sheet of which no row repeats on every page. */
  public void finishedBelow(int frozenRow) {
    settle();
    sheet.createFreezePane(0, frozenRow);
    SheetSetup.locked(sheet);
  }

  public double widthPt(int from, int to) {
    double points = 0;
    for (int column = from; column <= to; column++) {
      points += widths[column] * DIGIT_PT;
    }
    return points;
  }

  private void makeRoom(String text, Look look, int from, int to) {
    double wanted = heightPt(text, look, widthPt(from, to));
    double height = Math.max(wanted, heights.getOrDefault(row, 0.0));
    heights.put(row, height);
    sheet.getRow(row).setHeightInPoints((float) Math.min(HIGHEST_ROW_PT, height));
  }

  /** Height of a row that shows the text whole in cells of this width, points. */
  static double heightPt(String text, Look look, double widthPt) {
    double size = look.spec.sizePt;
    double width = widthPt - CELL_MARGIN_PT - look.spec.indent * INDENT_PT;
    double fitted = look.spec.bold ? width / 1.09 : width;
    int lines =
        look.spec.wrapped && !text.isEmpty() ? Lettering.sans().wrap(text, size, fitted).size() : 1;
    // Sentences follow one another closely; figures want air.
    return lines * size * LINE_SPACING + (size < 10 ? 1 : 3);
  }

  private XSSFCell cell(int column) {
    XSSFRow current = sheet.getRow(row);
    XSSFCell cell = current.getCell(column);
    return cell == null ? current.createCell(column) : cell;
  }

  /** Text without what the file format cannot hold. */
  static String clean(String value) {
    String readable = PlainText.spelt(value).replace("\r\n", "\n");
    if (readable.length() <= LONGEST_TEXT) {
      return readable;
    }
    int end = LONGEST_TEXT - 1;
    return readable.substring(0, Character.isLowSurrogate(readable.charAt(end)) ? end - 1 : end)
        + "…";
  }
}
