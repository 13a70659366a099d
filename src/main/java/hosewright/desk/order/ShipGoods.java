package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.problem.ConflictException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Ships what is reserved for an order, all or part of it. */
public final class ShipGoods {
  private final Supplier<Books> books;

  public ShipGoods(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The order with what has gone.
   *
   * @param quantities what goes, by line; all that is reserved without it
   * @param by who ships it
   * @throws ConflictException when nothing is reserved
   * @throws hosewright.problem.BadInputException when less of a line than is to go
   */
  public Standing ship(String number, Optional<Map<Integer, Integer>> quantities, String by) {
    try (Books open = books.get()) {
      Order order = OrderChoice.order(number, open);
      Map<Integer, Integer> going = quantities.orElseGet(() -> reserved(order));
      boolean onlyWork =
          order.lines().stream().filter(OrderLine::isGoods).allMatch(OrderLine::isCancelled);
      if (order.state() == Order.State.SHIPPED
          || order.state() == Order.State.CANCELLED
          || (going.isEmpty() && !onlyWork)) {
        throw ConflictException.stateForbids(
            "order",
            order.number(),
            "has nothing reserved that could go",
            "'order show' tells where it stands");
      }
      return Standing.of(
          open.orders().ship(order.number(), going, Signing.actor(by, open.now())), open);
    }
  }

  private static Map<Integer, Integer> reserved(Order order) {
    return order.lines().stream()
        .filter(line -> line.counts().reserved() > 0)
        .collect(Collectors.toMap(OrderLine::position, line -> line.counts().reserved()));
  }
}
