package hosewright.store.database;

import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;

/** Copies all books from one store into another, whole or not at all. */
public final class Move {
  private Move() {}

  /** How many rows of a table were copied. */
  public record Copied(String table, int rows) {}

  /**
   * Copies every table; the store it comes from stays as it is.
   *
   * @param to a store in which nothing was kept yet
   * @return what was copied, table by table, counted in both stores
   * @throws BadInputException when something is kept there already; nothing has changed then
   */
  public static List<Copied> copy(Database from, Database to) {
    List<Table<?>> tables = BookTables.parentsFirst();
    List<Copied> copied = new ArrayList<>();
    to.together(
        inside -> {
          DSLContext target = inside.context();
          tables.forEach(table -> Turns.take(target, table));
          clear(target, tables, to.where());
          copied.addAll(fill(target, from, tables));
        });
    to.marks().raiseTo(from.marks().read());
    return List.copyOf(copied);
  }

  /**
   * Puts all books of one store in the place of those in another, whole or not at all.
   *
   * @param before is done while nobody else can change what is about to be replaced
   */
  public static void replace(Database from, Database to, Consumer<Database> before) {
    List<Table<?>> tables = BookTables.parentsFirst();
    to.together(
        inside -> {
          DSLContext target = inside.context();
          tables.forEach(table -> Turns.take(target, table));
          before.accept(inside);
          empty(target, tables);
          fill(target, from, tables);
        });
  }

  private static List<Copied> fill(DSLContext target, Database from, List<Table<?>> tables) {
    return from.rowByRow(
        source -> {
          List<Copied> copied = new ArrayList<>();
          for (Table<?> table : tables) {
            copyRows(source.context(), target, table);
            copied.add(counted(source.context(), target, table));
          }
          return copied;
        });
  }

  /** Takes out what the migrations themselves put in, which is all an unused store holds. */
  private static void clear(DSLContext target, List<Table<?>> tables, String where) {
    try (Database unused = Database.unused()) {
      for (Table<?> table : tables) {
        if (!rows(target, table).equals(rows(unused.context(), table))) {
          throw ConflictException.stateForbids(
              "store",
              "in " + where,
              "has books in it already, nothing was copied",
              "name one that is not used yet");
        }
      }
    }
    empty(target, tables);
  }

  private static void empty(DSLContext target, List<Table<?>> tables) {
    List<Table<?>> childrenFirst = new ArrayList<>(tables);
    Collections.reverse(childrenFirst);
    childrenFirst.forEach(table -> target.deleteFrom(table).execute());
  }

  private static Set<List<Object>> rows(DSLContext context, Table<?> table) {
    return Set.copyOf(
        context.selectFrom(table).limit(BookTables.ROWS_AT_A_TIME).fetch(Record::intoList));
  }

  private static <R extends Record> void copyRows(
      DSLContext from, DSLContext target, Table<R> table) {
    try (Cursor<R> cursor = BookTables.rows(from, table)) {
      while (cursor.hasNext()) {
        Rows.insert(target, table, cursor.fetchNext(BookTables.ROWS_AT_A_TIME));
      }
    }
  }

  private static Copied counted(DSLContext from, DSLContext target, Table<?> table) {
    int there = from.fetchCount(table);
    int here = target.fetchCount(table);
    if (there != here) {
      throw new IllegalStateException(
          "%s has %d rows, of which %d arrived".formatted(table.getName(), there, here));
    }
    return new Copied(table.getName().toLowerCase(Locale.ROOT), here);
  }
}
