package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.Order;
import hosewright.problem.ConflictException;
import java.util.Map;
import java.util.function.Supplier;

/** Cancels some pieces of an order that have not gone, and frees what they held. */
public final class CancelLines {
  private final Supplier<Books> books;

  public CancelLines(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param quantities pieces no longer wanted, by line
   * @param reason why, for the record
   * @param by who cancels them
   */
  public record Request(
      String number, Map<Integer, Integer> quantities, String reason, String by) {}

  /**
   * The order as it is afterwards. What was bought for it still comes, for the shelf.
   *
   * @throws hosewright.problem.BadInputException when less of a line is still to go; nothing has
   *     changed then
   */
  public Standing cancel(Request asked) {
    String why = Signing.sentence("reason", asked.reason());
    try (Books open = books.get()) {
      Order order = OrderChoice.order(asked.number(), open);
      if (order.cancellation().isPresent()) {
        throw ConflictException.stateForbids(
            "order", order.number(), "is cancelled already", "'order show' tells why");
      }
      Order after =
          open.orders()
              .cancelLines(
                  order.number(), asked.quantities(), Signing.actor(asked.by(), open.now()), why);
      return Standing.of(after, open);
    }
  }
}
