package hosewright.hydraulics.law;

import hosewright.problem.BadInputException;
import java.math.BigDecimal;
import java.math.MathContext;

/** Refuses numbers that no calculation could use. */
public final class Given {
  private Given() {}

  /** Nothing that is measured is smaller; a division by less could overflow. */
  private static final double SMALLEST = 1e-9;

  /** The value, if it is over 0 and at most {@code most}. */
  public static double positive(String field, double value, double most, String unit) {
    if (value >= SMALLEST && value <= most) {
      return value;
    }
    throw refused(field, value, unit, "over 0 up to " + plain(most) + " " + unit);
  }

  /** The value, if it lies in the range, both limits included. */
  public static double between(String field, double value, double least, double most, String unit) {
    if (value >= least && value <= most) {
      return value;
    }
    throw refused(
        field, value, unit, "from " + plain(least) + " up to " + plain(most) + " " + unit);
  }

  /** The flow, gpm, if it is one: 0 or more. */
  public static double flow(double flowGpm) {
    return flowGpm >= 0 && flowGpm <= 1e6 ? flowGpm : between("flow", flowGpm, 0, 1e6, "gpm");
  }

  /** The pressure, psi, above or below zero, if it is one that sums cannot overflow. */
  public static double pressure(String field, double psi) {
    return between(field, psi, -1e15, 1e15, "psi");
  }

  public static BadInputException refused(String field, double value, String unit, String allowed) {
    return new BadInputException(field, (plain(value) + " " + unit).trim(), allowed);
  }

  /** The number to seven figures without exponent or trailing zeros. */
  public static String plain(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value, new MathContext(7)).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }
}
