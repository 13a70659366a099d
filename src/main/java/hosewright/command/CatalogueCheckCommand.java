package hosewright.command;

import hosewright.desk.catalogue.CheckCatalogue;
import hosewright.desk.catalogue.CheckCatalogue.Checked;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Notices;
import hosewright.shell.ShellCommand;

/** Reads a dealer's catalogue files as a load would, and leaves the books alone. */
final class CatalogueCheckCommand extends ShellCommand {
  private final CheckCatalogue check;

  CatalogueCheckCommand(Notices notices) {
    super(
        CommandSpec.of(
                "catalogue check",
                Group.BUY,
                "Reads catalogue files as a load would, and writes nothing",
                "catalogue check catalogue")
            .with(CatalogueLoadCommand.place())
            .with(CatalogueLoadCommand.mapping())
            .with(BadRows.options()));
    check = new CheckCatalogue(notices::say);
  }

  @Override
  protected Answer answer(Invocation in) {
    Checked checked =
        BadRows.reported(
            in,
            () -> check.check(CatalogueLoadCommand.folder(in), CatalogueLoadCommand.mapping(in)));
    return Answer.of(
        checked,
        "Nothing is wrong: %d items, %d prices in %s, %d costs, %d suppliers, %d customers."
            .formatted(
                checked.items(),
                checked.prices(),
                checked.currency(),
                checked.costs(),
                checked.suppliers(),
                checked.customers()));
  }
}
