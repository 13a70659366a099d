package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Revising;
import hosewright.desk.Revising.Revised;
import hosewright.desk.Signing;
import hosewright.quote.Amendments;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.terms.Customer;
import java.util.function.Supplier;

/** Makes a new revision of the same parts at today's prices. */
public final class UpdatePrices {
  private final Supplier<Books> books;

  public UpdatePrices(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The new revision, kept.
   *
   * @throws hosewright.problem.BadInputException when the quote's state forbids it, or its buyer is
   *     no longer on file
   */
  public Revised update(FurtherRevision asked) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(asked.number(), open);
      QuoteLife.take(seen, Step.UPDATE_PRICES);
      String reason = Signing.sentence("reason", asked.reason());
      Customer customer = open.customers().get(seen.customer().id(), open.today());
      Amendments amendments =
          Revising.withTerms(asked.termsFile(), open, seen.offer().amendments()).because(reason);
      Quote next = open.revisions().repriced(seen, customer, amendments);
      Revised revised = Revising.keep(open, seen, next, Step.UPDATE_PRICES, asked.by());
      LapsedPrices.tell(open, revised.quote());
      return revised;
    }
  }
}
