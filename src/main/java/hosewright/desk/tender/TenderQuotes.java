package hosewright.desk.tender;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Basis.TenderRow;
import hosewright.quote.Group;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.life.QuoteStore;
import hosewright.quote.life.Signed;
import hosewright.quote.terms.DealerTerms;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderResult;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Keeps a quote for each row that can be laid, a batch at a time, so that the books are open for
 * others in between. Each quote says which row of which file it was made for: a run that was killed
 * between the books and its journal, and one begun anew, finds them again instead of making them
 * twice.
 */
final class TenderQuotes {
  /** Enough of a digest to tell files apart. */
  private static final int DIGITS = 16;

  private final Supplier<Books> books;
  private final TenderBasis basis;
  private final Catalogue catalogue;
  private final QuoteMaker maker;
  private final boolean goesOn;
  private final String by;
  private boolean lookedBack;
  private int earlier;
  private Map<Made, Quote> madeBefore = Map.of();

  /** A row of the file, quoted to somebody. */
  private record Made(long line, String customer) {}

  /**
   * @param goesOn whether an earlier run goes on, whose quotes are this one's
   * @param by who makes the quotes
   */
  TenderQuotes(
      Supplier<Books> books,
      TenderBasis basis,
      Catalogue catalogue,
      DealerTerms terms,
      boolean goesOn,
      String by) {
    this.books = books;
    this.basis = basis;
    this.catalogue = catalogue;
    this.maker = new QuoteMaker(catalogue, terms);
    this.goesOn = goesOn;
    this.by = by;
  }

  /**
   * The results of the rows, each with its quote where it can be laid.
   *
   * @throws BadInputException when the catalogue was replaced since the run began
   */
  List<TenderResult> keep(List<RowDone> rows) {
    if (rows.stream().noneMatch(row -> row.sale().isPresent())) {
      return rows.stream().map(RowDone::result).toList();
    }
    try (Books open = opened()) {
      List<TenderResult> results = new ArrayList<>();
      for (RowDone row : rows) {
        results.add(row.sale().map(sale -> quoted(row, sale, open)).orElse(row.result()));
      }
      return results;
    }
  }

  /**
   * One quote for all rows that can be laid.
   *
   * @param sales by the line of the file each begins on
   * @throws BadInputException when the catalogue was replaced since the run began
   */
  TogetherQuote keepTogether(Map<Long, Sale> sales) {
    if (sales.isEmpty()) {
      return new TogetherQuote(Optional.empty(), Map.of());
    }
    Sale any = sales.values().iterator().next();
    Sale all =
        new Sale(
            "Tender " + basis.source().file(),
            any.customer(),
            any.date(),
            TogetherQuote.groups(sales.values()),
            TogetherQuote.free(sales.values()));
    try (Books open = opened()) {
      return TogetherQuote.of(kept(TogetherQuote.WHOLE_FILE, all, open), sales);
    }
  }

  /** The books, where they hold the catalogue that the run began with. */
  private Books opened() {
    Books open = books.get();
    try {
      int load = open.kept().loadNumber();
      if (load != basis.catalogueLoad()) {
        throw new BadInputException(
            "catalogue load",
            String.valueOf(load),
            "the catalogue was replaced while this tender was being priced with load "
                + basis.catalogueLoad()
                + "; give "
                + Given.as("restart")
                + " to begin anew");
      }
      if (!lookedBack) {
        madeBefore = madeBefore(open.quotes());
        tellEarlier(open);
        lookedBack = true;
      }
      return open;
    } catch (RuntimeException e) {
      open.close();
      throw e;
    }
  }

  private TenderResult quoted(RowDone row, Sale sale, Books open) {
    Quote quote = kept(row.result().place().line(), sale, open);
    return row.result().quoted(quote.number(), quote.total());
  }

  private Quote kept(long line, Sale sale, Books open) {
    Quote before = madeBefore.get(new Made(line, sale.customer().id()));
    return before != null
        ? before
        : open.quotes()
            .saveNew(
                number -> make(number, line, sale, open), Signed.of(Step.MAKE, by, open.now(), ""));
  }

  private Quote make(String number, long line, Sale sale, Books open) {
    return maker.make(
        new QuoteMaker.Draft(
            new Quote.Name(number, 1),
            sale.customer(),
            sale.date(),
            basis(sale, run(line)),
            Amendments.NONE.withLines(sale.free()).withTerms(open.termsOfSale()),
            open.now()),
        new PriceList(catalogue, sale.customer(), sale.date()));
  }

  private static Basis basis(Sale sale, TenderRow row) {
    Group first = sale.groups().get(0);
    return sale.groups().size() == 1 && first.count() == 1
        ? new Basis(sale.title(), first.jobYaml(), first.plan(), Optional.of(row))
        : Basis.of(sale.title(), Optional.of(row), sale.groups());
  }

  /** The newest quote of each row and buyer that nobody gave up, as it stands now. */
  private Map<Made, Quote> madeBefore(QuoteStore store) {
    Map<Made, Quote> made = new HashMap<>();
    for (Quote first : store.ofTender(digits())) {
      TenderRow row = first.basis().tender().orElseThrow();
      if (basis.together() != (row.line() == TogetherQuote.WHOLE_FILE)) {
        continue;
      }
      store
          .find(first.number())
          .filter(latest -> latest.status() != Quote.Status.DISCARDED)
          .ifPresent(
              latest -> {
                made.put(new Made(row.line(), first.customer().id()), latest);
                earlier += goesOn ? 0 : 1;
              });
    }
    return made;
  }

  /**
   * Said once, and not of a run that goes on: quotes of an earlier run stand, which may be at other
   * prices.
   */
  private void tellEarlier(Books open) {
    if (earlier > 0) {
      open.say(
          "This file was priced into quotes before: its %d quotes stand and none is made twice; 'quote update-prices' brings one to today's prices."
              .formatted(earlier));
    }
  }

  private String digits() {
    return basis.source().sha256().substring(0, DIGITS);
  }

  /** A row of this run. */
  private TenderRow run(long line) {
    return new TenderRow(digits(), basis.begun(), line);
  }
}
