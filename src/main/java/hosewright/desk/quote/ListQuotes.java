package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.quote.life.QuoteHeading;
import java.util.List;
import java.util.function.Supplier;

/** Lists the quotes on the books. */
public final class ListQuotes {
  private final Supplier<Books> books;

  public ListQuotes(Supplier<Books> books) {
    this.books = books;
  }

  /** The latest revision of every quote, newest number first. */
  public List<QuoteHeading> list() {
    try (Books open = books.get()) {
      return open.quotes().list();
    }
  }
}
