package hosewright.desk.tender;

import hosewright.paper.tender.TenderWorkbook;
import hosewright.paper.tender.TenderWorkbook.Counts;
import hosewright.tender.InOrder;
import hosewright.tender.TenderFile;
import hosewright.tender.TenderResult;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Works through the rows that are left, and journals what came of them. */
final class TenderRun {
  /** Rows between two visits to the disk, and between two openings of the books for quotes. */
  private static final int BATCH = 25;

  private final RowPricing pricing;
  private final TenderJournal journal;
  private final Optional<TenderQuotes> quotes;
  private final Watcher watcher;
  private final List<RowDone> batch = new ArrayList<>();
  private final Map<Long, Sale> sales = new TreeMap<>();
  private int again;

  TenderRun(
      RowPricing pricing, TenderJournal journal, Optional<TenderQuotes> quotes, Watcher watcher) {
    this.pricing = pricing;
    this.journal = journal;
    this.quotes = quotes;
    this.watcher = watcher;
  }

  private boolean isTogether() {
    return journal.basis().together();
  }

  void work(TenderInput input, int threads) throws IOException {
    try (TenderFile rows = input.rows()) {
      if (isTogether()) {
        // The journal has results and no plans: what one quote is to hold is planned again.
        again = journal.done();
      } else {
        for (int row = 0; row < journal.done(); row++) {
          rows.next();
        }
      }
      InOrder.work(rows, threads, pricing::price, this::take);
      settle();
    }
  }

  private void take(RowDone row) {
    if (isTogether()) {
      row.sale().ifPresent(sale -> sales.put(row.result().place().line(), sale));
    }
    if (again > 0) {
      again--;
      return;
    }
    if (isEach()) {
      batch.add(row);
      watcher.done(journal.done() + batch.size());
    } else {
      journal.add(row.result());
      watcher.done(journal.done());
    }
    if (batch.size() == BATCH || !isEach() && journal.done() % BATCH == 0) {
      settle();
    }
  }

  private boolean isEach() {
    return quotes.isPresent() && !isTogether();
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

  /**
   * The one quote for all rows, kept; empty where none was asked for.
   *
   * @throws hosewright.problem.BadInputException when the catalogue was replaced since the run
   *     began
   */
  Optional<TogetherQuote> together() {
    return isTogether() ? Optional.of(quotes.orElseThrow().keepTogether(sales)) : Optional.empty();
  }

  TenderWorkbook.Results results(Optional<TogetherQuote> one) {
    return reader -> journal.each(row -> reader.accept(one.map(q -> q.in(row)).orElse(row)));
  }
}
