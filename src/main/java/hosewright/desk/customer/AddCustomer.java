package hosewright.desk.customer;

import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.problem.Given;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.terms.ContractPrice;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.Customers;
import hosewright.quote.terms.MarginFloors;
import hosewright.store.catalogue.CatalogueStore;
import hosewright.store.quote.CustomerStore;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/** Adds a customer with its terms, or changes one. */
public final class AddCustomer {
  /** How a contract price is said. */
  public static final String CONTRACT = ContractForm.WORDS;

  private final Supplier<Books> books;

  public AddCustomer(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The customer as kept.
   *
   * @param replaced whether one with its id was there before
   */
  public record Added(boolean replaced, CustomerDocument customer) {}

  /**
   * Keeps a customer.
   *
   * @param said its terms, each in words; id, name and class must be there
   * @param contracts contract prices, each as {@link #CONTRACT} says
   * @param replace whether the customer that has the id is to be changed, terms and prices whole
   * @throws hosewright.problem.BadInputException naming everything that cannot be used; nothing was
   *     kept then
   */
  public Added add(Map<CustomerField, String> said, List<String> contracts, boolean replace) {
    AtomicReference<Added> added = new AtomicReference<>();
    try (Books open = books.get()) {
      CatalogueStore shelf = open.shelf();
      LocalDate today = open.today();
      open.changeCustomers(
          buyers -> added.set(add(said, contracts, replace, buyers, shelf, today)));
    }
    return added.get();
  }

  private static Added add(
      Map<CustomerField, String> said,
      List<String> contracts,
      boolean replace,
      CustomerStore buyers,
      CatalogueStore shelf,
      LocalDate today) {
    Customers before = buyers.load();
    Refusals refusals = new Refusals();
    Optional<Customer> customer = new CustomerForm(said, refusals, today).customer();
    String id = said.getOrDefault(CustomerField.ID, "");
    List<ContractPrice> prices = new ContractForm(shelf, refusals).prices(contracts, id);
    if (customer.isPresent()) {
      checkId(id, replace, before, refusals);
      checkClass(said.get(CustomerField.CLASS), buyers.floors(), refusals);
    }
    refusals.throwAny();
    Customer kept = customer.orElseThrow();
    buyers.save(kept, prices);
    CustomerDocument document =
        CustomerDocument.of(kept, new Customers(List.of(kept), prices), today, Optional.empty());
    return new Added(before.byId().containsKey(kept.id()), document);
  }

  private static void checkId(String id, boolean replace, Customers before, Refusals refusals) {
    String field = CustomerField.ID.word();
    Optional<String> same =
        before.customers().stream().map(Customer::id).filter(id::equalsIgnoreCase).findFirst();
    if (same.isPresent() && !same.get().equals(id)) {
      refusals.add(
          field, id, "an id that differs in more than its letters' case from " + same.get());
    } else if (same.isPresent() && !replace) {
      refusals.add(
          field,
          id,
          "an id nobody has yet, or " + Given.as("replace") + " to change that customer");
    } else if (same.isEmpty() && replace) {
      refusals.add(
          new Problem(
              field,
              id,
              "the id of a customer on file, since " + Given.as("replace") + " is given",
              Nearest.to(id, before.customers().stream().map(Customer::id).toList())));
    }
  }

  private static void checkClass(String given, MarginFloors floors, Refusals refusals) {
    if (!floors.classes().isEmpty() && !floors.classes().contains(given)) {
      refusals.add(
          new Problem(
              CustomerField.CLASS.word(),
              given,
              "one of " + String.join(", ", floors.classes()) + ", as in classes.csv",
              Nearest.to(given, floors.classes())));
    }
  }
}
