package hosewright.store;

import java.util.List;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableRecord;

/** Puts many rows into one table. */
final class Rows {
  private Rows() {}

  /** One statement for all rows: one for each would take most of a large catalogue's load time. */
  static <R extends TableRecord<R>> void insert(DSLContext inside, Table<R> table, List<R> rows) {
    if (rows.isEmpty()) {
      return;
    }
    Field<?>[] fields = table.fields();
    Object[][] values = rows.stream().map(TableRecord::intoArray).toArray(Object[][]::new);
    inside
        .batch(inside.insertInto(table, fields).values(new Object[fields.length]))
        .bind(values)
        .execute();
  }
}
