package hosewright.command;

import hosewright.desk.CatalogueFolder;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Notices;
import hosewright.shell.ShellCommand;

/** Reads a dealer's catalogue files as a load would, and leaves the books alone. */
final class CatalogueCheckCommand extends ShellCommand {
  private final Notices notices;

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
    this.notices = notices;
  }

  record Checked(int items, int prices, int costs, int suppliers, int customers, String currency) {}

  @Override
  protected Answer answer(Invocation in) {
    CatalogueFolder folder = CatalogueLoadCommand.read(in, notices);
    var catalogue = folder.catalogue();
    Checked checked =
        new Checked(
            catalogue.items().size(),
            catalogue.items().stream()
                .mapToInt(item -> catalogue.priceHistory(item.number()).size())
                .sum(),
            catalogue.items().stream()
                .mapToInt(item -> catalogue.costHistory(item.number()).size())
                .sum(),
            catalogue.suppliers().size(),
            folder.customers().map(given -> given.customers().size()).orElse(0),
            catalogue.currency().map(Object::toString).orElse(""));
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
