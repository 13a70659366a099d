package hosewright.line;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Something asked for besides the line, and at which end it stands if it stands in the line.
 *
 * @param what an item number or a kind
 * @param atAppliance whether at the appliance instead of at the source
 */
record Asked(String what, boolean atAppliance) {
  private static final String AT_APPLIANCE = " at appliance";
  private static final Pattern PLACED = Pattern.compile("(.+?)\\s+at\\s+(?:the\\s+)?(.+)");

  static Asked of(String asked) {
    return asked.endsWith(AT_APPLIANCE)
        ? new Asked(asked.substring(0, asked.length() - AT_APPLIANCE.length()), true)
        : new Asked(asked, false);
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
      default -> Optional.empty();
    };
  }
}
