package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.order.Order;
import java.util.List;
import java.util.function.Supplier;

/** Lists the orders on the books. */
public final class ListOrders {
  private final Supplier<Books> books;

  public ListOrders(Supplier<Books> books) {
    this.books = books;
  }

  /** Every order with the day it can ship now, newest first. */
  public List<Order> list() {
    try (Books open = books.get()) {
      return open.orders().list().stream().map(order -> Standing.now(order, open)).toList();
    }
  }
}
