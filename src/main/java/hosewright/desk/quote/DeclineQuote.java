package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.quote.life.QuoteLife.Step;
import java.util.Optional;
import java.util.function.Supplier;

/** Notes that a buyer did not take a quote, and why. */
public final class DeclineQuote {
  private final Supplier<Books> books;

  public DeclineQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The quote, declined.
   *
   * @param reason what the buyer said
   * @param by who notes it
   * @throws hosewright.problem.BadInputException when the quote's state forbids it
   */
  public Moved decline(String number, String reason, String by) {
    return Moved.take(books, number, Step.DECLINE, "reason", Optional.of(reason), by);
  }
}
