package hosewright.thread;

import hosewright.csv.ReferenceTable;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A word that the trade uses for more than one family.
 *
 * @param name the word
 * @param families the codes it may mean
 * @param question what sets them apart, in words
 */
record AmbiguousName(String name, List<String> families, String question) {
  private static final List<AmbiguousName> ROWS =
      ReferenceTable.rows(
          "threads/ambiguous-names.csv",
          row ->
              new AmbiguousName(
                  row.get("name").toLowerCase(Locale.ROOT),
                  ReferenceTable.list(row, "families", " "),
                  row.get("question")));

  static Optional<AmbiguousName> find(String name) {
    return ROWS.stream().filter(r -> r.name.equals(name)).findFirst();
  }
}
