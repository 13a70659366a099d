package hosewright.command;

import hosewright.desk.Books;
import hosewright.quote.Customer;
import hosewright.quote.Customers;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.Optional;
import java.util.function.Supplier;

/** Shows a customer with its terms. */
final class CustomerShowCommand extends ShellCommand {
  private final Supplier<Books> books;

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
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    boolean internal = in.flag("internal");
    try (Books open = books.get()) {
      Customers all = open.customers();
      Customer customer = all.get(in.argument(0).orElseThrow(), open.today());
      CustomerDocument document =
          CustomerDocument.of(
              customer,
              all,
              open.today(),
              internal ? open.marginFloors().of(customer) : Optional.empty());
      return Answer.of(document, screen -> document.text(screen, internal));
    }
  }
}
