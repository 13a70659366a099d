package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.Cancelled;
import hosewright.order.Cancelled.Bought;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import java.util.List;
import java.util.function.Supplier;

/** Cancels an order of which nothing has gone, and frees what it held. */
public final class CancelOrder {
  private final Supplier<Books> books;

  public CancelOrder(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param bought what becomes of goods still to come
   * @param reason why, for the record
   * @param by who cancels it
   */
  public record Request(String number, Bought bought, String reason, String by) {}

  /**
   * An order cancelled.
   *
   * @param standing the order as it is afterwards
   * @param waiting numbers of other orders that are short of what was freed
   */
  public record Outcome(Cancelled cancelled, Standing standing, List<String> waiting) {}

  /**
   * The order as it is afterwards, with what became free.
   *
   * @throws hosewright.problem.ConflictException when something has gone, or goods came in part and
   *     nobody said what becomes of the rest; nothing has changed then
   */
  public Outcome cancel(Request asked) {
    String why = Signing.sentence("reason", asked.reason());
    try (Books open = books.get()) {
      Order order = OrderChoice.order(asked.number(), open);
      Cancelled done =
          open.orders()
              .cancel(order.number(), asked.bought(), Signing.actor(asked.by(), open.now()), why);
      List<String> waiting =
          open.orders().list().stream()
              .filter(other -> other.lines().stream().anyMatch(line -> wants(line, done)))
              .map(Order::number)
              .toList();
      return new Outcome(done, Standing.of(done.after(), open), waiting);
    }
  }

  private static boolean wants(OrderLine line, Cancelled done) {
    return line.shortage() > 0 && done.freed().containsKey(line.ware().stockCode());
  }
}
