package hosewright.store.seal;

import hosewright.problem.TroubleException;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jooq.Field;
import org.jooq.Named;
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
    return words(table);
  }

  /** A row by its key: {@code Q-000001 revision 2}. */
  public static String key(Record row, Table<?> table) {
    UniqueKey<?> key = table.getPrimaryKey();
    Field<?>[] fields = key == null ? table.fields() : key.getFieldsArray();
    return IntStream.range(0, fields.length)
        .mapToObj(i -> (i == 0 ? "" : words(fields[i]) + " ") + row.get(fields[i]))
        .collect(Collectors.joining(" "));
  }

  private static String words(Named named) {
    return named.getName().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
