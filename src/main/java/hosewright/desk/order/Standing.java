package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.order.Coming;
import hosewright.order.Order;

/**
 * An order, and where the goods it is short of come from.
 *
 * @param coming what brings the goods of this order, whichever order they were bought for
 */
public record Standing(Order order, Coming coming) {

  /** An order as it stands on the books. */
  static Standing of(Order order, Books books) {
    return new Standing(order, books.orders().coming(order));
  }

  /** How many a line is short of that nobody is asked for. */
  public int unsupplied(int line) {
    return coming.unsupplied(order.number(), line);
  }
}
