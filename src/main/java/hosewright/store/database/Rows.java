package hosewright.store.database;

import hosewright.store.seal.Seal;
import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.UpdatableRecord;

/** Writes rows: every one sealed, and so that many go in quickly. */
public final class Rows {
  private Rows() {}

  /** As many rows as one statement takes: their copies in memory are many times their size. */
  private static final int CHUNK = 5_000;

  /** A statement for thousands of rows: one for each would take most of a large load's time. */
  public static void insert(DSLContext inside, Table<?> table, List<? extends Record> rows) {
    seal(table, rows);
    Field<?>[] fields = table.fields();
    for (int from = 0; from < rows.size(); from += CHUNK) {
      Object[][] values =
          rows.subList(from, Math.min(from + CHUNK, rows.size())).stream()
              .map(Rows::values)
              .toArray(Object[][]::new);
      inside
          .batch(inside.insertInto(table, fields).values(new Object[fields.length]))
          .bind(values)
          .execute();
    }
  }

  /** Puts in one row. */
  public static void insert(DSLContext inside, UpdatableRecord<?> row) {
    Seal.put(row, row.getTable());
    inside.executeInsert(row);
  }

  /** Puts rows in, each in the place of the one with its key where there is one. */
  public static void merge(
      DSLContext inside, Table<?> table, List<? extends UpdatableRecord<?>> rows) {
    seal(table, rows);
    inside.batchMerge(rows).execute();
  }

  /** Writes rows that were read and changed. */
  public static void update(
      DSLContext inside, Table<?> table, Collection<? extends UpdatableRecord<?>> rows) {
    seal(table, rows);
    inside.batchUpdate(rows).execute();
  }

  /**
   * Changes rows, each as it reads when nobody else can change it any more: one that is damaged is
   * found out and never sealed anew.
   *
   * @return how many
   */
  public static <R extends UpdatableRecord<R>> int change(
      DSLContext inside, Table<R> table, Condition which, Consumer<R> change) {
    List<R> rows = inside.selectFrom(table).where(which).forUpdate().fetch();
    rows.forEach(change);
    update(inside, table, rows);
    return rows.size();
  }

  private static void seal(Table<?> table, Collection<? extends Record> rows) {
    if (Seal.isOn(table)) {
      rows.forEach(row -> Seal.put(row, table));
    }
  }

  /** What a row holds; the library's own way looks a mapper up for each row, and took longer. */
  private static Object[] values(Record row) {
    Object[] values = new Object[row.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = row.get(i);
    }
    return values;
  }
}
