package hosewright.desk.tender;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.intake.JobFile;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Basis.TenderRow;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.life.QuoteStore;
import hosewright.quote.life.Signed;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.DealerTerms;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderPricing.Priced;
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
  List<TenderResult> keep(List<Priced> rows) {
    if (rows.stream().noneMatch(row -> row.plan().isPresent())) {
      return rows.stream().map(Priced::result).toList();
    }
    try (Books open = books.get()) {
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
      QuoteStore store = open.quotes();
      if (!lookedBack) {
        madeBefore = madeBefore(store);
        tellEarlier(open);
        lookedBack = true;
      }
      List<TenderResult> results = new ArrayList<>();
      for (Priced row : rows) {
        results.add(row.plan().isPresent() ? quoted(row, open, store) : row.result());
      }
      return results;
    }
  }

  private TenderResult quoted(Priced row, Books open, QuoteStore store) {
    Quote quote =
        madeBefore.get(new Made(row.result().place().line(), row.customer().orElseThrow().id()));
    if (quote == null) {
      quote =
          store.saveNew(
              number -> make(number, row, open), Signed.of(Step.MAKE, by, open.now(), ""));
    }
    return row.result().quoted(quote.number(), quote.total());
  }

  private Quote make(String number, Priced row, Books open) {
    Customer customer = row.customer().orElseThrow();
    return maker.make(
        new QuoteMaker.Draft(
            new Quote.Name(number, 1),
            customer,
            row.date(),
            new Basis(
                row.result().place().title(),
                JobFile.write(row.answers()),
                row.plan().orElseThrow(),
                Optional.of(run(row.result().place().line()))),
            Amendments.NONE.withTerms(open.termsOfSale()),
            open.now()),
        new PriceList(catalogue, customer, row.date()));
  }

  /** The newest quote of each row and buyer that nobody gave up, as it stands now. */
  private Map<Made, Quote> madeBefore(QuoteStore store) {
    Map<Made, Quote> made = new HashMap<>();
    for (Quote first : store.ofTender(digits())) {
      TenderRow row = first.basis().tender().orElseThrow();
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
