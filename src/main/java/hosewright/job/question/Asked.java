package hosewright.job.question;

import hosewright.csv.PlainNumber;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Something asked for besides the line, and where it stands if it stands in the line.
 *
 * @param what an item number or a kind
 * @param count how many, where that was said
 * @param lanes how many lanes a ramp lies over, where that was said
 * @param atAppliance whether at the appliance
 * @param stationFt how far along the hose from the source, ft; empty for either end
 */
public record Asked(
    String what,
    OptionalInt count,
    OptionalInt lanes,
    boolean atAppliance,
    OptionalDouble stationFt) {
  private static final String AT_APPLIANCE = " at appliance";
  private static final Pattern PLACED = Pattern.compile("(.+?)\\s+at\\s+(?:the\\s+)?(.+)");
  private static final Pattern STATION = Pattern.compile("(.+) at ([0-9.]+) ft");
  private static final Pattern COUNTED = Pattern.compile("([1-9][0-9]{0,3})\\s*[xX]\\s+(.+)");
  private static final Pattern LANES = Pattern.compile("(.+?)\\s+over\\s+([1-9][0-9]?)\\s+lanes?");

  public static Asked of(String asked) {
    Matcher counted = COUNTED.matcher(asked);
    if (counted.matches()) {
      Asked one = of(counted.group(2));
      OptionalInt count = OptionalInt.of(Integer.parseInt(counted.group(1)));
      return new Asked(one.what, count, one.lanes, one.atAppliance, one.stationFt);
    }
    Matcher station = STATION.matcher(asked);
    if (station.matches()) {
      return over(station.group(1), false, OptionalDouble.of(Double.parseDouble(station.group(2))));
    }
    return asked.endsWith(AT_APPLIANCE)
        ? over(
            asked.substring(0, asked.length() - AT_APPLIANCE.length()),
            true,
            OptionalDouble.empty())
        : over(asked, false, OptionalDouble.empty());
  }

  private static Asked over(String text, boolean atAppliance, OptionalDouble stationFt) {
    Matcher lanes = LANES.matcher(text);
    return lanes.matches()
        ? new Asked(
            lanes.group(1),
            OptionalInt.empty(),
            OptionalInt.of(Integer.parseInt(lanes.group(2))),
            atAppliance,
            stationFt)
        : new Asked(text, OptionalInt.empty(), OptionalInt.empty(), atAppliance, stationFt);
  }

  /** The same at the appliance, where that is its place and no other was named. */
  public Asked orAtAppliance() {
    return atSource() ? new Asked(what, count, lanes, true, stationFt) : this;
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
      case "every joint", "each joint" -> Optional.of(placed.group(1));
      default -> station(placed.group(1), placed.group(2));
    };
  }

  private static Optional<String> station(String what, String where) {
    try {
      double ft = Measures.lengthFt(JobField.ACCESSORIES.word(), where);
      return Optional.of(what + " at " + PlainNumber.of(ft) + " ft");
    } catch (BadInputException e) {
      return Optional.empty();
    }
  }
}
