package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.Order;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.problem.BadInputException;
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
   * @throws BadInputException when nothing is still to come, or less of a line than is said to have
   *     come
   */
  public Order receive(String purchase, Optional<Map<Integer, Integer>> quantities, String by) {
    try (Books open = books.get()) {
      PurchaseOrder bought = OrderChoice.purchase(purchase, open);
      Map<Integer, Integer> came = quantities.orElseGet(() -> outstanding(bought));
      if (came.isEmpty()) {
        throw new BadInputException(
            "number", bought.number(), "a purchase order of which something is still to come");
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
