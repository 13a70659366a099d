package hosewright.store.database;

import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.ORDER_VOID;
import static hosewright.store.db.Tables.PURCHASE_ORDER;
import static hosewright.store.db.Tables.QUOTE;
import static hosewright.store.db.Tables.QUOTE_VOID;

import hosewright.store.db.DefaultSchema;
import hosewright.store.seal.BrokenSeal;
import hosewright.store.seal.CatalogueSeals;
import hosewright.store.seal.Seal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.ForeignKey;
import org.jooq.Record;
import org.jooq.SQLDialect;
import org.jooq.Table;
import org.jooq.TableField;
import org.jooq.impl.DSL;

/** Reads all there is in a store and tells what does not read as it was written. */
public final class BooksCheck {
  private static final int ROWS_AT_A_TIME = 1000;

  private final DSLContext context;
  private final List<Damaged> damaged = new ArrayList<>();
  private long rows;

  private BooksCheck(Database books) {
    context = books.context();
  }

  /**
   * Something that is damaged.
   *
   * @param thing what it is: a quote, a price
   * @param named which
   * @param where the rows that it is made of
   */
  public record Damaged(String thing, String named, String what, Where where) {}

  /**
   * Rows of a table.
   *
   * @param table empty where it is not known which
   * @param key values of the first columns of its key, or of all; none for every row
   */
  public record Where(String table, List<Object> key) {
    static final Where NOT_KNOWN = new Where("", List.of());

    public Where {
      key = List.copyOf(key);
    }

    static Where anyOf(Table<?> table) {
      return new Where(table.getName(), List.of());
    }

    static Where of(Table<?> table, Record row) {
      return new Where(
          table.getName(),
          table.getPrimaryKey().getFields().stream().<Object>map(row::get).toList());
    }
  }

  /**
   * What was read, and what of it is damaged.
   *
   * @param changed whether an embedded store's file was not as it was left
   */
  public record Checked(long rows, boolean changed, List<Damaged> damaged) {}

  /** Reads a store; one that is damaged is not taken as it is when it is closed. */
  public static Checked of(Database books) {
    // Whoever looks for all damage must not be stopped by the first, nor misled by what others
    // write meanwhile.
    Checked checked =
        books.asItIs().steadily(steady -> new BooksCheck(steady).checked(books.isChanged()));
    if (!checked.damaged().isEmpty()) {
      books.distrust();
    }
    return checked;
  }

  private Checked checked(boolean changed) {
    DefaultSchema.DEFAULT_SCHEMA.getTables().forEach(this::table);
    if (damaged.isEmpty()) {
      // With rows damaged it is no news that they are missing elsewhere.
      guarded("catalogue", this::catalogue);
      guarded("paper", this::papers);
      DefaultSchema.DEFAULT_SCHEMA.getTables().forEach(this::pointers);
    }
    return new Checked(rows, changed, List.copyOf(damaged));
  }

  /** What cannot even be asked is damaged too. */
  private void guarded(String thing, Runnable look) {
    try {
      look.run();
    } catch (RuntimeException e) {
      damaged.add(new Damaged(thing, "", "cannot be read to the end", Where.NOT_KNOWN));
    }
  }

  private void table(Table<?> table) {
    int before = damaged.size();
    try (Cursor<?> read = context.selectFrom(table).fetchSize(ROWS_AT_A_TIME).fetchLazy()) {
      while (read.hasNext()) {
        row(read.fetchNext(), table);
      }
      if (context.family() == SQLDialect.H2 && damaged.size() == before) {
        notFoundByTheirKey(table);
      }
    } catch (RuntimeException e) {
      damaged.add(
          new Damaged(
              BrokenSeal.thing(table),
              "",
              "the rows of this kind cannot all be read",
              Where.anyOf(table)));
    }
  }

  private void row(Record row, Table<?> table) {
    rows++;
    if (!Seal.holds(row, table)) {
      tell(table, row, "does not read as it was written");
    }
  }

  /** An embedded store's index may be damaged while the rows are not. */
  private void notFoundByTheirKey(Table<?> table) {
    Table<?> found = table.as("FOUND");
    Condition key = DSL.noCondition();
    for (Field<?> field : table.getPrimaryKey().getFieldsArray()) {
      key = key.and(same(field, found.field(field.getName())));
    }
    context
        .selectFrom(table)
        .whereNotExists(DSL.selectOne().from(found).where(key))
        .forEach(row -> tell(table, row, "is not found by its number"));
  }

  private void tell(Table<?> table, Record row, String what) {
    damaged.add(
        new Damaged(
            BrokenSeal.thing(table), BrokenSeal.key(row, table), what, Where.of(table, row)));
  }

  private void catalogue() {
    for (Table<?> table : CatalogueSeals.unlike(context)) {
      damaged.add(
          new Damaged(
              BrokenSeal.thing(table),
              "",
              "not all rows are there that the last load left",
              Where.anyOf(table)));
    }
  }

  private void papers() {
    Highest used = HighWaterMarks.usedIn(context);
    Set<String> voidOrders = all(ORDER_VOID.PAPER_NUMBER);
    numbers(Series.QUOTE, used, QUOTE.QUOTE_NUMBER, all(QUOTE_VOID.QUOTE_NUMBER));
    numbers(Series.ORDER, used, CUSTOMER_ORDER.ORDER_NUMBER, voidOrders);
    numbers(Series.PURCHASE, used, PURCHASE_ORDER.PURCHASE_NUMBER, voidOrders);
  }

  private Set<String> all(TableField<?, String> numbers) {
    return context.select(numbers).from(numbers.getTable()).fetchSet(numbers);
  }

  private void numbers(
      Series series, Highest used, TableField<?, String> number, Set<String> lost) {
    Set<String> kept = all(number);
    series
        .between(0, used.of(series))
        .filter(one -> !kept.contains(one) && !lost.contains(one))
        .forEach(
            one ->
                damaged.add(
                    new Damaged(
                        series.paper(),
                        one,
                        "is missing",
                        new Where(number.getTable().getName(), List.of(one)))));
  }

  /** Rows that point at one that is not there. */
  private void pointers(Table<?> table) {
    for (ForeignKey<?, ?> reference : table.getReferences()) {
      guarded(BrokenSeal.thing(table), () -> pointer(table, reference));
    }
  }

  private void pointer(Table<?> table, ForeignKey<?, ?> reference) {
    Table<?> parent = reference.getKey().getTable().as("PARENT");
    Condition match = DSL.noCondition();
    Condition points = DSL.noCondition();
    List<? extends Field<?>> from = reference.getFields();
    List<? extends Field<?>> to = reference.getKeyFields();
    for (int i = 0; i < from.size(); i++) {
      points = points.and(from.get(i).isNotNull());
      match = match.and(same(from.get(i), parent.field(to.get(i).getName())));
    }
    context
        .selectFrom(table)
        .where(points)
        .andNotExists(DSL.selectOne().from(parent).where(match))
        .forEach(
            row ->
                tell(
                    table,
                    row,
                    "belongs to a "
                        + BrokenSeal.thing(reference.getKey().getTable())
                        + " that is missing"));
  }

  @SuppressWarnings("unchecked")
  private static <T> Condition same(Field<T> one, Field<?> other) {
    return one.eq((Field<T>) other);
  }
}
