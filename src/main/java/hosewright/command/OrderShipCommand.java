package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.order.ShipGoods;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Ships what is reserved for an order, all or part of it. */
final class OrderShipCommand extends ShellCommand {
  private final ShipGoods shipGoods;

  OrderShipCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order ship",
                Group.BUY,
                "Ships what is reserved for an order, all or part",
                "order ship O-000001 --line 1=4")
            .alias("ship")
            .with(OrderArgument.order(books))
            .with(OrderArgument.lines(), SignedBy.option()));
    this.shipGoods = new ShipGoods(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return OrderShowCommand.answer(
        shipGoods.ship(
            in.argument(0).orElseThrow(), OrderArgument.quantities(in), SignedBy.name(in)),
        false);
  }
}
