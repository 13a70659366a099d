package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import java.util.List;
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
   * @param portion what goes; all that is reserved without it
   * @param by who ships it
   * @throws ConflictException when nothing is reserved
   * @throws hosewright.problem.BadInputException when less of a line than is to go
   */
  public Standing ship(String number, Portion portion, String by) {
    try (Books open = books.get()) {
      Order order = OrderChoice.order(number, open);
      Map<Integer, Integer> going = going(order, portion, open);
      boolean onlyWork =
          order.lines().stream().filter(OrderLine::isGoods).allMatch(OrderLine::allCancelled);
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

  /**
   * What of an order is meant.
   *
   * @param quantities pieces by line
   * @param group the number of one of its groups, all that is reserved of it
   */
  public record Portion(Optional<Map<Integer, Integer>> quantities, Optional<Integer> group) {
    public static final Portion ALL = new Portion(Optional.empty(), Optional.empty());

    /**
     * Refuses lines and a group together.
     *
     * @throws BadInputException where both are given
     */
    public Portion {
      if (quantities.isPresent() && group.isPresent()) {
        throw new BadInputException(
            "group", group.get().toString(), "lines or a group, not both at once");
      }
    }
  }

  private static Map<Integer, Integer> going(Order order, Portion portion, Books open) {
    return portion
        .quantities()
        .orElseGet(
            () ->
                reserved(
                    portion
                        .group()
                        .map(number -> Standing.group(number, order, open).of(order))
                        .orElse(order.lines())));
  }

  private static Map<Integer, Integer> reserved(List<OrderLine> lines) {
    return lines.stream()
        .filter(line -> line.counts().reserved() > 0)
        .collect(Collectors.toMap(OrderLine::position, line -> line.counts().reserved()));
  }
}
