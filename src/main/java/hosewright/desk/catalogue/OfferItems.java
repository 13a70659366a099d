package hosewright.desk.catalogue;

import hosewright.desk.Books;
import java.util.List;
import java.util.function.Supplier;

/** Offers the numbers of items while somebody writes one. */
public final class OfferItems {
  private static final int MOST = 200;

  private final Supplier<Books> books;

  public OfferItems(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * Item numbers that begin so, at most 200.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public List<String> beginning(String typed) {
    try (Books open = books.get()) {
      return open.shelf().numbersBeginning(typed, MOST);
    }
  }
}
