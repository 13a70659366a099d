package hosewright.command;

import hosewright.desk.Books;
import hosewright.quote.Customer;
import hosewright.quote.Customers;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Supplier;

/** Lists the customers on the books. */
final class CustomerListCommand extends ShellCommand {
  private final Supplier<Books> books;

  CustomerListCommand(Supplier<Books> books) {
    super(
        CommandSpec.of("customer list", Group.QUOTE, "Lists the customers", "customer list")
            .alias("customers"));
    this.books = books;
  }

  record Listed(List<ListedCustomer> customers) {}

  record ListedCustomer(
      String id,
      String name,
      String customerClass,
      BigDecimal discount,
      long contractPrices,
      boolean taxExempt,
      String freightTerms) {}

  @Override
  protected Answer answer(Invocation in) {
    Customers customers = customers();
    Listed listed =
        new Listed(customers.customers().stream().map(c -> listed(c, customers)).toList());
    return Answer.of(
        listed,
        screen -> {
          if (listed.customers().isEmpty()) {
            return "No customers yet. Start with 'customer add'.";
          }
          Table table =
              Table.of("id", "name", "class", "off list", "contract prices", "tax", "freight")
                  .numbers(3, 4);
          for (ListedCustomer customer : listed.customers()) {
            table.row(
                customer.id(),
                customer.name(),
                customer.customerClass(),
                CatalogueShowCommand.percent(customer.discount()),
                customer.contractPrices(),
                customer.taxExempt() ? "exempt" : "taxed",
                customer.freightTerms());
          }
          return table.on(screen);
        });
  }

  private static ListedCustomer listed(Customer customer, Customers all) {
    return new ListedCustomer(
        customer.id(),
        customer.name(),
        customer.customerClass(),
        customer.discount(),
        all.contractPrices().stream().filter(p -> p.customer().equals(customer.id())).count(),
        customer.exemption().isPresent(),
        customer.freightTerms());
  }

  private Customers customers() {
    try (Books open = books.get()) {
      return open.customers();
    }
  }
}
