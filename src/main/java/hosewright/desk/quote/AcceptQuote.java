package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.quote.QuoteLife.Step;
import java.util.Optional;
import java.util.function.Supplier;

/** Notes that a buyer took a quote; an order can then be raised from it. */
public final class AcceptQuote {
  private final Supplier<Books> books;

  public AcceptQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The quote, accepted.
   *
   * @param note what was agreed, for example the number of the buyer's order
   * @param by who notes it
   * @throws hosewright.problem.BadInputException when the quote's state forbids it
   */
  public Moved accept(String number, Optional<String> note, String by) {
    return Moved.take(books, number, Step.ACCEPT, "note", note, by);
  }
}
