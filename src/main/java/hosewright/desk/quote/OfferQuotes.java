package hosewright.desk.quote;

import hosewright.desk.Books;
import java.util.List;
import java.util.function.Supplier;

/** Offers quotes to whoever has to name one. */
public final class OfferQuotes {
  private final Supplier<Books> books;

  public OfferQuotes(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The numbers of all quotes, newest first.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public List<String> numbers() {
    try (Books open = books.get()) {
      return QuoteChoice.numbers(open.quotes());
    }
  }
}
