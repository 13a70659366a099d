package hosewright.door.shell.customer;

import hosewright.desk.Books;
import hosewright.desk.customer.CustomerDocument;
import hosewright.desk.customer.ShowCustomer;
import hosewright.door.shell.catalogue.CatalogueShowCommand;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.CatalogueChoice;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Shows a customer with its terms. */
public final class CustomerShowCommand extends ShellCommand {
  private final ShowCustomer show;

  public CustomerShowCommand(Supplier<Books> books) {
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
