package hosewright.paper.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.paper.sheet.WorkbookReader;
import hosewright.quote.RandomPackage;
import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Holds the sums of a package's workbook to a plain reckoning. */
final class PackageSums {
  private PackageSums() {}

  static void hold(XSSFWorkbook workbook, RandomPackage wanted) {
    List<BigDecimal> subtotals = wanted.subtotals();
    assertThat(WorkbookReader.amount(workbook, "quote_subtotal"))
        .isEqualByComparingTo(wanted.subtotal());
    for (int group = 1; subtotals.size() > 1 && group <= subtotals.size(); group++) {
      assertThat(WorkbookReader.amount(workbook, "quote_subtotal_" + group))
          .isEqualByComparingTo(subtotals.get(group - 1));
    }
  }
}
