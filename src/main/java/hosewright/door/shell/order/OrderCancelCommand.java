package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.CancelLines;
import hosewright.desk.order.CancelOrder;
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
import hosewright.order.Cancelled;
import hosewright.order.Cancelled.Bought;
import hosewright.order.PurchaseOrder;
import hosewright.problem.BadInputException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Cancels an order of which nothing has gone, and frees what it held. */
public final class OrderCancelCommand extends ShellCommand {
  private final CancelOrder cancelOrder;
  private final CancelLines cancelLines;

  public OrderCancelCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order cancel",
                Group.BUY,
                "Cancels an order before anything has shipped, or what has not gone of a line",
                "order cancel O-000002 --reason \"the yard was sold\"")
            .with(OrderArgument.order(books))
            .with(
                OptionSpec.value("reason", "TEXT", "why, for the record").asRequired(),
                OptionSpec.value("line", "LINE=N", "only so many of a line that have not gone")
                    .withDefaultSaid("the whole order")
                    .asRepeatable(),
                OptionSpec.value(
                        "purchases",
                        "WHAT",
                        "what becomes of goods still to come: close, or keep for the shelf")
                    .completing("close", "keep")
                    .withDefaultSaid("close, unless some came in part"),
                SignedBy.option()));
    this.cancelOrder = new CancelOrder(books);
    this.cancelLines = new CancelLines(books);
  }

  /**
   * An order cancelled.
   *
   * @param freed pieces that are free again, by stock code
   * @param closed purchase orders whose suppliers are to be told that no more is wanted
   * @param stillComing purchase orders that still bring goods, for the shelf
   * @param waiting other orders that are short of what was freed
   */
  record Taken(
      OrderShowCommand.Shown order,
      Map<String, Integer> freed,
      List<String> closed,
      List<String> stillComing,
      List<String> waiting) {}

  @Override
  protected Answer answer(Invocation in) {
    Optional<Map<Integer, Integer>> lines = OrderArgument.quantities(in);
    if (lines.isPresent()) {
      return cancelled(in, lines.get());
    }
    Bought bought = in.value("purchases").map(OrderCancelCommand::bought).orElse(Bought.UNDECIDED);
    CancelOrder.Outcome outcome =
        cancelOrder.cancel(
            new CancelOrder.Request(
                in.argument(0).orElseThrow(), bought, in.required("reason"), SignedBy.name(in)));
    Cancelled done = outcome.cancelled();
    Taken taken =
        new Taken(
            OrderShowCommand.shown(outcome.standing(), false),
            done.freed(),
            numbers(done.closed()),
            numbers(done.stillComing()),
            outcome.waiting());
    return Answer.of(taken, screen -> text(outcome, screen));
  }

  private Answer cancelled(Invocation in, Map<Integer, Integer> lines) {
    if (in.given("purchases")) {
      throw new BadInputException(
          "purchases", in.required("purchases"), "not with --line: what was bought still comes");
    }
    return OrderShowCommand.answer(
        cancelLines.cancel(
            new CancelLines.Request(
                in.argument(0).orElseThrow(), lines, in.required("reason"), SignedBy.name(in))),
        false);
  }

  private static Bought bought(String typed) {
    return switch (typed.strip()) {
      case "close" -> Bought.CLOSE;
      case "keep" -> Bought.KEEP;
      default -> throw new BadInputException("purchases", typed, "close or keep");
    };
  }

  private static List<String> numbers(List<PurchaseOrder> purchases) {
    return purchases.stream().map(PurchaseOrder::number).toList();
  }

  private static String text(CancelOrder.Outcome outcome, Screen screen) {
    Cancelled done = outcome.cancelled();
    Prose prose = new Prose(screen);
    prose.line(
        done.freed().isEmpty()
            ? "It held nothing on the shelf."
            : "Free again: "
                + done.freed().entrySet().stream()
                    .map(one -> one.getValue() + " of " + one.getKey())
                    .collect(Collectors.joining(", "))
                + ".");
    done.closed()
        .forEach(
            purchase ->
                prose.line(
                    "%s is closed: tell %s that no more is wanted; 'order purchase %s' prints it."
                        .formatted(purchase.number(), purchase.supplierName(), purchase.number())));
    done.stillComing()
        .forEach(
            purchase ->
                prose.line(
                    "%s still comes, for the shelf, expected %s."
                        .formatted(purchase.number(), purchase.expectedOn())));
    outcome
        .waiting()
        .forEach(
            number ->
                prose.line(
                    "%s is short of what was freed: 'order reserve %s' takes it."
                        .formatted(number, number)));
    return OrderText.of(outcome.standing(), false, screen) + "\n\n" + prose;
  }
}
