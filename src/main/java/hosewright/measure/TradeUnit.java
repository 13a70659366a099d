package hosewright.measure;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A unit the trade writes, with the labels it is written by; the first label is the one shown. */
enum TradeUnit {
  FOOT(Kind.LENGTH, "ft", "feet", "foot", "'", "′"),
  INCH(Kind.LENGTH, "in", "inch", "inches", "\"", "″", "''"),
  YARD(Kind.LENGTH, "yd", "yard", "yards"),
  MILE(Kind.LENGTH, "mi", "mile", "miles"),
  METRE(Kind.LENGTH, "m", "metre", "metres", "meter", "meters"),
  CENTIMETRE(Kind.LENGTH, "cm"),
  MILLIMETRE(Kind.LENGTH, "mm"),
  KILOMETRE(Kind.LENGTH, "km"),
  GALLON_PER_MINUTE(Kind.FLOW, "gpm", "gal/min", "usgpm", "us gpm"),
  LITRE_PER_MINUTE(Kind.FLOW, "L/min", "lpm"),
  LITRE_PER_SECOND(Kind.FLOW, "l/s", "lps"),
  CUBIC_METRE_PER_HOUR(Kind.FLOW, "m3/h", "m³/h", "m3/hr", "m³/hr"),
  CUBIC_FOOT_PER_SECOND(Kind.FLOW, "ft3/s", "ft³/s", "cfs"),
  POUND_PER_SQUARE_INCH(Kind.PRESSURE, "psi", "psig", "lbf/in2"),
  BAR(Kind.PRESSURE, "bar", "barg", "bars"),
  KILOPASCAL(Kind.PRESSURE, "kPa"),
  MEGAPASCAL(Kind.PRESSURE, "MPa"),
  FOOT_OF_WATER(Kind.PRESSURE, "ftH2O", "ft H2O", "ft of water"),
  FAHRENHEIT(Kind.TEMPERATURE, "°F", "F", "degF", "deg F"),
  CELSIUS(Kind.TEMPERATURE, "°C", "C", "degC", "deg C"),
  FOOT_PER_SECOND(Kind.SPEED, "ft/s", "fps"),
  METRE_PER_SECOND(Kind.SPEED, "m/s"),
  GALLON(Kind.VOLUME, "gal", "gallon", "gallons", "us gal"),
  LITRE(Kind.VOLUME, "L", "litre", "litres", "liter", "liters"),
  CUBIC_METRE(Kind.VOLUME, "m3", "m³"),
  POUND(Kind.WEIGHT, "lb", "lbs", "pound", "pounds"),
  KILOGRAM(Kind.WEIGHT, "kg"),
  POUND_FORCE(Kind.FORCE, "lbf"),
  NEWTON(Kind.FORCE, "N"),
  PERCENT(Kind.FRACTION, "%", "percent", "pct");

  private static final Map<String, TradeUnit> BY_LABEL = new HashMap<>();

  static {
    for (TradeUnit unit : values()) {
      for (String label : unit.labels) {
        BY_LABEL.put(key(label), unit);
      }
    }
  }

  final Kind kind;

  @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable; no such type says so
  final List<String> labels;

  TradeUnit(Kind kind, String... labels) {
    this.kind = kind;
    this.labels = List.of(labels);
  }

  /** The unit written so, or null; case and inner spaces do not matter. */
  static TradeUnit labelled(String label) {
    return BY_LABEL.get(key(label));
  }

  static List<TradeUnit> of(Kind kind) {
    return Arrays.stream(values()).filter(unit -> unit.kind == kind).toList();
  }

  String label() {
    return labels.get(0);
  }

  private static String key(String label) {
    return label.replace(" ", "").toLowerCase(Locale.ROOT);
  }
}
