package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.order.RaiseOrder;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Raises an order from an accepted quote: reserves what is free and buys the rest. */
final class OrderRaiseCommand extends ShellCommand {
  private final RaiseOrder raiseOrder;

  OrderRaiseCommand(Supplier<Books> books) {
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
