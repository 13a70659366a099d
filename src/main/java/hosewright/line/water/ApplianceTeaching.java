package hosewright.line.water;

import hosewright.csv.ReferenceTable;
import java.util.List;
import java.util.Optional;

/** Losses that are taught for sorts of appliances, for those whose catalogue row states none. */
public final class ApplianceTeaching {
  private static final List<Row> ROWS =
      ReferenceTable.rows(
          "hydraulics/appliance-losses.csv",
          row ->
              new Row(
                  row.get("part"),
                  Double.parseDouble(row.get("psi")),
                  Double.parseDouble(row.get("from_gpm")),
                  row.get("counted").equals("yes"),
                  row.get("source")));

  private ApplianceTeaching() {}

  /**
   * A loss taught for a sort of appliance.
   *
   * @param part the sort, as catalogues write it: wye, siamese
   * @param psi for each of them
   * @param fromGpm the flow from which it is taught, gpm; 0 for any
   * @param counted whether a plan counts it; false for what is only said beside
   */
  public record Row(String part, double psi, double fromGpm, boolean counted, String source) {}

  /** What a plan counts for a sort of part; empty where nothing is taught of it. */
  public static Optional<Row> counted(String part) {
    return ROWS.stream().filter(row -> row.counted() && row.part().equals(part)).findFirst();
  }

  /** What others teach of the same sort. */
  public static Optional<Row> beside(String part) {
    return ROWS.stream().filter(row -> !row.counted() && row.part().equals(part)).findFirst();
  }
}
