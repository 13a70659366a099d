package hosewright.desk.customer;

import hosewright.desk.Books;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.Customers;
import java.util.Optional;
import java.util.function.Supplier;

/** Shows a customer with its terms. */
public final class ShowCustomer {
  private final Supplier<Books> books;

  public ShowCustomer(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The customer.
   *
   * @param internal whether the margin floor of its class is wanted too
   * @throws hosewright.problem.BadInputException naming the nearest when there is no such customer
   */
  public CustomerDocument show(String id, boolean internal) {
    try (Books open = books.get()) {
      Customers all = open.customers();
      Customer customer = all.get(id, open.today());
      return CustomerDocument.of(
          customer,
          all,
          open.today(),
          internal ? open.marginFloors().of(customer) : Optional.empty());
    }
  }
}
