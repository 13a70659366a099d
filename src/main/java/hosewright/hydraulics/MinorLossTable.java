package hosewright.hydraulics;

import hosewright.csv.ReferenceTable;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Loss coefficients by sort of part, for parts whose catalogue row states no loss. */
public final class MinorLossTable {
  private static final Map<String, Row> ROWS =
      ReferenceTable.rows(
              "hydraulics/minor-losses.csv",
              row -> new Row(row.get("part"), Double.parseDouble(row.get("k")), row.get("source")))
          .stream()
          .collect(Collectors.toMap(Row::part, Function.identity()));

  private MinorLossTable() {}

  /**
   * A coefficient for a sort of part.
   *
   * @param part the sort, as catalogues write it: adapter, valve, wye
   * @param k on the velocity in its smaller waterway, without any change of bore
   * @param source where it is published
   */
  public record Row(String part, double k, String source) {}

  /** The coefficient to fall back on for a sort of part. */
  public static Optional<Row> coefficient(String part) {
    return Optional.ofNullable(ROWS.get(part));
  }
}
