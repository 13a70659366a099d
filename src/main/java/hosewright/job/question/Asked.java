package hosewright.job.question;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Something asked for besides the line, and where it stands if it stands in the line.
 *
 * @param what an item number or a kind
 * @param atAppliance whether at the appliance
 * @param stationFt how far along the hose from the source, ft; empty for either end
 */
public record Asked(String what, boolean atAppliance, OptionalDouble stationFt) {
  private static final String AT_APPLIANCE = " at appliance";
  private static final Pattern PLACED = Pattern.compile("(.+?)\\s+at\\s+(?:the\\s+)?(.+)");
  private static final Pattern STATION = Pattern.compile("(.+) at ([0-9.]+) ft");

  public static Asked of(String asked) {
    Matcher station = STATION.matcher(asked);
    if (station.matches()) {
      double ft = Double.parseDouble(station.group(2));
      return new Asked(station.group(1), false, OptionalDouble.of(ft));
    }
    return asked.endsWith(AT_APPLIANCE)
        ? new Asked(
            asked.substring(0, asked.length() - AT_APPLIANCE.length()),
            true,
            OptionalDouble.empty())
        : new Asked(asked, false, OptionalDouble.empty());
  }

  public boolean atSource() {
    return !atAppliance && stationFt.isEmpty();
  }

  public boolean isAt(double ft) {
    return stationFt.isPresent() && stationFt.getAsDouble() == ft;
  }

  /** What was typed as it is kept; empty where it names a place that a device cannot stand at. */
  static Optional<String> read(String text) {
    Matcher placed = PLACED.matcher(text);
    if (!placed.matches()) {
      return Optional.of(text);
    }
    return switch (placed.group(2)) {
      case "source" -> Optional.of(placed.group(1));
      case "appliance" -> Optional.of(placed.group(1) + AT_APPLIANCE);
      default -> station(placed.group(1), placed.group(2));
    };
  }

  private static Optional<String> station(String what, String where) {
    try {
      double ft = Measures.lengthFt(JobField.ACCESSORIES.word(), where);
      return Optional.of(
          what + " at " + BigDecimal.valueOf(ft).stripTrailingZeros().toPlainString() + " ft");
    } catch (BadInputException e) {
      return Optional.empty();
    }
  }
}
