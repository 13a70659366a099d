package hosewright.door.shell.catalogue;

import hosewright.desk.catalogue.CheckCatalogue;
import hosewright.desk.catalogue.CheckCatalogue.Checked;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.BadRows;
import hosewright.door.shell.run.Notices;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;

/** Reads a dealer's catalogue files as a load would, and leaves the books alone. */
public final class CatalogueCheckCommand extends ShellCommand {
  private final CheckCatalogue check;

  public CatalogueCheckCommand(Notices notices) {
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
    return Answer.of(checked, screen -> text(checked, screen));
  }

  private static String text(Checked checked, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line(
        "Nothing is wrong: %d items, %d prices in %s, %d costs, %d suppliers, %d customers."
            .formatted(
                checked.items(),
                checked.prices(),
                checked.currency(),
                checked.costs(),
                checked.suppliers(),
                checked.customers()));
    if (!checked.missing().isEmpty()) {
      prose.line("Not said, and what that costs:");
      checked.missing().forEach(fact -> prose.line(fact.sentence() + "."));
    }
    return prose.toString();
  }
}
