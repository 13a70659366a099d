package hosewright.store.backup;

import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.table;
import static org.jooq.impl.DSL.unquotedName;

import hosewright.disk.OwnerOnly;
import hosewright.store.database.Database;
import hosewright.store.database.HighWaterMarks;
import hosewright.store.database.Highest;
import hosewright.store.database.Schema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;

/**
 * Puts the rows of a backup into a new embedded store, in tables that our own migrations made as
 * they were when the backup was written. Whatever fails, the store is thrown away.
 */
final class FreshBooks implements Shelf, AutoCloseable {
  private static final int ROWS_AT_A_TIME = 500;
  private static final int CHARACTERS_AT_A_TIME = 1 << 20;

  private final NotABackup refusal;
  private final Path folder;
  private final Set<String> missing = new TreeSet<>();
  private final List<Object[]> rows = new ArrayList<>();
  private int characters;
  private Database books;
  private Table<Record> table;
  private List<Field<?>> fields = List.of();
  private Highest numbers;

  /**
   * @param folder an empty one to make the store in
   */
  FreshBooks(NotABackup refusal, Path folder) {
    this.refusal = refusal;
    this.folder = folder;
  }

  @Override
  public void head(Head head) {
    Schema.refuseNewer("backup", refusal.file().toString(), head.schema());
    if (head.schema() < 1) {
      throw refusal.because("it says that it has no tables");
    }
    books = Database.fresh(folder, head.schema());
    missing.addAll(
        books
            .context()
            .select(field("TABLE_NAME", String.class))
            .from("INFORMATION_SCHEMA.TABLES")
            .where("TABLE_SCHEMA = 'PUBLIC' AND TABLE_NAME <> 'flyway_schema_history'")
            .fetchSet(0, String.class));
  }

  @Override
  public void numbers(Highest highest) {
    numbers = highest;
  }

  @Override
  public void file(String name, byte[] content) {
    try {
      OwnerOnly.folder(folder.resolve(name).getParent());
      OwnerOnly.file(folder.resolve(name));
      Files.write(folder.resolve(name), content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void table(String name, List<Column> columns) {
    flush();
    if (!missing.remove(name)) {
      throw refusal.because("books of its version have no table " + name + ", or it comes twice");
    }
    table = DSL.table(unquotedName(name));
    Set<Column> known = new HashSet<>();
    for (Field<?> field :
        books.context().selectFrom(table).where(DSL.falseCondition()).fetch().fields()) {
      known.add(new Column(field.getName(), CellType.of(field.getType())));
    }
    if (columns.size() != known.size() || !known.equals(Set.copyOf(columns))) {
      throw refusal.because(
          "its table %s has other columns than in books of its version".formatted(name));
    }
    fields =
        columns.stream()
            .<Field<?>>map(column -> field(unquotedName(column.name()), column.type().stored()))
            .toList();
    // The migrations put a row into some.
    books.context().deleteFrom(table).execute();
  }

  @Override
  public void row(Object[] cells) {
    rows.add(cells);
    characters += Arrays.stream(cells).mapToInt(FreshBooks::length).sum();
    if (rows.size() >= ROWS_AT_A_TIME || characters >= CHARACTERS_AT_A_TIME) {
      flush();
    }
  }

  private static int length(Object cell) {
    return cell instanceof String text ? text.length() : 8;
  }

  private void flush() {
    if (rows.isEmpty()) {
      return;
    }
    try {
      books
          .context()
          .batch(books.context().insertInto(table, fields).values(new Object[fields.size()]))
          .bind(rows.toArray(Object[][]::new))
          .execute();
    } catch (DataAccessException e) {
      // A value out of its limits, a row twice, or one that points at none.
      if (e.sqlState().startsWith("22") || e.sqlState().startsWith("23")) {
        throw refusal.because(
            "rows of its table %s break the rules of the books".formatted(table.getName()));
      }
      throw e;
    }
    rows.clear();
    characters = 0;
  }

  @Override
  public void end() {
    flush();
    if (!missing.isEmpty()) {
      throw refusal.because("it lacks " + String.join(", ", missing));
    }
    if (numbers == null) {
      throw refusal.because("it lacks the highest numbers");
    }
    books.bringUpToDate();
    Highest used = HighWaterMarks.usedIn(books.context());
    refuseFarBeyond(used, HighWaterMarks.papersIn(books.context()));
    refuseFarBeyond(numbers, used);
  }

  /** Numbers that nothing in the books comes near would block numbering or run out of digits. */
  private void refuseFarBeyond(Highest numbers, Highest near) {
    numbers
        .farBeyond(near)
        .ifPresent(
            series -> {
              throw refusal.because(
                  "it says that %s was given, and the papers in it come to %s at most"
                      .formatted(
                          series.written(numbers.of(series)), series.written(near.of(series))));
            });
  }

  /** The store, once all was read. */
  Database books() {
    return books;
  }

  Highest highest() {
    return numbers;
  }

  @Override
  public void close() {
    if (books != null) {
      books.close();
    }
  }
}
