package hosewright.paper.quote;

import hosewright.quote.Quote;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.Money;

/** Holds a workbook's recalculated totals against the quote before anybody sees them. */
final class TotalsCheck {
  private TotalsCheck() {}

  static void holds(XSSFWorkbook workbook, Quote quote) {
    Map<String, Money> totals = new LinkedHashMap<>();
    totals.put(QuoteSheet.SUBTOTAL, quote.totals().subtotal());
    quote.totals().knownFreight().ifPresent(known -> totals.put(QuoteSheet.FREIGHT, known));
    totals.put(QuoteSheet.TAX, quote.totals().tax());
    totals.put(QuoteSheet.TOTAL, quote.total());
    totals.forEach(
        (name, expected) -> {
          BigDecimal shown =
              BigDecimal.valueOf(valueOf(workbook, name))
                  .setScale(expected.getScale(), RoundingMode.HALF_UP);
          if (shown.compareTo(expected.getAmount()) != 0) {
            throw new IllegalStateException(
                "quote "
                    + quote.number()
                    + ": the workbook's "
                    + name
                    + " comes to "
                    + shown
                    + " and the quote says "
                    + expected
                    + "; a line's unit price is not the one its price breaks give");
          }
        });
  }

  private static double valueOf(XSSFWorkbook workbook, String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    XSSFCell cell = workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
    return cell.getNumericCellValue();
  }
}
