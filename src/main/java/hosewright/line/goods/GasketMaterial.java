package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.csv.ReferenceTable;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How warm the water may be that a gasket's material seals, a row of {@code gasket-materials.csv}.
 *
 * @param material the word that an item's material begins with
 * @param mostF warmest water, °F
 * @param source where that is from, in words
 */
public record GasketMaterial(String material, double mostF, String source) {
  private static final List<GasketMaterial> ALL =
      ReferenceTable.rows(
          "line/gasket-materials.csv",
          row ->
              new GasketMaterial(
                  row.get("material"), Double.parseDouble(row.get("most_f")), row.get("source")));

  /** What is known of a gasket's material; empty where nothing is. */
  public static Optional<GasketMaterial> of(Item gasket) {
    String material = gasket.material().toLowerCase(Locale.ROOT);
    return ALL.stream()
        .filter(known -> material.startsWith(known.material().toLowerCase(Locale.ROOT)))
        .findFirst();
  }

  /** Whether a gasket is known not to bear water of a temperature. */
  static boolean tooHotFor(Item gasket, double temperatureF) {
    return of(gasket).filter(known -> temperatureF > known.mostF()).isPresent();
  }
}
