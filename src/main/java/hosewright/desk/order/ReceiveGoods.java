package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.OrderBook.Change;
import hosewright.order.OrderBook.Over;
import hosewright.order.OrderBook.Received;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.problem.ConflictException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Takes in what a supplier delivered, all or part of it, for the oldest promise first. */
public final class ReceiveGoods {
  private final Supplier<Books> books;

  public ReceiveGoods(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param purchase number of the purchase order
   * @param quantities what came, by line; all that is still to come without it
   * @param over what becomes of more than was bought
   * @param by who takes it in
   */
  public record Request(
      String purchase, Optional<Map<Integer, Integer>> quantities, Over over, String by) {}

  /**
   * What came in.
   *
   * @param standing the order it was bought for
   * @param served what lines of orders were given of it, the oldest promise first
   */
  public record Outcome(Standing standing, List<Change> served) {}

  /**
   * The order it was bought for, and who was given what.
   *
   * @throws ConflictException when nothing is still to come
   * @throws hosewright.problem.BadInputException when less of a line than is said to have come, and
   *     nobody said what becomes of the rest; nothing has changed then
   */
  public Outcome receive(Request asked) {
    try (Books open = books.get()) {
      PurchaseOrder bought = OrderChoice.purchase(asked.purchase(), open);
      Map<Integer, Integer> came = asked.quantities().orElseGet(() -> outstanding(bought));
      if (came.isEmpty()) {
        throw ConflictException.stateForbids(
            "purchase order",
            bought.number(),
            "has nothing still to come",
            "receive against one that has");
      }
      Received received =
          open.orders()
              .receive(bought.number(), came, asked.over(), Signing.actor(asked.by(), open.now()));
      return new Outcome(Standing.of(received.order(), open), received.served());
    }
  }

  private static Map<Integer, Integer> outstanding(PurchaseOrder purchase) {
    return purchase.lines().stream()
        .filter(line -> line.outstanding() > 0)
        .collect(Collectors.toMap(PurchaseLine::position, PurchaseLine::outstanding));
  }
}
