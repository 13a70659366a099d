package hosewright.door.shell.order;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.desk.order.ListOrders;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Table;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;

/** Lists the orders on the books. */
public final class OrderListCommand extends ShellCommand {
  private final ListOrders listOrders;

  public OrderListCommand(Supplier<Books> books) {
    super(
        CommandSpec.of("order list", Group.BUY, "Lists the orders", "order list").alias("orders"));
    this.listOrders = new ListOrders(books);
  }

  /** An order in a list. */
  record Heading(
      String number,
      @JsonUnwrapped Order.Sold sold,
      Order.State state,
      @JsonUnwrapped Order.Timing timing,
      int shortage) {}

  record Orders(List<Heading> orders) {}

  @Override
  protected Answer answer(Invocation in) {
    List<Heading> headings = listOrders.list().stream().map(OrderListCommand::heading).toList();
    return Answer.of(
        new Orders(headings),
        screen -> {
          if (headings.isEmpty()) {
            return "No orders yet. Start with 'order raise'.";
          }
          Table table =
              Table.of("number", "quote", "status", "customer", "raised", "ships", "short", "title")
                  .numbers(6);
          headings.forEach(
              order ->
                  table.row(
                      order.number(),
                      order.sold().quoteNumber(),
                      order.state().word(),
                      order.sold().customer(),
                      order.timing().raisedOn(),
                      order.timing().shipOn().map(LocalDate::toString).orElse("open"),
                      order.shortage(),
                      order.sold().title()));
          return table.on(screen);
        });
  }

  private static Heading heading(Order order) {
    return new Heading(
        order.number(),
        order.sold(),
        order.state(),
        order.timing(),
        order.lines().stream().mapToInt(OrderLine::shortage).sum());
  }
}
