package hosewright.command;

import hosewright.desk.Books;
import hosewright.order.Order;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Reserves for an order what has become free since it was raised. */
final class OrderReserveCommand extends ShellCommand {
  private final Supplier<Books> books;

  OrderReserveCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order reserve",
                Group.BUY,
                "Reserves for an order what has become free since",
                "order reserve O-000001")
            .with(OrderChoice.argument(books)));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Order order = OrderChoice.order(in, open);
      return OrderShowCommand.answer(open.orders().reserve(order.number()), false);
    }
  }
}
