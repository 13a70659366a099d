package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.ReceiveGoods;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Takes in what a supplier delivered, all or part of it. */
public final class OrderReceiveCommand extends ShellCommand {
  private final ReceiveGoods receiveGoods;

  public OrderReceiveCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order receive",
                Group.BUY,
                "Takes in goods of a purchase order, all or part, for its order first",
                "order receive P-000001 --line 1=4")
            .alias("receive")
            .with(OrderArgument.purchase(books))
            .with(OrderArgument.lines(), SignedBy.option()));
    this.receiveGoods = new ReceiveGoods(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return OrderShowCommand.answer(
        receiveGoods.receive(
            in.argument(0).orElseThrow(), OrderArgument.quantities(in), SignedBy.name(in)),
        false);
  }
}
