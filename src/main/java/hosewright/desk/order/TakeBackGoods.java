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

/** Takes back goods that went to a customer, for the shelf and the oldest promise there. */
public final class TakeBackGoods {
  private final Supplier<Books> books;

  public TakeBackGoods(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param quantities what came back, by line; all that went without it
   * @param reason why, for the record
   * @param by who takes it in
   */
  public record Request(
      String number, Optional<Map<Integer, Integer>> quantities, String reason, String by) {}

  /**
   * The order with what came back.
   *
   * @throws ConflictException when nothing is with the customer
   * @throws hosewright.problem.BadInputException when less of a line than is said to have come
   *     back; nothing has changed then
   */
  public Standing takeBack(Request asked) {
    String why = Signing.sentence("reason", asked.reason());
    try (Books open = books.get()) {
      Order order = OrderChoice.order(asked.number(), open);
      Map<Integer, Integer> back = asked.quantities().orElseGet(() -> gone(order));
      if (back.isEmpty()) {
        throw ConflictException.stateForbids(
            "order",
            order.number(),
            "has no goods with the customer",
            "'order show' tells where it stands");
      }
      Order after =
          open.orders().takeBack(order.number(), back, Signing.actor(asked.by(), open.now()), why);
      return Standing.of(after, open);
    }
  }

  private static Map<Integer, Integer> gone(Order order) {
    return order.lines().stream()
        .filter(OrderLine::isGoods)
        .filter(line -> line.counts().shipped() > line.counts().returned())
        .collect(
            Collectors.toMap(
                OrderLine::position, line -> line.counts().shipped() - line.counts().returned()));
  }
}
