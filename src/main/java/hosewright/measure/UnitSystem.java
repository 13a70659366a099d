package hosewright.measure;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How quantities are shown: US customary, or SI as the trade uses it (bar, L/min, m, mm, kg). Every
 * number that goes in is in the US unit its name states.
 */
public enum UnitSystem {
  US,
  SI;

  /**
   * The system named, "us" or "si".
   *
   * @throws BadInputException for any other word
   */
  public static UnitSystem read(String field, String text) {
    return Arrays.stream(values())
        .filter(system -> system.word().equals(text.strip().toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new BadInputException(
                    List.of(
                        new Problem(
                            field,
                            text,
                            "us (psi, gpm, ft) or si (bar, L/min, m)",
                            Nearest.to(text, List.of("us", "si"))))));
  }

  /** The word it is asked for by. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Lengths given in ft: ft or m. */
  public Scale length() {
    return scale(TradeUnit.FOOT, TradeUnit.METRE, 1, 1);
  }

  /** Flows given in gpm: gpm or L/min. */
  public Scale flow() {
    return scale(TradeUnit.GALLON_PER_MINUTE, TradeUnit.LITRE_PER_MINUTE, 1, 0);
  }

  /** Pressures given in psi: psi or bar. */
  public Scale pressure() {
    return scale(TradeUnit.POUND_PER_SQUARE_INCH, TradeUnit.BAR, 1, 2);
  }

  /** Temperatures given in °F: °F or °C. */
  public Scale temperature() {
    return scale(TradeUnit.FAHRENHEIT, TradeUnit.CELSIUS, 1, 1);
  }

  /** Speeds given in ft/s: ft/s or m/s. */
  public Scale speed() {
    return scale(TradeUnit.FOOT_PER_SECOND, TradeUnit.METRE_PER_SECOND, 1, 2);
  }

  /** Volumes given in US gallons: gal or L. */
  public Scale volume() {
    return scale(TradeUnit.GALLON, TradeUnit.LITRE, 1, 1);
  }

  /** Weights given in lb: lb or kg. */
  public Scale weight() {
    return scale(TradeUnit.POUND, TradeUnit.KILOGRAM, 1, 1);
  }

  /** Forces given in lbf: lbf or N. */
  public Scale force() {
    return scale(TradeUnit.POUND_FORCE, TradeUnit.NEWTON, 1, 0);
  }

  /** The scale for figures given in this US unit; empty where the unit is the same in both. */
  public Optional<Scale> scale(String usUnit) {
    TradeUnit unit = TradeUnit.labelled(usUnit);
    if (unit == null) {
      return Optional.empty();
    }
    return switch (unit) {
      case FOOT -> Optional.of(length());
      case GALLON_PER_MINUTE -> Optional.of(flow());
      case POUND_PER_SQUARE_INCH -> Optional.of(pressure());
      case FAHRENHEIT -> Optional.of(temperature());
      case FOOT_PER_SECOND -> Optional.of(speed());
      case GALLON -> Optional.of(volume());
      case POUND -> Optional.of(weight());
      case POUND_FORCE -> Optional.of(force());
      default -> Optional.empty();
    };
  }

  /**
   * The sentence with its US measures shown in this system. Inches stay: written in a sentence they
   * are nominal sizes, which are names and not measures.
   */
  public String restated(String sentence) {
    return this == US ? sentence : Restating.in(this, sentence);
  }

  private Scale scale(TradeUnit us, TradeUnit si, int usDecimals, int siDecimals) {
    return this == US ? new Scale(us, us, usDecimals) : new Scale(us, si, siDecimals);
  }
}
