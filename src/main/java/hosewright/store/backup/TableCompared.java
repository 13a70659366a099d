package hosewright.store.backup;

import static hosewright.store.db.Tables.CUSTOMER;
import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.PURCHASE_ORDER;
import static hosewright.store.db.Tables.QUOTE;

import hosewright.store.backup.Recovery.Lost;
import hosewright.store.database.BooksCheck.Damaged;
import hosewright.store.seal.BrokenSeal;
import hosewright.store.seal.Seal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Record1;
import org.jooq.Table;

/**
 * One table of a backup beside that of damaged books. Rows are told apart by their seals, 8 bytes
 * for each row of the books; keys are kept of papers and customers only, of those that changed.
 */
final class TableCompared {
  private static final int ROWS_AT_A_TIME = 1000;

  /** What people know by its number or name. */
  private static final Set<Table<?>> KNOWN_BY_NAME =
      Set.of(QUOTE, CUSTOMER_ORDER, PURCHASE_ORDER, CUSTOMER);

  private final DSLContext books;
  private final Table<?> table;
  private final List<Field<?>> fields;
  private final List<Damaged> damaged;
  private final WantedRows wanted;
  private final Set<String> changed = new HashSet<>();
  private final long[] seals;
  private final BitSet met = new BitSet();
  private long damagedRows;

  /**
   * Before the first row is read.
   *
   * @param damaged what of this table is
   */
  TableCompared(DSLContext books, Table<?> table, List<Column> columns, List<Damaged> damaged) {
    this.books = books;
    this.table = table;
    this.damaged = damaged;
    this.wanted = new WantedRows(table, damaged);
    this.fields = columns.stream().<Field<?>>map(column -> table.field(column.name())).toList();
    this.seals = seals();
  }

  /** The seals of the rows in the books; none where they cannot all be read. */
  private long[] seals() {
    try (Cursor<Record1<Long>> read =
        books.select(Seal.column(table)).from(table).fetchSize(ROWS_AT_A_TIME).fetchLazy()) {
      return read.stream().mapToLong(Record1::value1).sorted().toArray();
    } catch (RuntimeException e) {
      return new long[0];
    }
  }

  void row(Object[] cells) {
    Record row = record(cells);
    if (row.get(Seal.column(table)) == null) {
      // Of a version that knew no seals.
      Seal.put(row, table);
    } else if (!Seal.holds(row, table)) {
      damagedRows++;
    }
    int at = Arrays.binarySearch(seals, row.get(Seal.column(table)));
    if (at >= 0) {
      met.set(at);
    } else if (KNOWN_BY_NAME.contains(table)) {
      changed.add(BrokenSeal.key(row, table));
    }
    wanted.row(row, at >= 0);
  }

  private Record record(Object[] cells) {
    Record row = table.newRecord();
    for (int i = 0; i < cells.length; i++) {
      if (fields.get(i) != null) {
        set(row, fields.get(i), cells[i]);
      }
    }
    return row;
  }

  @SuppressWarnings("unchecked")
  private static <T> void set(Record row, Field<T> field, Object value) {
    row.set(field, (T) value);
  }

  long damagedRows() {
    return damagedRows;
  }

  /** What of the damaged is there, and how, once all rows are read. */
  Map<Damaged, String> holdings() {
    Map<Damaged, String> holdings = new LinkedHashMap<>();
    damaged.forEach(one -> holdings.put(one, wanted.holding(one)));
    return holdings;
  }

  /** What the books have and the backup has not, once all rows are read. */
  Optional<Lost> lost() {
    Set<String> known = new HashSet<>();
    damaged.forEach(one -> known.add(one.named()));
    List<String> gone = new ArrayList<>();
    List<String> goBack = new ArrayList<>();
    long rows = 0;
    List<Field<?>> asked = new ArrayList<>(table.getPrimaryKey().getFields());
    asked.add(Seal.column(table));
    try (Cursor<Record> read =
        books.select(asked).from(table).fetchSize(ROWS_AT_A_TIME).fetchLazy()) {
      for (Record row : read) {
        int at = Arrays.binarySearch(seals, row.get(Seal.column(table)));
        String key = BrokenSeal.key(row, table);
        if (at >= 0 && !met.get(at) && !known.contains(key)) {
          rows++;
          if (KNOWN_BY_NAME.contains(table)) {
            (changed.contains(key) ? goBack : gone).add(key);
          }
        }
      }
    } catch (RuntimeException e) {
      // The damage was told already, and what cannot be read cannot be counted.
      return Optional.empty();
    }
    return rows == 0
        ? Optional.empty()
        : Optional.of(new Lost(BrokenSeal.thing(table), rows, gone, goBack));
  }
}
