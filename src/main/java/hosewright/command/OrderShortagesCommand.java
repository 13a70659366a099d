package hosewright.command;

import hosewright.desk.Books;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Lists what orders wait for: how much, from whom, since when overdue. */
final class OrderShortagesCommand extends ShellCommand {
  private final Supplier<Books> books;

  OrderShortagesCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
            "order shortages",
            Group.BUY,
            "Lists what orders are short of, and when it should come",
            "order shortages"));
    this.books = books;
  }

  /**
   * One line that waits.
   *
   * @param purchase the purchase order that brings it; empty when nobody is asked for it
   */
  record Shortage(
      String order,
      int line,
      String item,
      String description,
      int shortage,
      Optional<String> purchase,
      Optional<LocalDate> expectedOn,
      boolean overdue) {}

  record Shortages(List<Shortage> shortages) {}

  @Override
  protected Answer answer(Invocation in) {
    List<Shortage> all = new ArrayList<>();
    try (Books open = books.get()) {
      for (Order order : open.orders().list()) {
        order.lines().stream()
            .filter(line -> line.shortage() > 0)
            .map(line -> shortage(order, line, open.today()))
            .forEach(all::add);
      }
    }
    return Answer.of(
        new Shortages(all),
        screen -> {
          if (all.isEmpty()) {
            return "No order is short of anything.";
          }
          Table table =
              Table.of("order", "#", "item", "description", "short", "from", "expected")
                  .numbers(1, 4);
          all.forEach(
              one ->
                  table.row(
                      one.order(),
                      one.line(),
                      one.item(),
                      one.description(),
                      one.shortage(),
                      one.purchase().orElse("nobody"),
                      one.expectedOn().map(LocalDate::toString).orElse("-")
                          + (one.overdue() ? " overdue" : "")));
          return table.on(screen);
        });
  }

  private static Shortage shortage(Order order, OrderLine line, LocalDate today) {
    Optional<PurchaseOrder> coming =
        order.purchases().stream()
            .filter(
                purchase ->
                    purchase.lines().stream()
                        .anyMatch(
                            bought ->
                                bought.stockCode().equals(line.stockCode())
                                    && bought.outstanding() > 0))
            .findFirst();
    return new Shortage(
        order.number(),
        line.position(),
        line.item(),
        line.description(),
        line.shortage(),
        coming.map(PurchaseOrder::number),
        coming.map(PurchaseOrder::expectedOn),
        coming.filter(purchase -> purchase.expectedOn().isBefore(today)).isPresent());
  }
}
