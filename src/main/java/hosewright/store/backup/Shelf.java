package hosewright.store.backup;

import hosewright.store.database.Highest;
import java.util.List;

/**
 * Takes what a backup holds while it is read; only when all was read is any of it to be trusted.
 */
interface Shelf {
  /** What the backup is, before anything else of it. */
  void head(Head head);

  /** The highest numbers ever used of each series. */
  void numbers(Highest numbers);

  /** A file of the dealer's. */
  void file(String name, byte[] content);

  /** The rows that come from now on are of this table. */
  void table(String name, List<Column> columns);

  void row(Object[] cells);

  /** No more tables come. */
  void end();
}
