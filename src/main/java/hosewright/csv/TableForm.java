package hosewright.csv;

import java.util.List;

/**
 * What a table of ours looks like.
 *
 * @param name file name in our own form, for example {@code items.csv}
 * @param columns every column
 * @param required the columns that no row leaves empty
 * @param later the columns that the header may leave out: files from before there were any
 */
public record TableForm(
    String name, List<String> columns, List<String> required, List<String> later) {

  public TableForm {
    columns = List.copyOf(columns);
    required = List.copyOf(required);
    later = List.copyOf(later);
  }

  /** A table whose header names every column. */
  public TableForm(String name, List<String> columns, List<String> required) {
    this(name, columns, required, List.of());
  }

  /** Its name without the ending, as a sheet or a mapping calls it. */
  public String word() {
    return name.substring(0, name.lastIndexOf('.'));
  }
}
