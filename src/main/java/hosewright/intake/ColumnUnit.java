package hosewright.intake;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * Turns a dealer's numbers into the unit that one of our columns is in.
 *
 * @param label the dealer's unit as written, for example {@code kg}
 * @param reader reads a quantity with its unit
 */
record ColumnUnit(String label, BiFunction<String, String, Double> reader) {
  /** More decimals than our columns take would be refused. */
  private static final int DECIMALS = 6;

  /** By the ending of a column's name, the longer endings first. */
  private static final Map<String, BiFunction<String, String, Double>> READERS =
      new LinkedHashMap<>();

  static {
    READERS.put("hose_size_in", Measures::sizeIn);
    READERS.put("_ft_s", Measures::speedFtPerS);
    READERS.put("_lb", Measures::weightLb);
    READERS.put("_gpm", Measures::flowGpm);
    READERS.put("_psi", Measures::pressurePsi);
    READERS.put("_ft", Measures::lengthFt);
    READERS.put("_in", Measures::measuredIn);
  }

  /**
   * The conversion for a column.
   *
   * @throws BadInputException when the column has no unit that could be another, or this is none of
   *     its kind
   */
  static ColumnUnit of(String column, String label) {
    BiFunction<String, String, Double> reader =
        READERS.entrySet().stream()
            .filter(entry -> column.endsWith(entry.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElseThrow(() -> new BadInputException("unit", label, column + " is taken as it is"));
    // Read only to learn whether the unit is one of its kind.
    var unused = reader.apply("unit", "1 " + label);
    return new ColumnUnit(label, reader);
  }

  /** The number in our unit; what is no number, or none that can be, comes back as it is. */
  String convert(String number) {
    try {
      if (new BigDecimal(number).signum() == 0) {
        return number;
      }
      return BigDecimal.valueOf(reader.apply("cell", number + " " + label))
          .setScale(DECIMALS, RoundingMode.HALF_UP)
          .stripTrailingZeros()
          .toPlainString();
    } catch (BadInputException | NumberFormatException e) {
      return number;
    }
  }
}
