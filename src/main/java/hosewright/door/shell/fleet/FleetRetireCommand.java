package hosewright.door.shell.fleet;

import hosewright.desk.Books;
import hosewright.desk.fleet.OfferSections;
import hosewright.desk.fleet.RetireSections;
import hosewright.desk.fleet.RetireSections.Retired;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;
import hosewright.fleet.record.DaysRecords.Change;
import java.util.function.Supplier;

/** Retires sections: those named, or all that a rule retires. */
public final class FleetRetireCommand extends ShellCommand {
  private static final int LISTED = 20;

  private final RetireSections retire;

  public FleetRetireCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet retire",
                Group.BUDGET,
                "Retires sections by name, or all that a rule retires",
                "fleet retire --by-rules --dry-run")
            .with(
                ArgumentSpec.optional("SECTION", "sections to retire")
                    .asRepeatable()
                    .completing(typed -> new OfferSections(books).beginning(typed)))
            .with(
                OptionSpec.value("because", "WORD", "lost or withdrawn")
                    .withDefault("withdrawn")
                    .completing("lost", "withdrawn"),
                OptionSpec.flag(
                    "by-rules", "all that were made too early or reached the age limit"),
                OptionSpec.value("date", "DAY", "the day they leave service")
                    .withDefaultSaid("today"),
                OptionSpec.value("note", "TEXT", "kept with each record"),
                OptionSpec.flag("dry-run", "only show what would be retired")));
    retire = new RetireSections(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Retired retired =
        retire.retire(
            new RetireSections.Request(
                in.arguments(),
                in.flag("by-rules"),
                in.required("because"),
                in.value("date"),
                in.value("note").orElse(""),
                in.flag("dry-run")));
    return Answer.of(retired, screen -> text(retired, screen));
  }

  /** A section's change of standing with the rule, record and day behind it. */
  static String said(Change change) {
    return said(change, true);
  }

  private static String said(Change change, boolean done) {
    return change
        .retirement()
        .map(
            left ->
                "%s %s %s: %s Rule %s, record %d."
                    .formatted(
                        change.section(),
                        (done ? "is " : "would be ")
                            + change.status().word()
                            + (done ? " since" : " on"),
                        left.date(),
                        left.ruleInWords().sentence(),
                        left.rule(),
                        left.record()))
        .orElseGet(() -> change.section() + (done ? " is" : " would be") + " back in service.");
  }

  private static String text(Retired retired, Screen screen) {
    Prose prose = new Prose(screen);
    int count = retired.changes().size();
    prose.line(
        (retired.done() ? "Retired " : "Would retire ")
            + count
            + (count == 1 ? " section." : " sections."));
    retired.changes().stream()
        .limit(LISTED)
        .forEach(change -> prose.line("  ", said(change, retired.done())));
    if (count > LISTED) {
      prose.line("  and " + (count - LISTED) + " more; --json lists all.");
    }
    return prose.toString();
  }
}
