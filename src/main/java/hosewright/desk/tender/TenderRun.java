package hosewright.desk.tender;

import hosewright.intake.RouteFile;
import hosewright.job.question.JobField;
import hosewright.paper.tender.TenderWorkbook;
import hosewright.paper.tender.TenderWorkbook.Counts;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.tender.InOrder;
import hosewright.tender.TenderFile;
import hosewright.tender.TenderPricing;
import hosewright.tender.TenderPricing.Priced;
import hosewright.tender.TenderResult;
import hosewright.tender.TenderRow;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Works through the rows that are left, and journals what came of them. */
final class TenderRun {
  /** Rows between two visits to the disk, and between two openings of the books for quotes. */
  private static final int BATCH = 25;

  private final TenderPricing pricing;
  private final TenderJournal journal;
  private final Optional<TenderQuotes> quotes;
  private final Watcher watcher;
  private final List<Priced> batch = new ArrayList<>();

  TenderRun(
      TenderPricing pricing,
      TenderJournal journal,
      Optional<TenderQuotes> quotes,
      Watcher watcher) {
    this.pricing = pricing;
    this.journal = journal;
    this.quotes = quotes;
    this.watcher = watcher;
  }

  void work(TenderInput input, int threads) throws IOException {
    try (TenderFile rows = input.rows()) {
      for (int row = 0; row < journal.done(); row++) {
        rows.next();
      }
      Optional<Path> folder = Optional.ofNullable(input.file().toAbsolutePath().getParent());
      InOrder.work(rows, threads, row -> pricing.price(withRoute(row, folder)), this::take);
      settle();
    }
  }

  /** The row with the places of the route it names, or with why they cannot be read. */
  private static TenderRow withRoute(TenderRow row, Optional<Path> folder) {
    try {
      Map<JobField, String> answers = RouteFile.putInto(row.answers(), folder);
      return new TenderRow(row.line(), row.id(), answers, row.problems());
    } catch (BadInputException e) {
      List<Problem> problems = new ArrayList<>(row.problems());
      problems.addAll(e.problems());
      return new TenderRow(row.line(), row.id(), row.answers(), problems);
    }
  }

  private void take(Priced row) {
    if (quotes.isEmpty()) {
      journal.add(row.result());
      watcher.done(journal.done());
    } else {
      batch.add(row);
      watcher.done(journal.done() + batch.size());
    }
    if (batch.size() == BATCH || quotes.isEmpty() && journal.done() % BATCH == 0) {
      settle();
    }
  }

  private void settle() {
    if (!batch.isEmpty()) {
      List<TenderResult> results = quotes.orElseThrow().keep(batch);
      results.forEach(journal::add);
      batch.clear();
    }
    journal.force();
  }

  /** How all rows ended. */
  Counts counts() {
    Counts[] counts = {Counts.none(pricing.currency())};
    journal.each(row -> counts[0] = counts[0].with(row));
    return counts[0];
  }

  TenderWorkbook.Results results() {
    return journal::each;
  }
}
