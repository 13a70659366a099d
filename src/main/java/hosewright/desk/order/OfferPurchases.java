package hosewright.desk.order;

import hosewright.desk.Books;
import java.util.List;
import java.util.function.Supplier;

/** Offers purchase orders to whoever has to name one. */
public final class OfferPurchases {
  private final Supplier<Books> books;

  public OfferPurchases(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The numbers of all purchase orders, those of the newest order first.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public List<String> numbers() {
    try (Books open = books.get()) {
      return OrderChoice.purchases(open.orders());
    }
  }
}
