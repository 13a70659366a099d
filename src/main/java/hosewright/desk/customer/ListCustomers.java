package hosewright.desk.customer;

import hosewright.desk.Books;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.Customers;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Supplier;

/** Lists the customers on the books. */
public final class ListCustomers {
  private final Supplier<Books> books;

  public ListCustomers(Supplier<Books> books) {
    this.books = books;
  }

  /** All customers. */
  public record Listed(List<ListedCustomer> customers) {}

  /**
   * One customer.
   *
   * @param discount fraction off list
   * @param contractPrices how many were agreed, in force or not
   */
  public record ListedCustomer(
      String id,
      String name,
      String customerClass,
      BigDecimal discount,
      long contractPrices,
      boolean taxExempt,
      String freightTerms) {}

  /** The list. */
  public Listed list() {
    try (Books open = books.get()) {
      Customers customers = open.customers();
      return new Listed(
          customers.customers().stream().map(customer -> listed(customer, customers)).toList());
    }
  }

  private static ListedCustomer listed(Customer customer, Customers all) {
    return new ListedCustomer(
        customer.id(),
        customer.name(),
        customer.pricing().customerClass(),
        customer.discount(),
        all.contractPrices().stream().filter(p -> p.customer().equals(customer.id())).count(),
        customer.taxation().exemption().isPresent(),
        customer.freightTerms());
  }
}
