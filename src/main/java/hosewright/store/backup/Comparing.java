package hosewright.store.backup;

import hosewright.store.database.BooksCheck.Damaged;
import hosewright.store.database.Highest;
import hosewright.store.database.Schema;
import hosewright.store.db.DefaultSchema;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jooq.DSLContext;
import org.jooq.Table;

/** Holds a backup against damaged books while it is read, one table at a time. */
final class Comparing implements Shelf {
  private final Path file;
  private final DSLContext books;
  private final List<Damaged> damaged;
  private final Map<Damaged, String> holdings = new LinkedHashMap<>();
  private final List<Recovery.Lost> lost = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();
  private Instant made = Instant.EPOCH;
  private TableCompared table;
  private long damagedRows;

  /**
   * @param books read as they are
   */
  Comparing(Path file, DSLContext books, List<Damaged> damaged) {
    this.file = file;
    this.books = books;
    this.damaged = damaged;
  }

  @Override
  public void head(Head head) {
    Schema.refuseNewer("backup", file.toString(), head.schema());
    made = head.made();
  }

  @Override
  public void numbers(Highest numbers) {}

  @Override
  public void file(String name, byte[] content) {}

  @Override
  public void table(String name, List<Column> columns) {
    finish();
    seen.add(name);
    Table<?> known = DefaultSchema.DEFAULT_SCHEMA.getTable(name);
    if (known == null) {
      throw new NotABackup(file).because("books of this version have no table " + name);
    }
    table = new TableCompared(books, known, columns, ofTable(name));
  }

  private List<Damaged> ofTable(String name) {
    return damaged.stream().filter(one -> one.where().table().equals(name)).toList();
  }

  @Override
  public void row(Object[] cells) {
    table.row(cells);
  }

  @Override
  public void end() {
    // What a version before had no table for would go altogether.
    for (Table<?> unknown : DefaultSchema.DEFAULT_SCHEMA.getTables()) {
      if (!seen.contains(unknown.getName())) {
        table(unknown.getName(), List.of());
      }
    }
    finish();
  }

  private void finish() {
    if (table != null) {
      damagedRows += table.damagedRows();
      holdings.putAll(table.holdings());
      table.lost().ifPresent(lost::add);
      table = null;
    }
  }

  Instant made() {
    return made;
  }

  /** How many of the backup's own rows do not read as they were written. */
  long damagedRows() {
    return damagedRows;
  }

  /** What the backup holds of each thing that is damaged. */
  List<String> holdings() {
    return damaged.stream().map(one -> holdings.getOrDefault(one, "does not hold it")).toList();
  }

  List<Recovery.Lost> lost() {
    return lost;
  }
}
