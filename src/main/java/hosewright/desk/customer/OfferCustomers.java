package hosewright.desk.customer;

import hosewright.desk.Books;
import java.util.List;
import java.util.function.Supplier;

/** Offers customers to whoever has to name one. */
public final class OfferCustomers {
  private final Supplier<Books> books;

  public OfferCustomers(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The ids of all customers.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public List<String> ids() {
    try (Books open = books.get()) {
      return open.buyers().ids();
    }
  }
}
