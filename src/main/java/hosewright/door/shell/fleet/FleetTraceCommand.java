package hosewright.door.shell.fleet;

import hosewright.csv.PlainNumber;
import hosewright.desk.Books;
import hosewright.desk.fleet.OfferSections;
import hosewright.desk.fleet.TraceSection;
import hosewright.desk.fleet.TraceSection.Line;
import hosewright.desk.fleet.TraceSection.Trace;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** Shows one section's life, and by which rule and record it left service. */
public final class FleetTraceCommand extends ShellCommand {
  private final TraceSection trace;

  public FleetTraceCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet trace",
                Group.BUDGET,
                "Shows a section's records and the rule it left service by",
                "fleet trace PH-0001")
            .with(
                ArgumentSpec.required("SECTION", "the section's id")
                    .completing(typed -> new OfferSections(books).beginning(typed))));
    trace = new TraceSection(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Trace traced = trace.trace(in.argument(0).orElseThrow());
    return Answer.of(traced, screen -> text(traced, screen));
  }

  private static String text(Trace trace, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line(
        "%s: %s, at %s%s. %s; %s ft now, %s ft lost, %d repairs."
            .formatted(
                trace.section().id(),
                trace.section().kind(),
                trace.section().place().location(),
                trace.section().place().assignment().isEmpty()
                    ? ""
                    : " on " + trace.section().place().assignment(),
                trace.today().status().substring(0, 1).toUpperCase(Locale.ROOT)
                    + trace.today().status().substring(1),
                PlainNumber.of(trace.today().lengthFt()),
                PlainNumber.of(trace.today().lostFt()),
                trace.today().repairs()));
    trace
        .left()
        .ifPresent(
            left ->
                prose.line(
                    "Left service on %s by record %d, rule %s: %s Source: %s."
                        .formatted(
                            left.date(),
                            left.record(),
                            left.rule(),
                            left.sentence(),
                            left.source())));
    trace.dueRule().ifPresent(rule -> prose.line("It falls under the rule " + rule + " today."));
    if (trace.left().isEmpty()) {
      prose.line("Its next service test is due " + trace.today().testDue() + ".");
    }
    Table table =
        Table.of("record", "date", "outcome", "psi", "held, min", "length, ft", "note")
            .numbers(0, 3, 4, 5);
    table.row(
        0, trace.section().days().onRecordSince(), "on record since", "", "", "", "inventory");
    for (Line line : trace.records()) {
      table.row(
          line.record(),
          line.date(),
          line.outcome(),
          plain(line.testPsi()),
          plain(line.holdMin()),
          plain(line.lengthFt()),
          line.note());
    }
    return prose.block(table.on(screen)).toString();
  }

  private static String plain(Optional<Double> number) {
    return number.map(PlainNumber::of).orElse("");
  }
}
