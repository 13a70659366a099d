package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.order.Coming;
import hosewright.order.Order;
import hosewright.order.OrderGroup;
import hosewright.order.ShipDay;
import hosewright.problem.BadInputException;
import java.util.List;

/**
 * An order, and where the goods it is short of come from.
 *
 * @param coming what brings the goods of this order, whichever order they were bought for
 * @param groups the groups of its quote and the lines of each
 */
public record Standing(Order order, Coming coming, List<OrderGroup> groups) {

  /** An order as it stands on the books, with the day it can ship now. */
  static Standing of(Order order, Books books) {
    Coming coming = books.orders().coming(order);
    return new Standing(now(order, coming, books), coming, groups(order, books));
  }

  /**
   * An order with the day it can ship now: since it was raised goods came, or were counted less.
   */
  static Order now(Order order, Books books) {
    return order.isOpen() ? now(order, books.orders().coming(order), books) : order;
  }

  private static Order now(Order order, Coming coming, Books books) {
    if (!order.isOpen()) {
      return order;
    }
    List<String> work =
        order.lines().stream()
            .filter(line -> !line.isGoods() && !line.ware().item().isEmpty())
            .map(line -> line.ware().item())
            .toList();
    int workDays = work.isEmpty() ? 0 : ShipDay.workDays(order.lines(), books.shelf().load(work));
    return order.shippingOn(
        ShipDay.of(order.number(), order.lines(), coming, workDays, books.today()));
  }

  /** The groups of an order. */
  static List<OrderGroup> groups(Order order, Books books) {
    return books
        .quotes()
        .find(order.sold().quoteNumber(), order.sold().quoteRevision())
        .map(quote -> OrderGroup.of(order, quote))
        .orElse(List.of());
  }

  /**
   * One group of an order.
   *
   * @throws BadInputException naming the groups there are
   */
  static OrderGroup group(int number, Order order, Books books) {
    List<OrderGroup> groups = groups(order, books);
    return groups.stream()
        .filter(group -> group.group() == number)
        .findFirst()
        .orElseThrow(
            () ->
                new BadInputException(
                    "group",
                    "" + number,
                    "a group of this order: "
                        + String.join(
                            ", ",
                            groups.stream().map(one -> one.group() + " " + one.title()).toList())));
  }

  /** How many a line is short of that nobody is asked for. */
  public int unsupplied(int line) {
    return coming.unsupplied(order.number(), line);
  }
}
