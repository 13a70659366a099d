package hosewright.desk.order;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.Order;
import hosewright.order.OrderBook.Actor;
import hosewright.order.PurchaseOrder;
import hosewright.order.Supplying;
import hosewright.problem.ConflictException;
import hosewright.problem.NoSuchThingException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Buys what an order is short of and nobody is asked for. */
public final class BuyForOrder {
  private final Supplier<Books> books;

  public BuyForOrder(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param quantities pieces by line; all that nobody is asked for without it
   * @param from where to buy
   * @param by who buys
   */
  public record Request(
      String number, Optional<Map<Integer, Integer>> quantities, Supplying.From from, String by) {}

  /**
   * The order with all that is bought for it.
   *
   * @throws ConflictException when it is short of nothing that nobody is asked for
   * @throws hosewright.problem.BadInputException when a line needs no more, or nobody is known to
   *     supply it; nothing is bought then
   */
  public Standing buy(Request asked) {
    try (Books open = books.get()) {
      Order order = OrderChoice.order(asked.number(), open);
      Actor actor = Signing.actor(asked.by(), open.now());
      Catalogue catalogue =
          open.shelf()
              .load(
                  order.lines().stream()
                      .map(line -> line.ware().item())
                      .filter(item -> !item.isEmpty())
                      .distinct()
                      .toList());
      asked.from().supplier().ifPresent(code -> known(code, catalogue));
      Supplying supplying = new Supplying(catalogue, asked.from(), open.today());
      Order after =
          open.orders()
              .buy(
                  order.number(),
                  (now, coming) -> some(now, supplying.buy(now, coming, asked.quantities())),
                  actor);
      return Standing.of(after, open);
    }
  }

  private static List<PurchaseOrder> some(Order order, List<PurchaseOrder> bought) {
    if (bought.isEmpty()) {
      throw ConflictException.stateForbids(
          "order",
          order.number(),
          "is short of nothing that nobody is asked for",
          "'order shortages' tells what comes");
    }
    return bought;
  }

  private static void known(String code, Catalogue catalogue) {
    List<String> codes =
        catalogue.suppliers().stream().map(hosewright.catalogue.Supplier::code).toList();
    if (!codes.contains(code)) {
      throw new NoSuchThingException(
          "supplier", code, codes, "those of the catalogue are " + String.join(", ", codes));
    }
  }
}
