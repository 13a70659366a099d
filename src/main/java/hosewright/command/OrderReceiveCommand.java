package hosewright.command;

import hosewright.desk.Books;
import hosewright.order.Order;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.problem.BadInputException;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Takes in what a supplier delivered, all or part of it. */
final class OrderReceiveCommand extends ShellCommand {
  private final Supplier<Books> books;

  OrderReceiveCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order receive",
                Group.BUY,
                "Takes in goods of a purchase order, all or part, for its order first",
                "order receive P-000001 --line 1=4")
            .alias("receive")
            .with(OrderChoice.purchaseArgument(books))
            .with(OrderChoice.lines(), SignedBy.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      PurchaseOrder purchase = OrderChoice.purchase(in, open);
      Map<Integer, Integer> came =
          OrderChoice.quantities(in).orElseGet(() -> outstanding(purchase));
      if (came.isEmpty()) {
        throw new BadInputException(
            "number", purchase.number(), "a purchase order of which something is still to come");
      }
      Order order = open.orders().receive(purchase.number(), came, OrderChoice.actor(in, open));
      return OrderShowCommand.answer(order, false);
    }
  }

  private static Map<Integer, Integer> outstanding(PurchaseOrder purchase) {
    return purchase.lines().stream()
        .filter(line -> line.outstanding() > 0)
        .collect(Collectors.toMap(PurchaseLine::position, PurchaseLine::outstanding));
  }
}
