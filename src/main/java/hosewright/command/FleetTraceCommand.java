package hosewright.command;

import hosewright.desk.Books;
import hosewright.fleet.AgencyLimits;
import hosewright.fleet.HoseRecord;
import hosewright.fleet.Retirement;
import hosewright.fleet.SectionLife;
import hosewright.fleet.ServiceRecord;
import hosewright.fleet.Standing;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import hosewright.store.FleetStore;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Shows one section's life, and by which rule and record it left service. */
final class FleetTraceCommand extends ShellCommand {
  private final Supplier<Books> books;

  FleetTraceCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet trace",
                Group.BUDGET,
                "Shows a section's records and the rule it left service by",
                "fleet trace PH-0001")
            .with(
                ArgumentSpec.required("SECTION", "the section's id")
                    .completing(typed -> FleetOptions.sections(books, typed))));
    this.books = books;
  }

  /**
   * A section's life.
   *
   * @param dueRule the rule that retires it today although no record has done so
   */
  record Trace(
      HoseRecord section,
      String status,
      double lengthFt,
      double lostFt,
      int repairs,
      LocalDate testDue,
      Optional<Left> left,
      Optional<String> dueRule,
      List<Line> records) {}

  /** How it left service. */
  record Left(
      String rule, String sentence, String source, int record, LocalDate date, boolean failure) {}

  /** One record. */
  record Line(
      int record,
      LocalDate date,
      String outcome,
      Optional<Double> testPsi,
      Optional<Double> holdMin,
      Optional<Double> lengthFt,
      String note) {}

  @Override
  protected Answer answer(Invocation in) {
    String id = in.argument(0).orElseThrow();
    Trace trace;
    try (Books open = books.get()) {
      FleetStore fleet = FleetOptions.loaded(open);
      SectionLife life =
          fleet.find(id).orElseThrow(() -> new BadInputException(List.of(unknown(id, fleet))));
      trace = trace(life, fleet.limits(), open.today());
    }
    return Answer.of(trace, screen -> text(trace, screen));
  }

  static Problem unknown(String id, FleetStore fleet) {
    return new Problem("SECTION", id, "a section on record", Nearest.to(id, fleet.ids()));
  }

  private static Trace trace(SectionLife life, AgencyLimits limits, LocalDate today) {
    Standing standing = life.standing(limits);
    HoseRecord section = life.section();
    List<Line> lines = new ArrayList<>();
    for (ServiceRecord record : life.records()) {
      lines.add(
          new Line(
              lines.size() + 1,
              record.date(),
              record.outcome().code(),
              boxed(record.pressurePsi()),
              boxed(record.holdMinutes()),
              boxed(record.lengthFt()),
              record.note()));
    }
    return new Trace(
        section,
        standing.status().word(),
        standing.lengthFt(),
        standing.lengthLostFt(section),
        standing.repairs(),
        standing.testDue(section),
        standing.retirement().map(FleetTraceCommand::left),
        standing.status().usable()
            ? life.due(limits, today).map(Retirement::rule)
            : Optional.empty(),
        lines);
  }

  private static Left left(Retirement retirement) {
    var rule = retirement.ruleInWords();
    return new Left(
        rule.code(),
        rule.sentence(),
        rule.source(),
        retirement.record(),
        retirement.date(),
        rule.failure());
  }

  private static Optional<Double> boxed(OptionalDouble number) {
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }

  private static String text(Trace trace, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line(
        "%s: %s, at %s%s. %s; %s ft now, %s ft lost, %d repairs."
            .formatted(
                trace.section().id(),
                trace.section().kind(),
                trace.section().location(),
                trace.section().assignment().isEmpty() ? "" : " on " + trace.section().assignment(),
                trace.status().substring(0, 1).toUpperCase(Locale.ROOT)
                    + trace.status().substring(1),
                Prose.plain(trace.lengthFt()),
                Prose.plain(trace.lostFt()),
                trace.repairs()));
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
      prose.line("Its next service test is due " + trace.testDue() + ".");
    }
    Table table =
        Table.of("record", "date", "outcome", "psi", "held, min", "length, ft", "note")
            .numbers(0, 3, 4, 5);
    table.row(0, trace.section().onRecordSince(), "on record since", "", "", "", "inventory");
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
    return number.map(Prose::plain).orElse("");
  }
}
