package hosewright.thread;

import static hosewright.csv.ReferenceTable.number;

import hosewright.csv.ReferenceTable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.csv.CSVRecord;

/** The dimensions of every thread, from {@code thread-dimensions.csv}. */
public final class ThreadTable {
  private static final List<ThreadDimensions> ROWS =
      ReferenceTable.rows("threads/thread-dimensions.csv", ThreadTable::row);

  private static final Map<String, Map<Double, ThreadDimensions>> BY_FAMILY =
      bySize(ThreadDimensions::family);
  private static final Map<String, Map<Double, ThreadDimensions>> NAMESAKES =
      bySize(ThreadDimensions::sharedWith);

  private ThreadTable() {}

  /** Every thread at every size, in the order of the table. */
  public static List<ThreadDimensions> all() {
    return ROWS;
  }

  /** The row of a family at a nominal size; empty when that family is not made in it. */
  public static Optional<ThreadDimensions> find(String family, double sizeIn) {
    return Optional.ofNullable(BY_FAMILY.getOrDefault(family, Map.of()).get(sizeIn));
  }

  /** The row of an end; empty for couplings without threads and for unlisted sizes. */
  public static Optional<ThreadDimensions> find(End end) {
    return find(end.family(), end.sizeIn());
  }

  /** The thread of another family that also goes by this family's name at this size. */
  static Optional<ThreadDimensions> namesake(String family, double sizeIn) {
    return Optional.ofNullable(NAMESAKES.getOrDefault(family, Map.of()).get(sizeIn));
  }

  private static Map<String, Map<Double, ThreadDimensions>> bySize(
      Function<ThreadDimensions, String> family) {
    Map<String, Map<Double, ThreadDimensions>> rows = new HashMap<>();
    for (ThreadDimensions row : ROWS) {
      if (!family.apply(row).isEmpty()) {
        rows.computeIfAbsent(family.apply(row), f -> new HashMap<>()).put(row.sizeIn(), row);
      }
    }
    return rows;
  }

  private static ThreadDimensions row(CSVRecord row) {
    return new ThreadDimensions(
        row.get("family"),
        Double.parseDouble(row.get("size_in")),
        number(row, "tpi"),
        row.get("shared_with"),
        new ThreadDimensions.Male(
            number(row, "major_max_in"),
            number(row, "major_min_in"),
            number(row, "pitch_max_in"),
            number(row, "pitch_min_in"),
            new ThreadDimensions.Taper(
                number(row, "small_end_major_in"), number(row, "e0_in"), number(row, "l1_in"))),
        new ThreadDimensions.Female(
            number(row, "female_minor_min_in"),
            number(row, "female_minor_max_in"),
            number(row, "female_pitch_min_in"),
            number(row, "female_major_min_in")),
        new Origin(
            row.get("standard"),
            row.get("table"),
            row.get("confidence"),
            row.get("source"),
            row.get("note")));
  }
}
