package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.RaiseOrder;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Raises an order from an accepted quote: reserves what is free and buys the rest. */
public final class OrderRaiseCommand extends ShellCommand {
  private final RaiseOrder raiseOrder;

  public OrderRaiseCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order raise",
                Group.BUY,
                "Raises an order from an accepted quote: reserves stock and buys the rest",
                "order raise Q-000001")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.flag("no-top-up", "do not buy more to reach a supplier's minimum order"),
                SignedBy.option()));
    this.raiseOrder = new RaiseOrder(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return OrderShowCommand.answer(
        raiseOrder.raise(in.argument(0).orElseThrow(), !in.flag("no-top-up"), SignedBy.name(in)),
        false);
  }
}
