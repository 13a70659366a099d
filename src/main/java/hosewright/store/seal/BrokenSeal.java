package hosewright.store.seal;

import hosewright.problem.TroubleException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.UniqueKey;

/** Something in the books does not read as it was written. */
public final class BrokenSeal extends TroubleException {
  private static final long serialVersionUID = 1L;

  private BrokenSeal(String thing, String named) {
    super(
        thing,
        named,
        "it is damaged, it no longer reads as it was written: 'data check' says what else is,"
            + " 'data restore FILE' puts a backup back",
        Kept.NOTHING);
  }

  /** Of a row, named by its key as far as that can be read. */
  public static BrokenSeal ofRow(Record row, Table<?> table) {
    return new BrokenSeal(thing(table), key(row, table));
  }

  /**
   * Of rows that are missing, or more than there should be.
   *
   * @param whose rows
   */
  public static BrokenSeal ofRows(Table<?> table, String whose) {
    return new BrokenSeal(thing(table) + "s", whose);
  }

  /** What a row is called. */
  public static String thing(Table<?> table) {
    return table.getName().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** A row's key. */
  public static String key(Record row, Table<?> table) {
    UniqueKey<?> key = table.getPrimaryKey();
    Field<?>[] fields = key == null ? table.fields() : key.getFieldsArray();
    return Arrays.stream(fields)
        .map(field -> String.valueOf(row.get(field)))
        .collect(Collectors.joining(" "));
  }
}
