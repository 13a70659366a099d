package hosewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Writes numbers for people. */
final class Shown {
  private Shown() {}

  /** The number with at most so many decimals, thousands separated, no trailing zeros. */
  static String number(double value, int decimals) {
    DecimalFormat format =
        new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ROOT));
    format.setMaximumFractionDigits(decimals);
    format.setRoundingMode(RoundingMode.HALF_UP);
    return format.format(BigDecimal.valueOf(value));
  }
}
