package hosewright.command;

import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.problem.ConflictException;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;

/** Ships what is reserved for an order, all or part of it. */
final class OrderShipCommand extends ShellCommand {
  private final ObjectProvider<Books> books;

  OrderShipCommand(ObjectProvider<Books> books) {
    super(
        CommandSpec.of(
                "order ship",
                Group.BUY,
                "Ships what is reserved for an order, all or part",
                "order ship O-000001 --line 1=4")
            .alias("ship")
            .with(OrderChoice.argument(books))
            .with(OrderChoice.lines(), Signing.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.getObject()) {
      Order order = OrderChoice.order(in, open);
      Map<Integer, Integer> going = OrderChoice.quantities(in).orElseGet(() -> reserved(order));
      boolean onlyWork = order.lines().stream().noneMatch(OrderLine::isGoods);
      if (order.state() == Order.State.SHIPPED
          || order.state() == Order.State.CANCELLED
          || (going.isEmpty() && !onlyWork)) {
        throw ConflictException.stateForbids(
            "order",
            order.number(),
            "has nothing reserved that could go",
            "'order show' tells where it stands");
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
