package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Planning;
import hosewright.desk.Planning.Planned;
import hosewright.desk.Signing;
import hosewright.desk.TextLines;
import hosewright.desk.WrittenJob;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.quote.Amendments;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife.Step;
import hosewright.quote.QuoteMaker;
import hosewright.quote.terms.Customer;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Plans a job for a customer and keeps the priced plan as a numbered quote. */
public final class MakeQuote {
  private final Supplier<Books> books;

  public MakeQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param papers to be written at once
   * @param termsFile name of a text file of terms of sale; the dealer's own without it
   * @param changes prices, order and words set by hand
   * @param by who makes it
   */
  public record Request(
      WrittenJob job,
      Optional<Papers> papers,
      Optional<String> termsFile,
      Changes changes,
      String by) {

    /** Of a quote as its plan and the price list give it. */
    public Request(WrittenJob job, Optional<Papers> papers, Optional<String> termsFile, String by) {
      this(job, papers, termsFile, Changes.NONE, by);
    }
  }

  /**
   * What came of it.
   *
   * @param quote empty where there is no safe plan
   * @param files papers written
   */
  public record Made(LinePlan plan, Optional<Quote> quote, List<String> files) {}

  /**
   * The quote, kept with its papers.
   *
   * @throws hosewright.problem.BadInputException when no customer is named, or the papers have no
   *     place to go to; nothing is kept then
   */
  public Made make(Request asked) {
    try (Books open = books.get()) {
      if (asked.job().job().customer().isEmpty()) {
        throw open.customers().noneNamed();
      }
      Planned planned = new Planning(open).plan(asked.job());
      if (!planned.plan().feasible()) {
        return new Made(planned.plan(), Optional.empty(), List.of());
      }
      notTooFarAhead(open, planned.date());
      Quote quote = keep(open, asked, planned);
      LapsedPrices.tell(open, quote);
      List<String> files =
          asked.papers().map(p -> p.write(quote, Papers.dealer(open.terms()))).orElse(List.of());
      return new Made(planned.plan(), Optional.of(quote), files);
    }
  }

  /** A quote dated ahead holds from its day on; prices of a far day nobody can promise. */
  private static void notTooFarAhead(Books open, LocalDate date) {
    LocalDate last = open.today().plusDays(IssueQuote.LONGEST_DAYS);
    if (date.isAfter(last)) {
      throw new BadInputException("date", date.toString(), "a day up to " + last);
    }
  }

  /** Nothing is kept where the papers asked for have no place to go to. */
  private static Quote keep(Books open, Request asked, Planned planned) {
    Customer customer = planned.customer().orElseThrow();
    Amendments amendments =
        Amendments.NONE.withTerms(
            asked
                .termsFile()
                .map(file -> TextLines.read("terms", file))
                .orElseGet(open::termsOfSale));
    PriceList prices = new PriceList(open.catalogue(), customer, planned.date());
    return open.quotes()
        .saveNew(
            number -> {
              asked.papers().ifPresent(all -> all.places(number, 1));
              return NewQuote.of(
                  open,
                  new QuoteMaker.Draft(
                      new Quote.Name(number, 1),
                      customer,
                      planned.date(),
                      new Quote.Basis(
                          asked.job().job().title(), asked.job().text(), planned.plan()),
                      amendments,
                      open.now()),
                  prices,
                  asked.changes());
            },
            Signing.as(asked.by(), Step.MAKE, open.now(), ""));
  }
}
