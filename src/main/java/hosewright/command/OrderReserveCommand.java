package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.order.ReserveGoods;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Reserves for an order what has become free since it was raised. */
final class OrderReserveCommand extends ShellCommand {
  private final ReserveGoods reserveGoods;

  OrderReserveCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order reserve",
                Group.BUY,
                "Reserves for an order what has become free since",
                "order reserve O-000001")
            .with(OrderArgument.order(books)));
    this.reserveGoods = new ReserveGoods(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return OrderShowCommand.answer(reserveGoods.reserve(in.argument(0).orElseThrow()), false);
  }
}
