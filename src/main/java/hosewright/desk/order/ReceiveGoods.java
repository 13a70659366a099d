package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.Order;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.problem.ConflictException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Takes in what a supplier delivered, all or part of it, for its order first. */
public final class ReceiveGoods {
  private final Supplier<Books> books;

  public ReceiveGoods(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The order with its goods.
   *
   * @param purchase number of the purchase order
   * @param quantities what came, by line; all that is still to come without it
   * @param by who takes it in
   * @throws ConflictException when nothing is still to come
   * @throws hosewright.problem.BadInputException when less of a line than is said to have come
   */
  public Order receive(String purchase, Optional<Map<Integer, Integer>> quantities, String by) {
    try (Books open = books.get()) {
      PurchaseOrder bought = OrderChoice.purchase(purchase, open);
      Map<Integer, Integer> came = quantities.orElseGet(() -> outstanding(bought));
      if (came.isEmpty()) {
        throw ConflictException.stateForbids(
            "purchase order",
            bought.number(),
            "has nothing still to come",
            "receive against one that has");
      }
      return open.orders().receive(bought.number(), came, Signing.actor(by, open.now()));
    }
  }

  private static Map<Integer, Integer> outstanding(PurchaseOrder purchase) {
    return purchase.lines().stream()
        .filter(line -> line.outstanding() > 0)
        .collect(Collectors.toMap(PurchaseLine::position, PurchaseLine::outstanding));
  }
}
