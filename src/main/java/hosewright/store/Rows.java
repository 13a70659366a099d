package hosewright.store;

import java.util.List;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Puts many rows into one table. */
final class Rows {
  private Rows() {}

  /** One statement for all rows: one for each would take most of a large catalogue's load time. */
  static void insert(DSLContext inside, Table<?> table, List<? extends Record> rows) {
    if (rows.isEmpty()) {
      return;
    }
    Field<?>[] fields = table.fields();
    Object[][] values = rows.stream().map(Record::intoArray).toArray(Object[][]::new);
    inside
        .batch(inside.insertInto(table, fields).values(new Object[fields.length]))
        .bind(values)
        .execute();
  }
}
