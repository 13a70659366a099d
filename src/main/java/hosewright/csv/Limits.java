package hosewright.csv;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a number in a cell may be.
 *
 * @param least the smallest allowed
 * @param most the largest allowed
 * @param words the same in words, with the unit, for whoever must mend the cell
 */
public record Limits(BigDecimal least, BigDecimal most, String words) {
  /** No exponents, no digit grouping: a number means the same to every reader. */
  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,6})?");

  /** A number between a currency and a unit. */
  private static final Pattern DRESSED =
      Pattern.compile("([A-Z]{3}|\\$|)\\s*(-?\\d(?:.*\\d)?)\\s*([A-Za-z%/\"']*)");

  private static final Map<String, String> INCHES_AND_FEET = Map.of("\"", "in", "'", "ft");

  public Limits(double least, double most, String words) {
    this(BigDecimal.valueOf(least), BigDecimal.valueOf(most), words);
  }

  /** A number of {@code unit} from {@code least} to {@code most}. */
  public static Limits between(double least, double most, String unit) {
    String words =
        "a number from %s to %s %s"
            .formatted(PlainNumber.of(least), PlainNumber.of(most), unit)
            .stripTrailing();
    return new Limits(least, most, words);
  }

  /** The number a text states, in its shortest form; empty unless it is one within the limits. */
  public Optional<BigDecimal> read(String text) {
    if (!NUMBER.matcher(text).matches()) {
      return Optional.empty();
    }
    BigDecimal number = new BigDecimal(text);
    boolean within = number.compareTo(least) >= 0 && number.compareTo(most) <= 0;
    return within ? Optional.of(shortest(number)) : Optional.empty();
  }

  /**
   * The number somebody meant who wrote {@code $1,250.00}, {@code 0,45} or {@code 250 psi}; else
   * empty.
   *
   * @param mostDecimals how many decimals it may have
   */
  String bareNumber(String text, int mostDecimals) {
    Matcher dressed = DRESSED.matcher(text.strip());
    if (!dressed.matches() || !isOurs(dressed.group(1)) || !isOurs(dressed.group(3))) {
      return "";
    }
    String bare = WrittenNumber.plain(dressed.group(2));
    boolean fits = read(bare).filter(number -> number.scale() <= mostDecimals).isPresent();
    return fits && !bare.equals(text) ? bare : "";
  }

  /** Another unit or currency than is meant would make another number of it. */
  private boolean isOurs(String unit) {
    String ours = INCHES_AND_FEET.getOrDefault(unit, unit).replaceFirst("(?<=lb)s$", "");
    return unit.isEmpty()
        || unit.equals("$")
        || Pattern.compile("(?<![\\w%/])" + Pattern.quote(ours) + "(?![\\w%/])")
            .matcher(words)
            .find();
  }

  private static BigDecimal shortest(BigDecimal number) {
    return number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
  }
}
