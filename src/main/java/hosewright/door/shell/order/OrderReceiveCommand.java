package hosewright.door.shell.order;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.desk.order.ReceiveGoods;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;
import hosewright.order.OrderBook.Change;
import hosewright.order.OrderBook.Over;
import hosewright.problem.BadInputException;
import java.util.List;
import java.util.function.Supplier;

/** Takes in what a supplier delivered, all or part of it. */
public final class OrderReceiveCommand extends ShellCommand {
  private final ReceiveGoods receiveGoods;

  public OrderReceiveCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order receive",
                Group.BUY,
                "Takes in goods of a purchase order, all or part, for the oldest promise first",
                "order receive P-000001 --line 1=4")
            .alias("receive")
            .with(OrderArgument.purchase(books))
            .with(
                OrderArgument.lines(),
                OptionSpec.value(
                        "over", "WHAT", "what becomes of more than was bought: take, send-back")
                    .completing("take", "send-back")
                    .withDefaultSaid("more is refused"),
                SignedBy.option()));
    this.receiveGoods = new ReceiveGoods(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Over over = in.value("over").map(OrderReceiveCommand::over).orElse(Over.REFUSED);
    ReceiveGoods.Outcome outcome =
        receiveGoods.receive(
            new ReceiveGoods.Request(
                in.argument(0).orElseThrow(),
                OrderArgument.quantities(in),
                over,
                SignedBy.name(in)));
    return Answer.of(
        new Taken(OrderShowCommand.shown(outcome.standing(), false), outcome.served()),
        screen -> text(outcome, screen));
  }

  /** The order the goods were bought for, and which lines of orders were given them. */
  record Taken(@JsonUnwrapped OrderShowCommand.Shown order, List<Change> served) {}

  private static Over over(String typed) {
    return switch (typed.strip()) {
      case "take" -> Over.TAKEN;
      case "send-back" -> Over.SENT_BACK;
      default -> throw new BadInputException("over", typed, "take or send-back");
    };
  }

  private static String text(ReceiveGoods.Outcome outcome, Screen screen) {
    Prose prose = new Prose(screen);
    ServedText.served(prose, outcome.served());
    String served = prose.toString();
    return OrderText.of(outcome.standing(), false, screen)
        + (served.isEmpty() ? "" : "\n\nTaken from what came:\n" + served);
  }
}
