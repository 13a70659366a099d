package hosewright.paper.tender;

import hosewright.disk.Scratch;
import hosewright.paper.page.Paper;
import hosewright.paper.sheet.Described;
import hosewright.paper.sheet.SheetScratch;
import hosewright.paper.sheet.StableZip;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderResult;
import hosewright.tender.TenderResult.Outcome;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A tender as a workbook (.xlsx): a row for each job with its totals above, and a sheet of the rows
 * that could not be read or laid. Rows go out as they come, so that the number of jobs takes no
 * memory; the same results give the same bytes.
 */
public final class TenderWorkbook {
  private final TenderBasis basis;
  private final String dealer;
  private final Results results;
  private final Counts counts;
  private final SXSSFWorkbook workbook;
  private final TenderSheets sheets;

  private TenderWorkbook(
      TenderBasis basis,
      String dealer,
      Paper paper,
      Counts counts,
      Results results,
      SXSSFWorkbook workbook) {
    this.basis = basis;
    this.dealer = dealer;
    this.results = results;
    this.counts = counts;
    this.workbook = workbook;
    this.sheets = new TenderSheets(basis, dealer, paper, counts, workbook);
  }

  /** The results of a run in the order of its file, given anew each time. */
  @FunctionalInterface
  public interface Results {
    void each(Consumer<TenderResult> reader);
  }

  /**
   * How the rows ended.
   *
   * @param goods subtotal of the goods of all jobs that can be laid
   */
  public record Counts(
      int jobs, int priced, int noSafePlan, int badInput, int failed, Money goods) {

    /** The counts of nothing yet. */
    public static Counts none(CurrencyUnit currency) {
      return new Counts(0, 0, 0, 0, 0, Money.zero(currency));
    }

    /** With one more row. */
    public Counts with(TenderResult row) {
      boolean laid = row.outcome() == Outcome.PRICED;
      return new Counts(
          jobs + 1,
          priced + one(laid),
          noSafePlan + one(row.outcome() == Outcome.NO_SAFE_PLAN),
          badInput + one(row.outcome() == Outcome.BAD_INPUT),
          failed + one(row.outcome() == Outcome.OUR_FAULT),
          laid ? goods.plus(row.figures().orElseThrow().price().goods()) : goods);
    }

    private static int one(boolean yes) {
      return yes ? 1 : 0;
    }
  }

  /** Writes the workbook. The stream stays open. */
  public static void write(
      TenderBasis basis,
      String dealer,
      Paper paper,
      Counts counts,
      Results results,
      OutputStream out)
      throws IOException {
    SheetScratch.use();
    Path loose = Scratch.file("tender", ".xlsx");
    try (SXSSFWorkbook workbook = new SXSSFWorkbook(new XSSFWorkbook(), 100)) {
      new TenderWorkbook(basis, dealer, paper, counts, results, workbook).fill();
      try (OutputStream file = Files.newOutputStream(loose)) {
        workbook.write(file);
      }
      StableZip.copy(loose, out);
    } finally {
      Files.deleteIfExists(loose);
    }
  }

  private void fill() {
    sheets.head();
    results.each(sheets::row);
    sheets.finish();
    properties();
  }

  private void properties() {
    new Described(
            "Tender " + basis.source().file(),
            counts.jobs() + " jobs",
            dealer,
            Optional.of(TenderSheets.midnight(basis.date())))
        .in(workbook.getXSSFWorkbook());
  }
}
