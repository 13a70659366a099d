package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.quote.life.QuoteLife.Step;
import java.util.Optional;
import java.util.function.Supplier;

/** Gives a draft up: what was offered before it stands again, and its number stays used. */
public final class DiscardQuote {
  private final Supplier<Books> books;

  public DiscardQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The draft, discarded.
   *
   * @param reason why
   * @param by who gives it up
   * @throws hosewright.problem.ConflictException when the latest revision is no draft
   */
  public Moved discard(String number, String reason, String by) {
    return Moved.take(books, number, Step.DISCARD, "reason", Optional.of(reason), by);
  }
}
