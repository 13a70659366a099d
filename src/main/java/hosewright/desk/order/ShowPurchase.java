package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.order.PurchaseOrder;
import hosewright.quote.terms.Dealer;
import java.util.function.Supplier;

/** Shows a purchase order and who sends it. */
public final class ShowPurchase {
  private final Supplier<Books> books;

  public ShowPurchase(Supplier<Books> books) {
    this.books = books;
  }

  /** A purchase order with the dealer who sends it. */
  public record Purchase(PurchaseOrder order, Dealer dealer) {}

  /** The purchase order named. */
  public Purchase show(String number) {
    try (Books open = books.get()) {
      return new Purchase(OrderChoice.purchase(number, open), Papers.dealer(open.terms()));
    }
  }
}
