package hosewright.desk.order;

import hosewright.desk.Books;
import java.util.List;
import java.util.function.Supplier;

/** Offers orders to whoever has to name one. */
public final class OfferOrders {
  private final Supplier<Books> books;

  public OfferOrders(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The numbers of all orders, newest first.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public List<String> numbers() {
    try (Books open = books.get()) {
      return OrderChoice.orders(open.orders());
    }
  }
}
