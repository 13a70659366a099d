package hosewright.quote.terms;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import hosewright.catalogue.PriceRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What one customer pays on one day: list price in force, then the quantity break, then the
 * customer's percentage or contract price, whichever is lower, rounded half-up to the cent.
 */
public final class CustomerTerms implements NetPrice {
  private final Catalogue catalogue;
  private final Customer customer;
  private final LocalDate date;

  /**
   * @param customer the buyer with the contract prices in force on the date
   */
  public CustomerTerms(Catalogue catalogue, Customer customer, LocalDate date) {
    this.catalogue = catalogue;
    this.customer = customer;
    this.date = date;
  }

  /**
   * What a buyer pays on a day, who need not be known.
   *
   * @param customer empty for list prices
   */
  public static NetPrice of(Catalogue catalogue, Optional<Customer> customer, LocalDate date) {
    return customer
        .<NetPrice>map(buyer -> new CustomerTerms(catalogue, buyer, date))
        .orElseGet(() -> catalogue.listPricesOn(date));
  }

  @Override
  public Optional<Money> unitPrice(Item item, int quantity) {
    Optional<Money> discounted = catalogue.listPrice(item.number(), quantity, date).map(this::off);
    Optional<Money> contract =
        Optional.ofNullable(customer.pricing().contractPrices().get(item.number()));
    return lower(discounted, contract);
  }

  @Override
  public List<Integer> breakQuantities(Item item) {
    return catalogue.breaks(item.number(), date).stream().map(PriceRow::minimumQuantity).toList();
  }

  private Money off(Money list) {
    return list.multipliedBy(BigDecimal.ONE.subtract(customer.discount()), RoundingMode.HALF_UP);
  }

  private static Optional<Money> lower(Optional<Money> first, Optional<Money> second) {
    if (first.isEmpty() || second.isEmpty()) {
      return first.or(() -> second);
    }
    return second.get().isLessThan(first.get()) ? second : first;
  }
}
