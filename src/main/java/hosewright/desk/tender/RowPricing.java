package hosewright.desk.tender;

import hosewright.intake.RouteFile;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderPricing;
import hosewright.tender.TenderRow;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Prices a row of a tender, whatever it asks for: a job, or a package file. */
final class RowPricing {
  private final TenderPricing pricing;
  private final Optional<PackageRows> packages;
  private final TenderBasis basis;
  private final Path folder;

  /**
   * @param packages prices rows that name a package file; empty where no row does
   * @param folder where files are looked for that rows name
   */
  RowPricing(
      TenderPricing pricing, Optional<PackageRows> packages, TenderBasis basis, Path folder) {
    this.pricing = pricing;
    this.packages = packages;
    this.basis = basis;
    this.folder = folder;
  }

  CurrencyUnit currency() {
    return pricing.currency();
  }

  /** What comes of a row; never throws for anything in it. Threads may use it at once. */
  RowDone price(TenderRow row) {
    TenderRow asked = basis.together() ? ofTheOneQuote(row) : row;
    return asked.packageFile().isPresent() && packages.isPresent()
        ? packages.get().price(asked)
        : RowDone.of(pricing.price(withRoute(asked)));
  }

  /** The row with the places of the route it names, or with why they cannot be read. */
  private TenderRow withRoute(TenderRow row) {
    try {
      return row.saying(RouteFile.putInto(row.answers(), Optional.of(folder)));
    } catch (BadInputException e) {
      return row.amiss(e.problems());
    }
  }

  /** One quote has one buyer and one day. */
  private TenderRow ofTheOneQuote(TenderRow row) {
    List<Problem> problems = new ArrayList<>();
    refuse(row, JobField.CUSTOMER, basis.customer(), problems);
    refuse(row, JobField.DATE, basis.date().toString(), problems);
    return row.amiss(problems);
  }

  private static void refuse(TenderRow row, JobField field, String ofAll, List<Problem> problems) {
    String said = row.answers().getOrDefault(field, ofAll);
    if (!said.toUpperCase(Locale.ROOT).equals(ofAll.toUpperCase(Locale.ROOT))) {
      problems.add(
          Problem.of(field.word(), said, "left empty, or " + ofAll + ": all rows are one quote"));
    }
  }
}
