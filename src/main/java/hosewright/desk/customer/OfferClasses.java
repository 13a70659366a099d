package hosewright.desk.customer;

import hosewright.desk.Books;
import java.util.List;
import java.util.function.Supplier;

/** Offers the classes of customers that a margin floor is set for. */
public final class OfferClasses {
  private final Supplier<Books> books;

  public OfferClasses(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The classes, in the order of the dealer's file.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public List<String> classes() {
    try (Books open = books.get()) {
      return open.marginFloors().classes();
    }
  }
}
