package hosewright.door.shell.fleet;

import hosewright.desk.Books;
import hosewright.desk.NamedPath;
import hosewright.desk.fleet.LoadFleet;
import hosewright.desk.fleet.LoadFleet.Loaded;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.BadRows;
import hosewright.door.shell.screen.Answer;
import java.util.Locale;
import java.util.function.Supplier;

/** Takes an agency's inventory of hose into the books. */
public final class FleetLoadCommand extends ShellCommand {
  private final LoadFleet load;

  public FleetLoadCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet load",
                Group.BUDGET,
                "Takes an agency's inventory of hose into the books, all or nothing",
                "fleet load catalogue/fleet")
            .with(
                ArgumentSpec.required(
                        "PLACE",
                        "the folder with inventory.csv or .xlsx and, if there, records, outlets"
                            + " and limits; or a workbook with such sheets")
                    .completingFiles())
            .with(
                OptionSpec.value("mapping", "FILE", "a mapping file for columns of other names")
                    .completingFiles(),
                OptionSpec.flag("replace", "forget the hose on record first"))
            .with(BadRows.options()));
    load = new LoadFleet(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Loaded loaded =
        BadRows.reported(
            in,
            () ->
                load.load(
                    NamedPath.of("folder", in.argument(0).orElseThrow(), "the name of a folder"),
                    in.value("mapping")
                        .map(map -> NamedPath.of("mapping", map, "the name of a file")),
                    in.flag("replace")));
    return Answer.of(
        loaded,
        String.format(
            Locale.ROOT,
            "Loaded %,d sections with %,d service records, and %,d outlets of apparatus and"
                + " hydrants. 'fleet status' shows how they stand.",
            loaded.sections(),
            loaded.records(),
            loaded.outlets()));
  }
}
