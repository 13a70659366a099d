package hosewright.door.shell.customer;

import hosewright.desk.Books;
import hosewright.desk.customer.ListCustomers;
import hosewright.desk.customer.ListCustomers.Listed;
import hosewright.desk.customer.ListCustomers.ListedCustomer;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import java.util.function.Supplier;

/** Lists the customers on the books. */
public final class CustomerListCommand extends ShellCommand {
  private final ListCustomers list;

  public CustomerListCommand(Supplier<Books> books) {
    super(
        CommandSpec.of("customer list", Group.QUOTE, "Lists the customers", "customer list")
            .alias("customers"));
    list = new ListCustomers(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Listed listed = list.list();
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
                Prose.percent(customer.discount()),
                customer.contractPrices(),
                customer.taxExempt() ? "exempt" : "taxed",
                customer.freightTerms());
          }
          return table.on(screen);
        });
  }
}
