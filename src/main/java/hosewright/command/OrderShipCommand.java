package hosewright.command;

import hosewright.desk.Books;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.problem.BadInputException;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Ships what is reserved for an order, all or part of it. */
final class OrderShipCommand extends ShellCommand {
  private final Supplier<Books> books;

  OrderShipCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order ship",
                Group.BUY,
                "Ships what is reserved for an order, all or part",
                "order ship O-000001 --line 1=4")
            .alias("ship")
            .with(OrderChoice.argument(books))
            .with(OrderChoice.lines(), SignedBy.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Order order = OrderChoice.order(in, open);
      Map<Integer, Integer> going = OrderChoice.quantities(in).orElseGet(() -> reserved(order));
      boolean onlyWork = order.lines().stream().noneMatch(OrderLine::isGoods);
      if (order.state() == Order.State.SHIPPED
          || order.state() == Order.State.CANCELLED
          || (going.isEmpty() && !onlyWork)) {
        throw new BadInputException(
            "number", order.number(), "an order for which something is reserved");
      }
      Order shipped = open.orders().ship(order.number(), going, OrderChoice.actor(in, open));
      return OrderShowCommand.answer(shipped, false);
    }
  }

  private static Map<Integer, Integer> reserved(Order order) {
    return order.lines().stream()
        .filter(line -> line.reserved() > 0)
        .collect(Collectors.toMap(OrderLine::position, OrderLine::reserved));
  }
}
