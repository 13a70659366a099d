package hosewright.csv;

import java.math.BigDecimal;

/** A number as anybody writes it: no exponent, no grouping, no zeros behind it. */
public final class PlainNumber {
  private PlainNumber() {}

  /** {@code 2.5}, {@code 400}, {@code 0.0625}. */
  public static String of(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
