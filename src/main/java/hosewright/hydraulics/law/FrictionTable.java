package hosewright.hydraulics.law;

import hosewright.csv.ReferenceTable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/**
 * Friction coefficients by nominal size, for hose whose catalogue row states none. A coefficient
 * belongs to the hose, so each row says how sure it is.
 */
public final class FrictionTable {
  private static final Map<Double, List<Row>> BY_SIZE =
      ReferenceTable.rows("hydraulics/friction-coefficients.csv", FrictionTable::row).stream()
          .collect(Collectors.groupingBy(Row::sizeIn, Collectors.toUnmodifiableList()));

  private FrictionTable() {}

  /**
   * A coefficient taught for a size.
   *
   * @param sizeIn nominal hose size, in
   * @param couplingSizeIn nominal size of its couplings, in
   * @param c psi per 100 ft at 100 gpm
   * @param preferred false for another value taught for the same hose
   * @param howSure in words for the user
   * @param source where it is published, or "common practice, no source"
   */
  public record Row(
      double sizeIn,
      double couplingSizeIn,
      double c,
      boolean preferred,
      String howSure,
      String source) {

    public CoefficientLaw law() {
      return new CoefficientLaw(c);
    }
  }

  /** The coefficient to fall back on for a hose with couplings of its own size. */
  public static Optional<Row> coefficient(double sizeIn) {
    return coefficient(sizeIn, sizeIn);
  }

  /**
   * The coefficient to fall back on; without a row for those couplings, the first of the size.
   *
   * @return empty when no coefficient is taught for the size: none is interpolated, because they
   *     are not smooth in diameter
   */
  public static Optional<Row> coefficient(double sizeIn, double couplingSizeIn) {
    Row first = null;
    for (Row row : all(sizeIn)) {
      if (row.preferred() && row.couplingSizeIn() == couplingSizeIn) {
        return Optional.of(row);
      }
      first = first == null && row.preferred() ? row : first;
    }
    return Optional.ofNullable(first);
  }

  /** Every coefficient taught for a size, preferred ones first. */
  public static List<Row> all(double sizeIn) {
    return BY_SIZE.getOrDefault(sizeIn, List.of());
  }

  private static Row row(CSVRecord row) {
    return new Row(
        Double.parseDouble(row.get("size_in")),
        Double.parseDouble(row.get("coupling_size_in")),
        Double.parseDouble(row.get("c")),
        row.get("preferred").equals("yes"),
        row.get("how_sure"),
        row.get("source"));
  }
}
