package hosewright.hydraulics;

import hosewright.csv.ReferenceTable;

/** The limits of practice that supplies and pumps rest on, from the table checks use as well. */
public final class StatedLimit {
  private StatedLimit() {}

  /** The value of the row with a name. */
  public static double named(String name) {
    return ReferenceTable.rows("line/limits.csv", row -> row).stream()
        .filter(row -> row.get("name").equals(name))
        .mapToDouble(row -> Double.parseDouble(row.get("value")))
        .findFirst()
        .orElseThrow();
  }
}
