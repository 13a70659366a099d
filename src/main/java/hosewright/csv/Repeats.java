package hosewright.csv;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Sees to it that no two rows have the same in a column, in any case of letters. */
public final class Repeats {
  private final String column;
  private final Map<String, Long> lines = new HashMap<>();

  public Repeats(String column) {
    this.column = column;
  }

  /** Refuses a row that repeats what an earlier one has. */
  public void hold(CsvRow row) {
    if (row.empty(column)) {
      return;
    }
    Long earlier = lines.putIfAbsent(row.cell(column).toLowerCase(Locale.ROOT), row.line());
    if (earlier != null) {
      row.refuse(column, "each " + column + " stands once, and line " + earlier + " has it");
    }
  }
}
