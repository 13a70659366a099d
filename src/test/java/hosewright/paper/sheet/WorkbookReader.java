package hosewright.paper.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reads figures out of a saved workbook as they stand in the file, without evaluating. */
public final class WorkbookReader {
  private WorkbookReader() {}

  public static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  public static XSSFCell named(XSSFWorkbook workbook, String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  public static double figure(XSSFWorkbook workbook, String name) {
    return named(workbook, name).getNumericCellValue();
  }

  /** The figure of a name that is kept to one sheet. */
  public static double figure(XSSFWorkbook workbook, String name, String sheet) {
    return workbook.getNames(name).stream()
        .filter(one -> one.getSheetIndex() == workbook.getSheetIndex(sheet))
        .map(one -> new CellReference(one.getRefersToFormula()))
        .map(at -> workbook.getSheet(sheet).getRow(at.getRow()).getCell(at.getCol()))
        .findFirst()
        .orElseThrow()
        .getNumericCellValue();
  }

  /** An amount to the cent; more decimals than float noise explains are refused. */
  public static BigDecimal cents(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    if (Math.abs(rounded.doubleValue() - value) > 1e-6) {
      throw new AssertionError(value + " is not a whole number of cents");
    }
    return rounded;
  }

  public static BigDecimal amount(XSSFWorkbook workbook, String name) {
    return cents(figure(workbook, name));
  }

  /** Index of the row whose first cell is the heading of the quote's table. */
  public static int headingRow(XSSFSheet quoteSheet) {
    for (int row = 0; row <= quoteSheet.getLastRowNum(); row++) {
      XSSFCell cell = quoteSheet.getRow(row) == null ? null : quoteSheet.getRow(row).getCell(0);
      if (cell != null && cell.toString().equals("No.")) {
        return row;
      }
    }
    throw new AssertionError("no table heading on " + quoteSheet.getSheetName());
  }

  /** The rows of the quote's lines; a heading stands between them where a page begins. */
  public static List<XSSFRow> lineRows(XSSFSheet quoteSheet) {
    List<XSSFRow> lines = new ArrayList<>();
    for (int row = headingRow(quoteSheet) + 1; row <= quoteSheet.getLastRowNum(); row++) {
      XSSFRow one = quoteSheet.getRow(row);
      if (one.getCell(0) != null && one.getCell(0).getCellType() == CellType.NUMERIC) {
        lines.add(one);
      }
    }
    return lines;
  }
}
