package hosewright.catalogue;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The pressures an item may see.
 *
 * @param workingPsi highest working pressure at room temperature, psi
 * @param serviceTestPsi marked service test pressure, psi, for hose that is tested in service
 * @param derating working pressure at higher temperatures, coolest first
 * @param vacuumInHg deepest vacuum, inches of mercury, for suction hose and its couplings
 */
public record Rating(
    OptionalDouble workingPsi,
    OptionalDouble serviceTestPsi,
    List<Derating> derating,
    OptionalDouble vacuumInHg) {

  public static final Rating NONE =
      new Rating(OptionalDouble.empty(), OptionalDouble.empty(), List.of(), OptionalDouble.empty());

  public Rating {
    derating = List.copyOf(derating);
  }

  /** Up to {@code temperatureF} the item may see {@code workingPsi}. */
  public record Derating(double temperatureF, double workingPsi) {}

  /**
   * The working pressure at a temperature, psi: the first derating row that is as hot or hotter;
   * with no such row on an item that has rows, zero, because nothing is promised there.
   *
   * @param temperatureF the water's temperature, °F
   * @return empty when the item carries no pressure rating at all
   */
  public OptionalDouble workingPsiAt(double temperatureF) {
    if (derating.isEmpty()) {
      return workingPsi;
    }
    for (Derating row : derating) {
      if (temperatureF <= row.temperatureF()) {
        return OptionalDouble.of(row.workingPsi());
      }
    }
    return OptionalDouble.of(0);
  }
}
