package hosewright.door.shell.fleet;

import hosewright.desk.Books;
import hosewright.desk.NamedPath;
import hosewright.desk.fleet.PrepareTests;
import hosewright.desk.fleet.PrepareTests.Known;
import hosewright.desk.fleet.TestRecords;
import hosewright.desk.fleet.TestSections;
import hosewright.desk.fleet.TestSections.Entered;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.BadRows;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;
import hosewright.fleet.record.DaysRecords.Change;
import hosewright.problem.BadInputException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Enters a day's service tests and repairs, from a file or question by question. */
public final class FleetTestCommand extends ShellCommand {
  private final PrepareTests prepare;
  private final TestSections test;

  public FleetTestCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet test",
                Group.BUDGET,
                "Enters service tests and repairs, from a file or question by question",
                "fleet test catalogue/fleet/test-day")
            .with(
                ArgumentSpec.optional(
                        "PLACE",
                        "the folder with records.csv or .xlsx, or a workbook with such a"
                            + " sheet; without it every record is asked for")
                    .completingFiles())
            .with(
                OptionSpec.value("mapping", "FILE", "a mapping file for columns of other names")
                    .completingFiles())
            .with(BadRows.options()));
    prepare = new PrepareTests(books);
    test = new TestSections(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Known known = prepare.prepare();
    Optional<TestRecords> records = records(in, known);
    if (records.isEmpty()) {
      return Answer.of(Map.of(), "Stopped; nothing was entered.");
    }
    Entered entered = BadRows.reported(in, () -> test.enter(records.get(), known));
    return Answer.of(entered, screen -> text(entered, screen));
  }

  private static Optional<TestRecords> records(Invocation in, Known known) {
    Optional<String> place = in.argument(0);
    if (place.isPresent()) {
      return Optional.of(
          TestRecords.in(
              NamedPath.of("file", place.get(), "the name of a file or folder"),
              in.value("mapping").map(map -> NamedPath.of("mapping", map, "the name of a file"))));
    }
    return in.asker()
        .map(
            asker ->
                new TestInterview(asker, known.ids(), known.today(), known.leastHoldMinutes())
                    .rows()
                    .map(TestRecords::answered))
        .orElseThrow(
            () ->
                new BadInputException(
                    "PLACE", "", "a folder with records.csv, since nobody is there to be asked"));
  }

  private static String text(Entered entered, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line(
        "Entered %d record%s%s."
            .formatted(
                entered.records(),
                entered.records() == 1 ? "" : "s",
                entered.alreadyOnFile() == 0
                    ? ""
                    : ", passed over " + entered.alreadyOnFile() + " that were on file already"));
    for (Change change : entered.changes()) {
      prose.line(FleetRetireCommand.said(change));
    }
    return prose.toString();
  }
}
