package hosewright.door.shell.customer;

import hosewright.desk.Books;
import hosewright.desk.customer.AddCustomer;
import hosewright.desk.customer.AddCustomer.Added;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Adds a customer with its terms. */
public final class CustomerAddCommand extends ShellCommand {
  private final AddCustomer add;

  public CustomerAddCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "customer add",
                Group.QUOTE,
                "Adds a customer with its terms, or changes one with --replace",
                "customer add --id MOSS-CREW --name \"Mossgate Fire Crew\" --class agency"
                    + " --discount 10% --tax-name \"Port Harlow sales tax\" --tax-rate 6.25%"
                    + " --contract \"H175-DJ-50-15NH 165.00 from 2026-01-01\"")
            .with(CustomerOptions.options(books))
            .with(
                OptionSpec.flag(
                    "replace", "change the customer that has this id, terms and prices whole")));
    add = new AddCustomer(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Added added = add.add(CustomerOptions.said(in), in.values("contract"), in.flag("replace"));
    return Answer.of(
        added,
        screen ->
            (added.replaced() ? "Changed " : "Added ")
                + CustomerText.of(added.customer(), screen, false));
  }
}
