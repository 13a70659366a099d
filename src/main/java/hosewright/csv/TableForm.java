package hosewright.csv;

import java.util.List;

/**
 * What a table of ours looks like.
 *
 * @param name file name in our own form, for example {@code items.csv}
 * @param columns every column
 * @param required the columns that no row leaves empty
 */
public record TableForm(String name, List<String> columns, List<String> required) {

  public TableForm {
    columns = List.copyOf(columns);
    required = List.copyOf(required);
  }

  /** Its name without the ending, as a sheet or a mapping calls it. */
  public String word() {
    return name.substring(0, name.lastIndexOf('.'));
  }
}
