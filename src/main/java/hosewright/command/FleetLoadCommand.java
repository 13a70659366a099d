package hosewright.command;

import hosewright.csv.CellRows;
import hosewright.desk.Books;
import hosewright.desk.NamedPath;
import hosewright.fleet.InventoryReader;
import hosewright.fleet.LimitReader;
import hosewright.fleet.OutletReader;
import hosewright.fleet.RecordReader;
import hosewright.intake.DealerFiles;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/** Takes an agency's inventory of hose into the books. */
final class FleetLoadCommand extends ShellCommand {
  private final Supplier<Books> books;

  FleetLoadCommand(Supplier<Books> books) {
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
                OptionSpec.value("map", "FILE", "a mapping file for columns of other names")
                    .completingFiles(),
                OptionSpec.flag("replace", "forget the hose on record first"))
            .with(BadRows.options()));
    this.books = books;
  }

  record Loaded(long sections, long records, int outlets) {}

  @Override
  protected Answer answer(Invocation in) {
    FleetIntake.Taken taken = BadRows.reported(in, () -> load(in));
    Loaded loaded = new Loaded(taken.sections(), taken.records(), taken.outlets());
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

  private FleetIntake.Taken load(Invocation in) {
    Map<String, CellRows> tables =
        DealerFiles.open(
            NamedPath.of("folder", in.argument(0).orElseThrow(), "the name of a folder"),
            in.value("map").map(map -> NamedPath.of("map", map, "the name of a file")),
            List.of(InventoryReader.FORM),
            List.of(RecordReader.FORM, OutletReader.FORM, LimitReader.FORM));
    try (Books open = books.get()) {
      return FleetIntake.load(open, tables, in.flag("replace"));
    }
  }
}
