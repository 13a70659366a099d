package hosewright.store.backup;

import static hosewright.store.db.Tables.QUOTE;

import hosewright.store.database.BooksCheck.Damaged;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** The rows of a backup's table that stand for something damaged in the books. */
final class WantedRows {
  private final Table<?> table;
  private final List<? extends Field<?>> keyFields;
  private final Map<List<String>, Found> found = new HashMap<>();
  private final Set<Integer> lengths = new TreeSet<>();
  private long rows;

  /** What was met of one key, or of all keys that begin so. */
  private static final class Found {
    private int rows;
    private boolean asLastWritten;
    private int lastRevision;
  }

  WantedRows(Table<?> table, List<Damaged> damaged) {
    this.table = table;
    this.keyFields = table.getPrimaryKey().getFields();
    for (Damaged one : damaged) {
      want(key(one));
      if (table.equals(QUOTE) && key(one).size() > 1) {
        // An earlier revision is better than none.
        want(key(one).subList(0, 1));
      }
    }
  }

  private void want(List<String> key) {
    found.put(key, new Found());
    lengths.add(key.size());
  }

  private static List<String> key(Damaged one) {
    return one.where().key().stream().map(WantedRows::written).toList();
  }

  /** A value of a key the same way, whichever database or file it is from. */
  private static String written(Object value) {
    return CellType.of(value.getClass()).write(value);
  }

  /**
   * Takes a row of the backup.
   *
   * @param inBooks whether the books have one that was written alike
   */
  void row(Record row, boolean inBooks) {
    rows++;
    if (lengths.isEmpty()) {
      return;
    }
    List<String> key = keyFields.stream().map(field -> written(row.get(field))).toList();
    for (int length : lengths) {
      Found one = found.get(key.subList(0, length));
      if (one != null) {
        one.rows++;
        one.asLastWritten = inBooks;
        if (table.equals(QUOTE)) {
          one.lastRevision = Math.max(one.lastRevision, row.get(QUOTE.REVISION));
        }
      }
    }
  }

  /** What the backup holds of something damaged, once all rows are read. */
  String holding(Damaged one) {
    List<String> key = key(one);
    if (key.isEmpty()) {
      return String.format(Locale.ROOT, "holds %,d of this kind", rows);
    }
    Found held = found.get(key);
    if (held.rows == 0) {
      Found earlier = found.get(key.subList(0, 1));
      return table.equals(QUOTE) && earlier.rows > 0
          ? "holds it up to revision " + earlier.lastRevision
          : "does not hold it";
    }
    if (key.size() < keyFields.size()) {
      return table.equals(QUOTE) ? "holds it up to revision " + held.lastRevision : "holds it";
    }
    return held.asLastWritten ? "holds it as it was last written" : "holds it as it stood then";
  }
}
