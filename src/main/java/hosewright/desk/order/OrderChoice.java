package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.order.Order;
import hosewright.order.OrderBook;
import hosewright.order.PurchaseOrder;
import hosewright.problem.NoSuchThingException;
import java.util.List;
import java.util.Locale;

/** An order or purchase order by the name somebody gives it. */
final class OrderChoice {
  private OrderChoice() {}

  /** The order named; an order may be written {@code O-000001}, {@code O-1} or {@code 1}. */
  static Order order(String typed, Books books) {
    return books
        .orders()
        .find(canonical("O", typed))
        .orElseThrow(() -> unknown("order", typed, orders(books.orders())));
  }

  /** The purchase order named. */
  static PurchaseOrder purchase(String typed, Books books) {
    String number = canonical("P", typed);
    return books.orders().findByPurchase(number).stream()
        .flatMap(order -> order.purchases().stream())
        .filter(purchase -> purchase.number().equals(number))
        .findFirst()
        .orElseThrow(() -> unknown("purchase order", typed, purchases(books.orders())));
  }

  private static String canonical(String letter, String typed) {
    String digits = typed.strip().replaceFirst("^(?i)" + letter + "-?", "");
    return digits.matches("\\d{1,9}")
        ? String.format(Locale.ROOT, "%s-%06d", letter, Integer.parseInt(digits))
        : typed.strip();
  }

  private static NoSuchThingException unknown(String thing, String typed, List<String> known) {
    String next =
        known.isEmpty() ? "none is raised yet, 'order raise' raises one" : "'order list' shows all";
    return new NoSuchThingException(thing, typed, known, next);
  }

  /** The numbers of all orders. */
  static List<String> orders(OrderBook book) {
    return book.list().stream().map(Order::number).toList();
  }

  /** The numbers of all purchase orders. */
  static List<String> purchases(OrderBook book) {
    return book.list().stream()
        .flatMap(order -> order.purchases().stream())
        .map(PurchaseOrder::number)
        .toList();
  }
}
