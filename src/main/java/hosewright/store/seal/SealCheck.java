package hosewright.store.seal;

import org.jooq.Record;
import org.jooq.RecordContext;
import org.jooq.RecordListener;
import org.jooq.Table;
import org.jooq.TableRecord;

/** Checks the seal of every whole row that is read. */
public final class SealCheck implements RecordListener {
  @Override
  public void loadEnd(RecordContext loaded) {
    if (loaded.record() instanceof TableRecord<?> row && isThere(row)) {
      check(row, row.getTable());
    }
  }

  /** Of a row that an outer join did not find every value is null, which no key may be. */
  private static boolean isThere(TableRecord<?> row) {
    for (int i = 0; i < row.size(); i++) {
      if (row.get(i) != null) {
        return true;
      }
    }
    return false;
  }

  /**
   * Checks one row that was read otherwise than whole.
   *
   * @param row has all columns of its table but the document, which it may lack
   * @throws BrokenSeal when it no longer reads as it was written
   */
  public static void check(Record row, Table<?> table) {
    if (Seal.isOn(table) && !Seal.holds(row, table)) {
      throw BrokenSeal.ofRow(row, table);
    }
  }
}
