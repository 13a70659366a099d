package hosewright.store.seal;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.jooq.RecordContext;
import org.jooq.RecordListener;
import org.jooq.Table;
import org.jooq.TableRecord;

/**
 * Counts the rows of a catalogue while it is read whole, and holds them against what its load left.
 */
public final class Tally implements RecordListener {
  private final DSLContext context;
  private final OptionalInt load;
  private final Map<String, RowSum> left;
  private final Map<String, Counted> read = new HashMap<>();

  /** Before the first row is read. */
  public Tally(DSLContext context) {
    this.context = context;
    load = CatalogueSeals.lastLoad(context);
    left = CatalogueSeals.left(context, load);
  }

  /** The rows of one table as they come; a catalogue has too many to ask each for its columns. */
  private static final class Counted {
    private final int sealed;
    private RowSum sum = RowSum.NONE;

    private Counted(Table<?> table) {
      sealed = table.indexOf(Seal.column(table));
    }

    private void count(TableRecord<?> row) {
      sum = sum.with((Long) row.get(sealed));
    }
  }

  /** Where to read, so that rows are counted. */
  public DSLContext counting() {
    return context.configuration().deriveAppending(this).dsl();
  }

  @Override
  public void loadEnd(RecordContext loaded) {
    if (loaded.record() instanceof TableRecord<?> row) {
      Table<?> table = row.getTable();
      String name = table.getName();
      if (left.containsKey(name)) {
        read.computeIfAbsent(name, unread -> new Counted(table)).count(row);
      }
    }
  }

  /**
   * Sees that every row of some tables was read.
   *
   * @throws BrokenSeal when one is missing, or there is one too many
   */
  public void whole(Table<?>... tables) {
    for (Table<?> table : tables) {
      RowSum wanted = left.get(table.getName());
      if (wanted != null
          && !wanted.equals(sum(table))
          // Another load may have come between two queries, where they are not read steadily.
          && load.equals(CatalogueSeals.lastLoad(context))) {
        throw BrokenSeal.ofRows(table, "catalogue");
      }
    }
  }

  private RowSum sum(Table<?> table) {
    Counted counted = read.get(table.getName());
    return counted == null ? RowSum.NONE : counted.sum;
  }
}
