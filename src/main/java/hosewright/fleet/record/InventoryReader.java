package hosewright.fleet.record;

import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.Repeats;
import hosewright.csv.TableForm;
import hosewright.problem.Problem;
import hosewright.thread.End;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;

/**
 * Reads an inventory row by row, so that a million sections pass through without being kept.
 *
 * <p>A row may carry the section's last test: it becomes the section's first record.
 */
public final class InventoryReader {
  /** The table an inventory is kept in. */
  public static final TableForm FORM =
      new TableForm(
          "inventory.csv",
          List.of(
              "id",
              "size_in",
              "length_ft",
              "bought_length_ft",
              "ends",
              "jacket",
              "maker_code",
              "made",
              "in_service",
              "location",
              "assignment",
              "status",
              "on_record_since",
              "left_on",
              "last_test",
              "test_psi",
              "result"),
          List.of("id", "size_in", "length_ft", "ends", "location"));

  private static final Limits SIZE = Limits.between(0.25, 24, "in");
  private static final Limits LENGTH = Limits.between(1, 1_000, "ft");

  private final LocalDate today;
  private final List<Problem> problems;
  private final Repeats repeats = new Repeats("id");
  private final Map<String, Optional<End>> ends = new HashMap<>();

  /**
   * @param today the day before which everything in it must lie
   * @param problems takes whatever is wrong
   */
  public InventoryReader(LocalDate today, List<Problem> problems) {
    this.today = today;
    this.problems = problems;
  }

  /**
   * Hands out each sound row's section, with its last test where the row has one.
   *
   * @param tables by file name, {@link #FORM}'s among them
   */
  public void read(
      Map<String, CellRows> tables, BiConsumer<HoseRecord, Optional<ServiceRecord>> taker) {
    CsvFile.stream(
        tables,
        FORM,
        problems,
        row -> {
          repeats.hold(row);
          HoseRecord section = section(row);
          Optional<ServiceRecord> test = lastTest(row);
          if (row.sound()) {
            taker.accept(section, test);
          }
        });
  }

  private HoseRecord section(CsvRow row) {
    Optional<LocalDate> made = RecordCells.past(row, "made", today);
    Optional<LocalDate> inService = RecordCells.past(row, "in_service", today);
    if (made.isPresent() && inService.isPresent() && inService.get().isBefore(made.get())) {
      row.refuse("in_service", "a day not before the section was made, " + made.get());
    }
    if (made.isEmpty() && inService.isEmpty()) {
      row.refuse("made", "the day it was made or, if that is not known, in_service");
    }
    double length = row.number("length_ft", LENGTH);
    SectionStatus status =
        row.empty("status")
            ? SectionStatus.IN_SERVICE
            : row.choice("status", SectionStatus.byWord());
    Optional<LocalDate> left = RecordCells.past(row, "left_on", today);
    boolean usable = status == null || status.usable();
    if (left.isPresent() && usable) {
      row.refuse("left_on", "nothing, for a section whose status is in-service or reserve");
    }
    List<End> pair = ends(row);
    return new HoseRecord(
        row.text("id", 40),
        new HoseRecord.Make(
            row.number("size_in", SIZE),
            boughtLength(row, length),
            pair.get(0),
            pair.get(1),
            row.optionalText("jacket", 80),
            row.optionalText("maker_code", 60)),
        length,
        new HoseRecord.Days(
            made,
            inService,
            RecordCells.past(row, "on_record_since", today).orElse(today),
            usable ? Optional.empty() : left.or(() -> Optional.of(today))),
        new HoseRecord.Place(row.text("location", 80), row.optionalText("assignment", 80)),
        status);
  }

  private static double boughtLength(CsvRow row, double length) {
    double bought = row.optionalNumber("bought_length_ft", LENGTH).orElse(length);
    if (bought < length) {
      row.refuse("bought_length_ft", "a length of no less than its present " + length + " ft");
    }
    return bought;
  }

  /** Ends are few and are read a million times: what is known is not read again. */
  private List<End> ends(CsvRow row) {
    List<String> parts = row.parts("ends", " x ");
    if (parts.size() != 2) {
      row.refuse("ends", "two ends with ' x ' between, such as 2.5 NH female swivel x 2.5 NH male");
      return List.of(STAND_IN, STAND_IN);
    }
    return List.of(end(row, parts.get(0)), end(row, parts.get(1)));
  }

  private static final End STAND_IN = End.parse("2.5 NH male");

  private End end(CsvRow row, String written) {
    Optional<End> known = ends.get(written);
    if (known == null) {
      known = row.parsed("ends", written, End::parse);
      if (known.isPresent()) {
        ends.put(written, known);
      }
    }
    return known.orElse(STAND_IN);
  }

  private Optional<ServiceRecord> lastTest(CsvRow row) {
    Optional<LocalDate> day = RecordCells.past(row, "last_test", today);
    OptionalDouble psi = row.optionalNumber("test_psi", RecordCells.PRESSURE);
    if (day.isEmpty()) {
      if (!row.empty("result") || psi.isPresent()) {
        row.refuse("last_test", "the day of the test whose pressure or result is given");
      }
      return Optional.empty();
    }
    Outcome outcome = row.empty("result") ? Outcome.of("pass") : RecordCells.outcome(row, "result");
    return Optional.ofNullable(outcome)
        .map(
            found ->
                new ServiceRecord(
                    row.cell("id"),
                    day.get(),
                    found,
                    psi,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    "last test of the inventory"));
  }
}
