package hosewright.store.backup;

import hosewright.store.database.Highest;
import java.util.List;

/** Keeps nothing: a backup is read only to see that it is sound. */
final class NoShelf implements Shelf {
  @Override
  public void head(Head head) {}

  @Override
  public void numbers(Highest numbers) {}

  @Override
  public void file(String name, byte[] content) {}

  @Override
  public void table(String name, List<Column> columns) {}

  @Override
  public void row(Object[] cells) {}

  @Override
  public void end() {}
}
