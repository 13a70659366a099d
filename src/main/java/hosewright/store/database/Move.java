package hosewright.store.database;

import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.store.db.DefaultSchema;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;

/** Copies all books from one store into another, whole or not at all. */
public final class Move {
  private static final int ROWS_AT_A_TIME = 1000;

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
    List<Table<?>> tables = parentsFirst();
    List<Copied> copied = new ArrayList<>();
    to.together(
        inside -> {
          DSLContext target = inside.context();
          tables.forEach(table -> Turns.take(target, table));
          clear(target, tables, to.where());
          for (Table<?> table : tables) {
            copyRows(from.context(), target, table);
            copied.add(counted(from.context(), target, table));
          }
        });
    to.marks().raiseTo(from.marks());
    return List.copyOf(copied);
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
    List<Table<?>> childrenFirst = new ArrayList<>(tables);
    Collections.reverse(childrenFirst);
    childrenFirst.forEach(table -> target.deleteFrom(table).execute());
  }

  private static Set<List<Object>> rows(DSLContext context, Table<?> table) {
    return Set.copyOf(context.selectFrom(table).limit(ROWS_AT_A_TIME).fetch(Record::intoList));
  }

  private static <R extends Record> void copyRows(
      DSLContext from, DSLContext target, Table<R> table) {
    try (Cursor<R> cursor = from.selectFrom(table).fetchSize(ROWS_AT_A_TIME).fetchLazy()) {
      while (cursor.hasNext()) {
        Rows.insert(target, table, cursor.fetchNext(ROWS_AT_A_TIME));
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

  /** A table comes after those its rows point at. */
  private static List<Table<?>> parentsFirst() {
    Set<Table<?>> sorted = new LinkedHashSet<>();
    DefaultSchema.DEFAULT_SCHEMA.getTables().forEach(table -> addWithParents(table, sorted));
    return List.copyOf(sorted);
  }

  private static void addWithParents(Table<?> table, Set<Table<?>> sorted) {
    if (sorted.contains(table)) {
      return;
    }
    table
        .getReferences()
        .forEach(
            reference -> {
              Table<?> parent = reference.getKey().getTable();
              if (!parent.equals(table)) {
                addWithParents(parent, sorted);
              }
            });
    sorted.add(table);
  }
}
