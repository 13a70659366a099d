package hosewright.desk.fleet;

import hosewright.fleet.FleetBudget;
import hosewright.quote.Dealer;
import hosewright.report.BudgetWorkbook;
import hosewright.report.Export;
import hosewright.report.Paper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;

/** Where the budget's workbook goes. */
public record BudgetPapers(Paper paper, Path folder, boolean overwrite) {

  /** Writes the workbook and gives its file. */
  String write(FleetBudget budget, Dealer dealer, Instant madeAt) {
    try {
      return Export.to(folder, "hose-budget-" + budget.from() + ".xlsx", overwrite)
          .write(out -> BudgetWorkbook.write(budget, dealer, paper, madeAt, out))
          .toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
