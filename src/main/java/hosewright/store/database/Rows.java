package hosewright.store.database;

import java.util.List;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Puts many rows into one table. */
public final class Rows {
  private Rows() {}

  /** As many rows as one statement takes: their copies in memory are many times their size. */
  private static final int CHUNK = 5_000;

  /** A statement for thousands of rows: one for each would take most of a large load's time. */
  public static void insert(DSLContext inside, Table<?> table, List<? extends Record> rows) {
    Field<?>[] fields = table.fields();
    for (int from = 0; from < rows.size(); from += CHUNK) {
      Object[][] values =
          rows.subList(from, Math.min(from + CHUNK, rows.size())).stream()
              .map(Record::intoArray)
              .toArray(Object[][]::new);
      inside
          .batch(inside.insertInto(table, fields).values(new Object[fields.length]))
          .bind(values)
          .execute();
    }
  }
}
