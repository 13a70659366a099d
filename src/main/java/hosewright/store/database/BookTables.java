package hosewright.store.database;

import hosewright.store.db.DefaultSchema;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;

/** The tables of the books, for whoever takes all of them alike. */
public final class BookTables {
  static final int ROWS_AT_A_TIME = 1000;

  private BookTables() {}

  /** A table comes after those its rows point at. */
  public static List<Table<?>> parentsFirst() {
    Set<Table<?>> sorted = new LinkedHashSet<>();
    DefaultSchema.DEFAULT_SCHEMA.getTables().forEach(table -> addWithParents(table, sorted));
    return List.copyOf(sorted);
  }

  /**
   * All rows of a table in the order of its key, to be fetched some at a time and to the end before
   * anything else is asked there.
   *
   * @param inside what {@link Database#rowByRow} reads through
   */
  public static <R extends Record> Cursor<R> rows(DSLContext inside, Table<R> table) {
    return inside
        .selectFrom(table)
        .orderBy(table.getPrimaryKey().getFields())
        .fetchSize(ROWS_AT_A_TIME)
        .fetchLazy();
  }

  private static void addWithParents(Table<?> table, Set<Table<?>> sorted) {
    if (sorted.contains(table)) {
      return;
    }
    table
        .getReferences()
        .forEach(
            reference -> {
              Table<?> parent = reference.getKey().getTable();
              if (!parent.equals(table)) {
                addWithParents(parent, sorted);
              }
            });
    sorted.add(table);
  }
}
