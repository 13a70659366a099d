package hosewright.command;

import hosewright.desk.Books;
import hosewright.fleet.AgencyLimits;
import hosewright.fleet.DaysRecords;
import hosewright.fleet.DaysRecords.Change;
import hosewright.fleet.Outcome;
import hosewright.fleet.Retirement;
import hosewright.fleet.SectionLife;
import hosewright.fleet.ServiceRecord;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.store.FleetStore;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Retires sections: those named, or all that a rule retires. */
final class FleetRetireCommand extends ShellCommand {
  private static final int LISTED = 20;

  private final Supplier<Books> books;

  FleetRetireCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet retire",
                Group.BUDGET,
                "Retires sections by name, or all that a rule retires",
                "fleet retire --by-rules --dry-run")
            .with(
                ArgumentSpec.optional("SECTION", "sections to retire")
                    .asRepeatable()
                    .completing(typed -> FleetOptions.sections(books, typed)))
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
    this.books = books;
  }

  record Retired(boolean done, List<Change> changes) {}

  @Override
  protected Answer answer(Invocation in) {
    if (in.arguments().isEmpty() != in.flag("by-rules")) {
      throw new BadInputException("SECTION", "", "sections to retire, or --by-rules, not both");
    }
    Retired retired;
    try (Books open = books.get()) {
      FleetStore fleet = FleetOptions.loaded(open);
      LocalDate day = FleetOptions.day(in, "date", open.today());
      if (day.isAfter(open.today())) {
        throw new BadInputException("date", day.toString(), "a day not after today");
      }
      List<Problem> problems = new ArrayList<>();
      DaysRecords records = new DaysRecords(fleet.limits(), fleet::find, problems);
      wanted(in, fleet, day, problems).forEach(records::take);
      if (!problems.isEmpty()) {
        throw new BadInputException(problems);
      }
      if (!in.flag("dry-run")) {
        fleet.add(records.accepted());
      }
      retired = new Retired(!in.flag("dry-run"), records.changes());
    }
    return Answer.of(retired, screen -> text(retired, screen));
  }

  private static List<ServiceRecord> wanted(
      Invocation in, FleetStore fleet, LocalDate day, List<Problem> problems) {
    String note = in.value("note").orElse("");
    List<ServiceRecord> wanted = new ArrayList<>();
    if (in.flag("by-rules")) {
      AgencyLimits limits = fleet.limits();
      fleet.each(
          life -> {
            if (life.standing(limits).status().usable()) {
              life.due(limits, day).ifPresent(due -> wanted.add(byRule(life, due, note)));
            }
          });
      return wanted;
    }
    Outcome because =
        Optional.of(in.required("because"))
            .filter(word -> word.equals("lost") || word.equals("withdrawn"))
            .map(Outcome::of)
            .orElseThrow(
                () ->
                    new BadInputException("because", in.required("because"), "lost or withdrawn"));
    for (String id : in.arguments()) {
      if (fleet.find(id).isPresent()) {
        wanted.add(record(id, day, because, note));
      } else {
        problems.add(FleetTraceCommand.unknown(id, fleet));
      }
    }
    return wanted;
  }

  private static ServiceRecord byRule(SectionLife life, Retirement due, String note) {
    String why =
        "made or put in service " + life.section().born() + (note.isEmpty() ? "" : "; " + note);
    return record(life.section().id(), due.date(), Outcome.of(due.rule()), why);
  }

  private static ServiceRecord record(String id, LocalDate day, Outcome outcome, String note) {
    return new ServiceRecord(
        id,
        day,
        outcome,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        note);
  }

  /** A section's change of standing with the rule, record and day behind it. */
  static String said(Change change) {
    return change
        .retirement()
        .map(
            left ->
                "%s is %s since %s: %s Rule %s, record %d."
                    .formatted(
                        change.section(),
                        change.status().word(),
                        left.date(),
                        left.ruleInWords().sentence(),
                        left.rule(),
                        left.record()))
        .orElseGet(() -> change.section() + " is back in service.");
  }

  private static String text(Retired retired, Screen screen) {
    Prose prose = new Prose(screen);
    int count = retired.changes().size();
    prose.line((retired.done() ? "Retired " : "Would retire ") + count + " sections.");
    retired.changes().stream().limit(LISTED).forEach(change -> prose.line("  ", said(change)));
    if (count > LISTED) {
      prose.line("  and " + (count - LISTED) + " more; --json lists all.");
    }
    return prose.toString();
  }
}
