package hosewright.paper.sheet;

import hosewright.paper.page.Paper;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How a sheet prints and what of it can be changed. */
public final class SheetSetup {
  private SheetSetup() {}

  /** Prints one page wide, with page numbers. */
  public static void printed(
      XSSFSheet sheet, Paper paper, boolean landscape, String headLeft, String headRight) {
    PrintSetup setup = sheet.getPrintSetup();
    setup.setPaperSize(paper == Paper.A4 ? PrintSetup.A4_PAPERSIZE : PrintSetup.LETTER_PAPERSIZE);
    setup.setLandscape(landscape);
    sheet.setFitToPage(true);
    setup.setFitWidth((short) 1);
    setup.setFitHeight((short) 0);
    sheet.setMargin(PageMargin.LEFT, 0.5);
    sheet.setMargin(PageMargin.RIGHT, 0.5);
    sheet.setMargin(PageMargin.TOP, 0.7);
    sheet.setMargin(PageMargin.BOTTOM, 0.7);
    sheet.setHorizontallyCenter(true);
    sheet.getHeader().setLeft(Cells.inHeader(headLeft));
    sheet.getHeader().setRight(Cells.inHeader(headRight));
    sheet.getFooter().setLeft("&A");
    sheet.getFooter().setRight("Page &P of &N");
    sheet.setDisplayGridlines(false);
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
