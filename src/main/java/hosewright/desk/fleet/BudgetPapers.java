package hosewright.desk.fleet;

import hosewright.fleet.budget.FleetBudget;
import hosewright.paper.fleet.BudgetWorkbook;
import hosewright.paper.page.Export;
import hosewright.paper.page.Paper;
import hosewright.quote.terms.Dealer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;

/** Where the budget's workbook goes. */
public record BudgetPapers(Paper paper, Path folder, boolean overwrite) {

  /** The workbook's file; refused where it cannot be written. */
  Export place(FleetBudget budget) {
    return Export.to(folder, "hose-budget-" + budget.asked().from() + ".xlsx", overwrite);
  }

  /** Writes the workbook and gives its file. */
  String write(FleetBudget budget, Dealer dealer, Instant madeAt) {
    try {
      return place(budget)
          .write(out -> BudgetWorkbook.write(budget, dealer, paper, madeAt, out))
          .toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
