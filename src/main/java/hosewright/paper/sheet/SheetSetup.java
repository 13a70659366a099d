package hosewright.paper.sheet;

import hosewright.paper.page.Paper;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How a sheet prints and what of it can be changed. */
public final class SheetSetup {
  private SheetSetup() {}

  private static final double SIDE_IN = 0.5;
  private static final double TOP_IN = 0.55;
  private static final double POINTS_PER_INCH = 72;

  /** Programs and printers differ by a little in how wide and high they make a sheet. */
  private static final double ROOM = 0.98;

  /** Prints on this paper, with page numbers. */
  public static void printed(
      XSSFSheet sheet, Paper paper, boolean landscape, String headLeft, String headRight) {
    PrintSetup setup = sheet.getPrintSetup();
    setup.setPaperSize(paper == Paper.A4 ? PrintSetup.A4_PAPERSIZE : PrintSetup.LETTER_PAPERSIZE);
    setup.setLandscape(landscape);
    sheet.setMargin(PageMargin.LEFT, SIDE_IN);
    sheet.setMargin(PageMargin.RIGHT, SIDE_IN);
    sheet.setMargin(PageMargin.TOP, TOP_IN);
    sheet.setMargin(PageMargin.BOTTOM, TOP_IN);
    sheet.setHorizontallyCenter(true);
    sheet.getHeader().setLeft(Cells.inHeader(headLeft));
    sheet.getHeader().setRight(Cells.inHeader(headRight));
    sheet.getFooter().setLeft("&A");
    sheet.getFooter().setRight("Page &P of &N");
    sheet.setDisplayGridlines(false);
  }

  /**
   * Prints a sheet one page wide, by a scale of its own and not by the spreadsheet program's
   * fitting, which may pass over where pages are to part. Gives how high a printed page is in
   * points of the sheet.
   */
  static double scaled(XSSFSheet sheet, double widthPt) {
    PrintSetup setup = sheet.getPrintSetup();
    boolean a4 = setup.getPaperSize() == PrintSetup.A4_PAPERSIZE;
    double shortIn = a4 ? 210 / 25.4 : 8.5;
    double longIn = a4 ? 297 / 25.4 : 11;
    double acrossIn = (setup.getLandscape() ? longIn : shortIn) - 2 * SIDE_IN;
    double downIn = (setup.getLandscape() ? shortIn : longIn) - 2 * TOP_IN;
    int percent =
        (int) Math.min(100, Math.floor(100 * ROOM * acrossIn * POINTS_PER_INCH / widthPt));
    setup.setScale((short) Math.max(10, percent));
    return downIn * POINTS_PER_INCH * ROOM * 100 / setup.getScale();
  }

  /** Repeats a row, by its number, at the top of every printed page. */
  public static void repeated(XSSFSheet sheet, int rowNumber) {
    sheet.setRepeatingRows(new CellRangeAddress(rowNumber - 1, rowNumber - 1, -1, -1));
  }

  /** Locks every cell but the input cells; without a password, since it guards slips only. */
  static void locked(XSSFSheet sheet) {
    sheet.enableLocking();
    sheet.lockObjects(true);
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
    sheet.lockSelectLockedCells(false);
  }
}
