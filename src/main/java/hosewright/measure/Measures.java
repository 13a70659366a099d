package hosewright.measure;

/**
 * Reads what a user wrote as a quantity, in the unit each method names.
 *
 * <p>Every method takes the field's name as the user knows it and the text, and throws {@link
 * hosewright.problem.BadInputException} naming field, value, allowed units and range, and the
 * nearest right thing. A bare number is refused wherever its unit could be mistaken. The limits are
 * not physical law: they catch slips such as a pressure typed in pascal.
 */
public final class Measures {
  private static final Range LENGTH = Range.above(0, 50_000, TradeUnit.FOOT, "400 ft");
  private static final Range DISTANCE = Range.from(0, 50_000, TradeUnit.FOOT, "400 ft");
  private static final Range RISE = Range.from(-5_000, 5_000, TradeUnit.FOOT, "20 ft");
  private static final Range ALTITUDE = Range.from(-1_500, 20_000, TradeUnit.FOOT, "1,200 ft");
  private static final Range MEASURED =
      Range.above(0, 100, TradeUnit.INCH, "1.99 in")
          .in(TradeUnit.INCH, TradeUnit.MILLIMETRE, TradeUnit.CENTIMETRE);
  // From 30 threads per inch down to 2.
  private static final Range PITCH =
      Range.from(1 / 32.0, 0.52, TradeUnit.INCH, "2.82 mm")
          .in(TradeUnit.INCH, TradeUnit.MILLIMETRE);
  private static final Range FLOW = Range.above(0, 20_000, TradeUnit.GALLON_PER_MINUTE, "250 gpm");
  private static final Range FLOW_OR_NONE =
      Range.from(0, 20_000, TradeUnit.GALLON_PER_MINUTE, "250 gpm");
  private static final Range PRESSURE =
      Range.above(0, 2_000, TradeUnit.POUND_PER_SQUARE_INCH, "100 psi");
  private static final Range LOSS = Range.from(0, 2_000, TradeUnit.POUND_PER_SQUARE_INCH, "5 psi");
  private static final Range TEMPERATURE = Range.from(-60, 600, TradeUnit.FAHRENHEIT, "60 F");
  private static final Range SPEED = Range.above(0, 10_000, TradeUnit.FOOT_PER_SECOND, "600 ft/s");
  private static final Range VOLUME = Range.above(0, 10_000_000, TradeUnit.GALLON, "500 gal");
  private static final Range WEIGHT = Range.above(0, 1_000_000, TradeUnit.POUND, "38 lb");
  private static final Range FORCE = Range.above(0, 100_000, TradeUnit.POUND_FORCE, "75 lbf");

  private Measures() {}

  /** A length along the ground, ft: over 0, up to 50,000. */
  public static double lengthFt(String field, String text) {
    return LENGTH.read(field, text);
  }

  /** A place along the ground, ft from where it begins: 0 to 50,000; a bare 0 is accepted. */
  public static double distanceFt(String field, String text) {
    return DISTANCE.read(field, text);
  }

  /** A rise above the source, ft: -5,000 (downhill) to 5,000; a bare 0 is accepted. */
  public static double riseFt(String field, String text) {
    return RISE.read(field, text);
  }

  /** Height above sea level, ft: -1,500 to 20,000; a bare 0 is accepted. */
  public static double altitudeFt(String field, String text) {
    return ALTITUDE.read(field, text);
  }

  /** A flow, US gallons per minute: over 0, up to 20,000. */
  public static double flowGpm(String field, String text) {
    return FLOW.read(field, text);
  }

  /** A flow, US gallons per minute, that may be none: 0 to 20,000; a bare 0 is accepted. */
  public static double flowOrNoneGpm(String field, String text) {
    return FLOW_OR_NONE.read(field, text);
  }

  /** A gauge pressure, psi: over 0, up to 2,000. */
  public static double pressurePsi(String field, String text) {
    return PRESSURE.read(field, text);
  }

  /** A pressure loss or back pressure, psi: 0 to 2,000; a bare 0 is accepted. */
  public static double lossPsi(String field, String text) {
    return LOSS.read(field, text);
  }

  /**
   * A nominal size, in: over 0, up to 60. A bare number is inches, as sizes are written; metric
   * nominal sizes (64 mm, DN 65) become the inch size they stand for.
   */
  public static double sizeIn(String field, String text) {
    return NominalSize.read(field, text);
  }

  /** The nominal size, in, that a metric one stands for; its own measure where none is listed. */
  public static double nominalIn(double millimetres) {
    return NominalSize.inches(millimetres);
  }

  /** A measured diameter or circumference, in: over 0, up to 100; in, mm or cm must be written. */
  public static double measuredIn(String field, String text) {
    return MEASURED.read(field, text);
  }

  /** Threads counted in one inch: 2 to 30, a bare number or with "tpi". */
  public static double threadsPerInch(String field, String text) {
    return ThreadCount.read(field, text);
  }

  /** The pitch of a thread, mm: 0.8 to 13; in or mm must be written. */
  public static double pitchMm(String field, String text) {
    return Conversion.convert(PITCH.read(field, text), TradeUnit.INCH, TradeUnit.MILLIMETRE);
  }

  /** A temperature, °F: -60 to 600. */
  public static double temperatureF(String field, String text) {
    return TEMPERATURE.read(field, text);
  }

  /** A speed, ft/s: over 0, up to 10,000. */
  public static double speedFtPerS(String field, String text) {
    return SPEED.read(field, text);
  }

  /** A volume, US gal: over 0, up to 10,000,000. */
  public static double volumeGal(String field, String text) {
    return VOLUME.read(field, text);
  }

  /** A weight, lb: over 0, up to 1,000,000. */
  public static double weightLb(String field, String text) {
    return WEIGHT.read(field, text);
  }

  /** A force, lbf: over 0, up to 100,000. */
  public static double forceLbf(String field, String text) {
    return FORCE.read(field, text);
  }

  /**
   * A percentage as a fraction: "5 %" and "0.05" are both 0.05; 0 to 1. A bare number of 1 or more
   * is refused, because "5" could mean 5 % or fivefold.
   */
  public static double percent(String field, String text) {
    return Percentage.read(field, text);
  }
}
