package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Revising;
import hosewright.problem.BadInputException;
import hosewright.quote.Quote;
import hosewright.quote.QuoteDiff;
import hosewright.quote.life.QuoteStore;
import java.util.Optional;
import java.util.function.Supplier;

/** Says what changed between two quotes or revisions: job, parts, prices, and why. */
public final class CompareQuotes {
  private final Supplier<Books> books;

  public CompareQuotes(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What the second has otherwise than the first.
   *
   * @param second without it the first is compared with the revision before it
   * @throws BadInputException when there is no such quote, or nothing to compare with
   */
  public QuoteDiff compare(String first, Optional<String> second) {
    try (Books open = books.get()) {
      QuoteStore quotes = open.quotes();
      Quote named = QuoteChoice.named(first, quotes);
      return second
          .map(other -> Revising.diff(named, QuoteChoice.named(other, quotes)))
          .orElseGet(() -> Revising.diff(before(named, quotes), named));
    }
  }

  private static Quote before(Quote quote, QuoteStore quotes) {
    return quotes
        .find(quote.number(), quote.revision() - 1)
        .orElseThrow(
            () ->
                new BadInputException(
                    "B", "", quote.number() + " has one revision; name a quote to compare with"));
  }
}
