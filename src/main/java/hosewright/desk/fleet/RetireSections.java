package hosewright.desk.fleet;

import hosewright.desk.Books;
import hosewright.fleet.record.AgencyLimits;
import hosewright.fleet.record.DaysRecords;
import hosewright.fleet.record.DaysRecords.Change;
import hosewright.fleet.record.Outcome;
import hosewright.fleet.record.Retirement;
import hosewright.fleet.record.SectionLife;
import hosewright.fleet.record.ServiceRecord;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.problem.Problem;
import hosewright.store.fleet.FleetStore;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/** Retires sections: those named, or all that a rule retires. */
public final class RetireSections {
  private final Supplier<Books> books;

  public RetireSections(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param sections ids; none when rules choose
   * @param byRules whether all go that were made too early or reached the age limit
   * @param because the word for why the named ones go, lost or withdrawn
   * @param date the day they leave service, in words; empty for today
   * @param note kept with each record; may be empty
   * @param dryRun whether only to tell what would be retired
   */
  public record Request(
      List<String> sections,
      boolean byRules,
      String because,
      Optional<String> date,
      String note,
      boolean dryRun) {}

  /**
   * Sections that left service.
   *
   * @param done false when it was only told what would be retired
   */
  public record Retired(boolean done, List<Change> changes) {}

  /**
   * Retires them, all or none.
   *
   * @throws BadInputException naming everything that cannot be done; nothing has changed then
   */
  public Retired retire(Request asked) {
    if (asked.sections().isEmpty() != asked.byRules()) {
      throw new BadInputException(
          "SECTION", "", "sections to retire, or " + Given.as("by-rules") + ", not both");
    }
    AtomicReference<Retired> retired = new AtomicReference<>();
    try (Books open = books.get()) {
      FleetOnRecord.in(open);
      open.changeFleet(fleet -> retired.set(retire(asked, fleet, open.today())));
    }
    return retired.get();
  }

  private static Retired retire(Request asked, FleetStore fleet, LocalDate today) {
    LocalDate day = asked.date().map(text -> FleetWords.day("date", text)).orElse(today);
    if (day.isAfter(today)) {
      throw new BadInputException("date", day.toString(), "a day not after today");
    }
    List<Problem> problems = new ArrayList<>();
    DaysRecords records = new DaysRecords(fleet.limits(), fleet::find, problems);
    wanted(asked, fleet, day, problems).forEach(records::take);
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    if (!asked.dryRun()) {
      fleet.add(records.accepted());
    }
    return new Retired(!asked.dryRun(), records.changes());
  }

  private static List<ServiceRecord> wanted(
      Request asked, FleetStore fleet, LocalDate day, List<Problem> problems) {
    if (asked.byRules()) {
      return byRules(fleet, day, asked.note());
    }
    Outcome because = because(asked.because());
    List<ServiceRecord> wanted = new ArrayList<>();
    for (String id : asked.sections()) {
      if (fleet.find(id).isPresent()) {
        wanted.add(record(id, day, because, asked.note()));
      } else {
        problems.add(FleetOnRecord.unknown(id, fleet));
      }
    }
    return wanted;
  }

  private static Outcome because(String word) {
    if (!word.equals("lost") && !word.equals("withdrawn")) {
      throw new BadInputException("because", word, "lost or withdrawn");
    }
    return Outcome.of(word);
  }

  private static List<ServiceRecord> byRules(FleetStore fleet, LocalDate day, String note) {
    AgencyLimits limits = fleet.limits();
    List<ServiceRecord> wanted = new ArrayList<>();
    fleet.each(
        life -> {
          if (life.standing(limits).status().usable()) {
            life.due(limits, day).ifPresent(due -> wanted.add(byRule(life, due, note)));
          }
        });
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
}
