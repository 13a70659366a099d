package hosewright.desk.order;

import hosewright.desk.Books;
import java.util.function.Supplier;

/** Reserves for an order what has become free since it was raised. */
public final class ReserveGoods {
  private final Supplier<Books> books;

  public ReserveGoods(Supplier<Books> books) {
    this.books = books;
  }

  /** The order with what it holds now. */
  public Standing reserve(String number) {
    try (Books open = books.get()) {
      return Standing.of(open.orders().reserve(OrderChoice.order(number, open).number()), open);
    }
  }
}
