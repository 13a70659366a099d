package hosewright.csv;

import java.util.regex.Pattern;

/**
 * What number somebody meant who wrote it with marks that a table does not take: {@code 1,250.00},
 * {@code 121,00}, {@code 1.234,50}.
 *
 * <p>A comma before three digits parts thousands, as everywhere in this program; any other comma
 * can only be a decimal one. To read it otherwise would suggest a price that is off by a hundred.
 */
public final class WrittenNumber {
  private static final String BLANK = "[ '\u00A0\u202F]";
  private static final Pattern BY_BLANKS =
      Pattern.compile("-?[1-9]\\d{0,2}(" + BLANK + "\\d{3})+([.,]\\d+)?");
  private static final Pattern BY_COMMAS = Pattern.compile("-?[1-9]\\d{0,2}(,\\d{3})+(\\.\\d+)?");
  private static final Pattern BY_POINTS =
      Pattern.compile("-?[1-9]\\d{0,2}((\\.\\d{3})+,\\d+|(\\.\\d{3}){2,})");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("-?\\d+,\\d+");
  private static final Pattern PLAIN = Pattern.compile("-?\\d+(\\.\\d+)?");

  private WrittenNumber() {}

  /**
   * The number with a decimal point and no other mark.
   *
   * @return empty where it cannot be read, or not in one way only
   */
  public static String plain(String written) {
    String number = BY_BLANKS.matcher(written).matches() ? written.replaceAll(BLANK, "") : written;
    if (PLAIN.matcher(number).matches()) {
      return number;
    }
    if (BY_COMMAS.matcher(number).matches()) {
      return number.replace(",", "");
    }
    if (BY_POINTS.matcher(number).matches()) {
      return number.replace(".", "").replace(',', '.');
    }
    return DECIMAL_COMMA.matcher(number).matches() ? number.replace(',', '.') : "";
  }
}
