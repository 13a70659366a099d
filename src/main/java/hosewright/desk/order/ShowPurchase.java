package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.order.PurchaseOrder;
import hosewright.quote.terms.Dealer;
import hosewright.quote.terms.DealerTerms;
import java.time.LocalDate;
import java.util.function.Supplier;

/** Shows a purchase order and who sends it. */
public final class ShowPurchase {
  private final Supplier<Books> books;

  public ShowPurchase(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * A purchase order with the dealer who sends it.
   *
   * @param terms what the dealer's settings say to suppliers: {@code purchase_terms} and {@code
   *     delivery_address}
   * @param date the day it is printed
   */
  public record Purchase(PurchaseOrder order, Dealer dealer, Terms terms, LocalDate date) {}

  /** Where suppliers deliver, and on what terms; either may be empty. */
  public record Terms(String delivery, String terms) {}

  /** The purchase order named. */
  public Purchase show(String number) {
    try (Books open = books.get()) {
      DealerTerms settings = open.terms();
      return new Purchase(
          OrderChoice.purchase(number, open),
          Papers.dealer(settings),
          new Terms(
              settings.setting("delivery_address").orElse(""),
              settings.setting("purchase_terms").orElse("")),
          open.today());
    }
  }
}
