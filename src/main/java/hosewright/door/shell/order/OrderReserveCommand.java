package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.ReserveGoods;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Reserves for an order what has become free since it was raised. */
public final class OrderReserveCommand extends ShellCommand {
  private final ReserveGoods reserveGoods;

  public OrderReserveCommand(Supplier<Books> books) {
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
