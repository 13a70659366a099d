package hosewright.desk.customer;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.quote.terms.ContractPrice;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.Customers;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** A customer with everything agreed. */
public record CustomerDocument(
    String id,
    String name,
    String address,
    @JsonUnwrapped Pricing pricing,
    @JsonUnwrapped Customer.Taxation taxation,
    String freightTerms) {

  /** A contract price, and whether it is in force on the day asked. */
  public record Agreed(
      String item, Money unitPrice, LocalDate from, Optional<LocalDate> until, boolean inForce) {}

  static CustomerDocument of(
      Customer customer, Customers all, LocalDate today, Optional<BigDecimal> marginFloor) {
    return new CustomerDocument(
        customer.id(),
        customer.name(),
        customer.address(),
        new Pricing(
            customer.pricing().customerClass(),
            customer.discount(),
            all.contractPrices().stream()
                .filter(price -> price.customer().equals(customer.id()))
                .map(price -> agreed(price, today))
                .toList(),
            marginFloor),
        new Customer.Taxation(
            customer.taxation().taxName(),
            customer.taxation().taxRate(),
            customer.taxation().exemption()),
        customer.freightTerms());
  }

  private static Agreed agreed(ContractPrice price, LocalDate today) {
    return new Agreed(
        price.item(), price.unitPrice(), price.from(), price.until(), price.inForceOn(today));
  }

  /**
   * What it pays for goods.
   *
   * @param discount fraction off list
   * @param marginFloor least margin wanted of its class; absent unless asked for with {@code
   *     --internal}
   */
  public record Pricing(
      String customerClass,
      BigDecimal discount,
      List<Agreed> contractPrices,
      Optional<BigDecimal> marginFloor) {}
}
