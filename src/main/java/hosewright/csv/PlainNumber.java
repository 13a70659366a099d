package hosewright.csv;

import java.math.BigDecimal;

/** A number as anybody writes it: no exponent, no grouping, no zeros behind it. */
public final class PlainNumber {
  private PlainNumber() {}

  /** Far below the first whole number that a double cannot tell from the next. */
  private static final double MOST_WHOLE = 1e15;

  /** {@code 2.5}, {@code 400}, {@code 0.0625}. */
  public static String of(double number) {
    if (number == Math.rint(number) && Math.abs(number) < MOST_WHOLE) {
      return Long.toString((long) number);
    }
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
