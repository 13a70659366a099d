package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Revising;
import hosewright.desk.Revising.Revised;
import hosewright.desk.Signing;
import hosewright.quote.Amendments;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteLife.Step;
import java.util.function.Supplier;

/** Takes up a quote that was accepted, declined or expired, as a new revision, prices kept. */
public final class ReopenQuote {
  private final Supplier<Books> books;

  public ReopenQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The new revision, kept.
   *
   * @throws hosewright.problem.BadInputException when the quote's state forbids it
   */
  public Revised reopen(FurtherRevision asked) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(asked.number(), open);
      QuoteLife.take(seen, Step.REOPEN);
      String reason = Signing.sentence("reason", asked.reason());
      Amendments amendments =
          Revising.withTerms(asked.termsFile(), open, seen.offer().amendments()).because(reason);
      Quote next = open.revisions().revised(seen, seen.basis(), amendments);
      return Revising.keep(open, seen, next, Step.REOPEN, asked.by());
    }
  }
}
