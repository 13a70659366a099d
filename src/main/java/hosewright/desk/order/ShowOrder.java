package hosewright.desk.order;

import hosewright.desk.Books;
import java.util.function.Supplier;

/** Shows an order: its lines, where their goods stand, what was bought for it. */
public final class ShowOrder {
  private final Supplier<Books> books;

  public ShowOrder(Supplier<Books> books) {
    this.books = books;
  }

  /** The order named. */
  public Standing show(String number) {
    try (Books open = books.get()) {
      return Standing.of(OrderChoice.order(number, open), open);
    }
  }
}
