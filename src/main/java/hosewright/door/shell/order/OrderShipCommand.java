package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.ShipGoods;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Ships what is reserved for an order, all or part of it. */
public final class OrderShipCommand extends ShellCommand {
  private final ShipGoods shipGoods;

  public OrderShipCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order ship",
                Group.BUY,
                "Ships what is reserved for an order, all or part",
                "order ship O-000001 --line 1=4")
            .alias("ship")
            .with(OrderArgument.order(books))
            .with(OrderArgument.lines(), OrderArgument.group(), SignedBy.option()));
    this.shipGoods = new ShipGoods(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return OrderShowCommand.answer(
        shipGoods.ship(in.argument(0).orElseThrow(), OrderArgument.portion(in), SignedBy.name(in)),
        false);
  }
}
