package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.ContractPrice;
import hosewright.quote.Customer;
import hosewright.quote.Customers;
import hosewright.quote.MarginFloors;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Adds a customer with its terms. */
final class CustomerAddCommand extends ShellCommand {
  private final Supplier<Books> books;

  CustomerAddCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "customer add",
                Group.QUOTE,
                "Adds a customer with its terms, or changes one with --replace",
                "customer add --id MOSS-CREW --name \"Mossgate Fire Crew\" --class agency"
                    + " --discount 10% --tax-name \"Port Harlow sales tax\" --tax-rate 6.25%"
                    + " --contract \"H175-DJ-50-15NH 165.00 from 2026-01-01\"")
            .with(CustomerForm.options(books))
            .with(
                OptionSpec.flag(
                    "replace", "change the customer that has this id, terms and prices whole")));
    this.books = books;
  }

  /** The customer as kept, and whether the id was new. */
  record Added(boolean replaced, CustomerDocument customer) {}

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Customers before = open.customers();
      Refusals refusals = new Refusals();
      CustomerForm form = new CustomerForm(in, refusals, open.today());
      Optional<Customer> customer = form.customer();
      List<ContractPrice> prices = form.contractPrices(open.shelf());
      checkId(in, before, refusals);
      MarginFloors floors = open.marginFloors();
      checkClass(in.required("class"), floors, refusals);
      refusals.throwAny();
      Customer kept = customer.orElseThrow();
      open.buyers().save(kept, prices);
      CustomerDocument document =
          CustomerDocument.of(
              kept, new Customers(List.of(kept), prices), open.today(), Optional.empty());
      boolean replaced = before.byId().containsKey(kept.id());
      return Answer.of(
          new Added(replaced, document),
          screen -> (replaced ? "Changed " : "Added ") + document.text(screen, false));
    }
  }

  private static void checkId(Invocation in, Customers before, Refusals refusals) {
    String id = in.required("id");
    Optional<String> same =
        before.customers().stream().map(Customer::id).filter(id::equalsIgnoreCase).findFirst();
    if (same.isPresent() && !same.get().equals(id)) {
      refusals.add(
          "--id", id, "an id that differs in more than its letters' case from " + same.get());
    } else if (same.isPresent() && !in.flag("replace")) {
      refusals.add("--id", id, "an id nobody has yet, or --replace to change that customer");
    } else if (same.isEmpty() && in.flag("replace")) {
      refusals.add(
          new Problem(
              "--id",
              id,
              "the id of a customer on file, since --replace is given",
              Nearest.to(id, before.customers().stream().map(Customer::id).toList())));
    }
  }

  private static void checkClass(String given, MarginFloors floors, Refusals refusals) {
    if (!floors.classes().isEmpty() && !floors.classes().contains(given)) {
      refusals.add(
          new Problem(
              "--class",
              given,
              "one of " + String.join(", ", floors.classes()) + ", as in classes.csv",
              Nearest.to(given, floors.classes())));
    }
  }
}
