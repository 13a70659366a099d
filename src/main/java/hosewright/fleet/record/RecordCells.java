package hosewright.fleet.record;

import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the cells that inventories and service records share. */
final class RecordCells {
  static final Limits PRESSURE = Limits.between(1, 2_000, "psi");

  private static final Pattern MONTH = Pattern.compile("\\d{4}-\\d{2}");

  private RecordCells() {}

  /** A day that is not in the future; a month, as hose is often stencilled, is its first day. */
  static Optional<LocalDate> past(CsvRow row, String column, LocalDate today) {
    String cell = row.cell(column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    LocalDate day = read(row, column, cell);
    if (day.isAfter(today)) {
      row.refuse(column, "a day that is not after " + today);
    }
    return Optional.of(day);
  }

  private static LocalDate read(CsvRow row, String column, String cell) {
    try {
      return LocalDate.parse(MONTH.matcher(cell).matches() ? cell + "-01" : cell);
    } catch (DateTimeParseException e) {
      return refused(row, column);
    }
  }

  private static LocalDate refused(CsvRow row, String column) {
    row.refuse(
        column, "a day written year-month-day, such as 2019-04-30, or a month such as 2019-04");
    return LocalDate.EPOCH;
  }

  /** The outcome of that word; null, and noted, when there is none. */
  static Outcome outcome(CsvRow row, String column) {
    return row.choice(column, Outcome.byWord());
  }
}
