package hosewright.desk.fleet;

import hosewright.desk.Books;
import java.util.List;
import java.util.function.Supplier;

/** Offers sections of hose on record while somebody writes an id. */
public final class OfferSections {
  private static final int MOST = 200;

  private final Supplier<Books> books;

  public OfferSections(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * Ids that begin so, at most 200.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public List<String> beginning(String typed) {
    try (Books open = books.get()) {
      return open.fleet().idsBeginning(typed, MOST);
    }
  }
}
