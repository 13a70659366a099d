package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.TakeBackGoods;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Takes back goods that went to a customer. */
public final class OrderReturnCommand extends ShellCommand {
  private final TakeBackGoods takeBackGoods;

  public OrderReturnCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order return",
                Group.BUY,
                "Takes back goods that went to a customer, for the shelf",
                "order return O-000001 --line 1=1 --reason \"one too many\"")
            .with(OrderArgument.order(books))
            .with(
                OrderArgument.lines(),
                OptionSpec.value("reason", "TEXT", "why, for the record").asRequired(),
                SignedBy.option()));
    this.takeBackGoods = new TakeBackGoods(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return OrderShowCommand.answer(
        takeBackGoods.takeBack(
            new TakeBackGoods.Request(
                in.argument(0).orElseThrow(),
                OrderArgument.quantities(in),
                in.required("reason"),
                SignedBy.name(in))),
        false);
  }
}
