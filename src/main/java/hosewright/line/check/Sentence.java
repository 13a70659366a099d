package hosewright.line.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Formattable;
import java.util.Locale;

/**
 * Sentences as {@link String#format} writes them, several times sooner: a search has them written
 * for every line that it checks, and throws nearly all of them away.
 */
final class Sentence {
  private Sentence() {}

  /** Fills in what stands behind {@code %s}, {@code %d} and {@code %.1f} in turn. */
  static String of(String format, Object... values) {
    StringBuilder text = new StringBuilder(format.length() + 16 * values.length);
    int from = 0;
    int filled = 0;
    for (int sign = format.indexOf('%'); sign >= 0; sign = format.indexOf('%', from)) {
      text.append(format, from, sign);
      if (format.startsWith("%%", sign)) {
        text.append('%');
        from = sign + 2;
      } else if (filled < values.length && isPlain(format, sign, values[filled])) {
        text.append(values[filled++]);
        from = sign + 2;
      } else if (filled < values.length && isRounded(format, sign, values[filled])) {
        rounded(text, (Double) values[filled++], format.charAt(sign + 2) - '0');
        from = sign + 4;
      } else {
        return String.format(Locale.ROOT, format, values);
      }
    }
    return text.append(format, from, format.length()).toString();
  }

  private static boolean isPlain(String format, int sign, Object value) {
    return format.startsWith("%s", sign) && !(value instanceof Formattable)
        || format.startsWith("%d", sign) && (value instanceof Integer || value instanceof Long);
  }

  private static boolean isRounded(String format, int sign, Object value) {
    return format.startsWith("%.", sign)
        && format.startsWith("f", sign + 3)
        && Character.isDigit(format.charAt(sign + 2))
        && value instanceof Double figure
        && Double.isFinite(figure);
  }

  private static void rounded(StringBuilder text, double value, int places) {
    // A negative figure keeps its sign where it comes to nothing, as the library has it.
    if (Double.compare(value, 0) < 0) {
      text.append('-');
    }
    text.append(
        BigDecimal.valueOf(Math.abs(value)).setScale(places, RoundingMode.HALF_UP).toPlainString());
  }
}
