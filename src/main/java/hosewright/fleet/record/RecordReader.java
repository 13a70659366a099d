package hosewright.fleet.record;

import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.TableForm;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;

/** Reads service records row by row. */
public final class RecordReader {
  /** The table records are kept in. */
  public static final TableForm FORM =
      new TableForm(
          "records.csv",
          List.of("section", "date", "outcome", "test_psi", "hold_min", "length_ft", "note"),
          List.of("section", "date", "outcome"));

  private static final Limits HOLD = Limits.between(0.1, 240, "minutes");
  private static final Limits LENGTH = Limits.between(1, 1_000, "ft");

  /** With many wrong names there is no right one: stop looking after so many. */
  private static final int SUGGESTIONS = 50;

  private final LocalDate today;
  private final AgencyLimits limits;
  private final Set<String> sections;
  private final List<Problem> problems;

  /**
   * @param sections ids of the sections a record may be of
   * @param problems takes whatever is wrong
   */
  public RecordReader(
      LocalDate today, AgencyLimits limits, Set<String> sections, List<Problem> problems) {
    this.today = today;
    this.limits = limits;
    this.sections = sections;
    this.problems = problems;
  }

  /** Hands out each sound row's record. */
  public void read(Map<String, CellRows> tables, Consumer<ServiceRecord> taker) {
    CsvFile.stream(
        tables,
        FORM,
        problems,
        row -> {
          ServiceRecord record = record(row);
          if (row.sound()) {
            taker.accept(record);
          }
        });
  }

  private ServiceRecord record(CsvRow row) {
    String section = row.text("section", 40);
    if (!section.isEmpty() && !sections.contains(section)) {
      row.refuse(
          "section",
          "a section of the inventory",
          problems.size() < SUGGESTIONS ? Nearest.to(section, sections) : "");
    }
    if (row.empty("date")) {
      row.refuse("date", "the day of the record");
    }
    Outcome outcome = RecordCells.outcome(row, "outcome");
    OptionalDouble hold = row.optionalNumber("hold_min", HOLD);
    if (outcome != null && outcome.effect() == Outcome.Effect.PASS && hold.isPresent()) {
      checkHold(row, hold.getAsDouble());
    }
    return new ServiceRecord(
        section,
        RecordCells.past(row, "date", today).orElse(today),
        outcome,
        row.optionalNumber("test_psi", RecordCells.PRESSURE),
        hold,
        row.optionalNumber("length_ft", LENGTH),
        row.optionalText("note", 500));
  }

  private void checkHold(CsvRow row, double minutes) {
    TestRule rule = limits.hold().orElseThrow();
    if (minutes < rule.value()) {
      row.refuse(
          "hold_min",
          "at least %.0f minutes for a passed test, by edition %s (%s)"
              .formatted(rule.value(), rule.edition(), rule.source()));
    }
  }
}
