package hosewright.thread;

import static hosewright.csv.ReferenceTable.number;

import hosewright.csv.ReferenceTable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;

/**
 * One size of a coupling without threads.
 *
 * @param family family code
 * @param sizeIn nominal size, inches
 * @param letter the letter that names the size; or empty
 * @param hoseMm the hose it is put on, millimetres
 * @param lugSpacingMm distance between lugs, which decides what a sexless coupling mates
 * @param origin who says so
 */
public record CouplingSize(
    String family,
    double sizeIn,
    String letter,
    double hoseMm,
    OptionalDouble lugSpacingMm,
    Origin origin) {

  private static final List<CouplingSize> ROWS =
      ReferenceTable.rows("threads/coupling-sizes.csv", CouplingSize::row);

  /** Every coupling size, in the order of the table. */
  public static List<CouplingSize> all() {
    return ROWS;
  }

  /** The row of a family at a nominal size; empty when that family is not made in it. */
  public static Optional<CouplingSize> find(String family, double sizeIn) {
    return ROWS.stream().filter(r -> r.family.equals(family) && r.sizeIn == sizeIn).findFirst();
  }

  private static CouplingSize row(CSVRecord row) {
    return new CouplingSize(
        row.get("family"),
        Double.parseDouble(row.get("size_in")),
        row.get("letter"),
        Double.parseDouble(row.get("hose_mm")),
        number(row, "lug_spacing_mm"),
        new Origin(
            row.get("standard"), "", row.get("confidence"), row.get("source"), row.get("note")));
  }
}
