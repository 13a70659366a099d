package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.customer.CustomerDocument;
import hosewright.desk.customer.ShowCustomer;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Shows a customer with its terms. */
final class CustomerShowCommand extends ShellCommand {
  private final ShowCustomer show;

  CustomerShowCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "customer show",
                Group.QUOTE,
                "Shows a customer: class, percentage, contract prices, tax and freight terms",
                "customer show HARLOW-FD")
            .with(
                ArgumentSpec.required("ID", "the customer's id, such as HARLOW-FD")
                    .completing(() -> CatalogueChoice.customers(books)))
            .with(CatalogueShowCommand.internal()));
    show = new ShowCustomer(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    boolean internal = in.flag("internal");
    CustomerDocument customer = show.show(in.argument(0).orElseThrow(), internal);
    return Answer.of(customer, screen -> CustomerText.of(customer, screen, internal));
  }
}
