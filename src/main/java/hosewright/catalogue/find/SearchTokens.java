package hosewright.catalogue.find;

import hosewright.csv.PlainNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Cuts what people write into words and numbers: {@code 1-3/4}, {@code 1 3/4}, {@code 1¾} and
 * {@code 1.750} are all the number 1.75, and an inch or foot mark behind a number is its unit.
 */
final class SearchTokens {
  private static final String FRACTIONS = "½¼¾⅛⅜⅝⅞";
  private static final double[] FRACTION_VALUES = {0.5, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875};

  /** A whole number above this before a fraction is something else: no hose is that wide. */
  private static final int WIDEST_IN = 12;

  private final String text;
  private final List<String> tokens = new ArrayList<>();
  private int at;

  private SearchTokens(String text) {
    this.text = text.toLowerCase(Locale.ROOT);
  }

  /** Words in lower case and numbers as plain decimals, in the order written. */
  static List<String> of(String text) {
    SearchTokens cut = new SearchTokens(text);
    while (cut.at < cut.text.length()) {
      cut.next();
    }
    return cut.tokens;
  }

  static boolean isNumber(String token) {
    return !token.isEmpty() && Character.isDigit(token.charAt(0));
  }

  private void next() {
    char c = text.charAt(at);
    if (digit(at) || (c == '.' && digit(at + 1)) || FRACTIONS.indexOf(c) >= 0) {
      number();
    } else if (Character.isLetter(c)) {
      int start = at;
      while (at < text.length() && Character.isLetterOrDigit(text.charAt(at))) {
        at++;
      }
      tokens.add(text.substring(start, at));
    } else {
      at++;
    }
  }

  private void number() {
    int start = at;
    double value = FRACTIONS.indexOf(text.charAt(at)) >= 0 ? 0 : plain();
    String digits = text.substring(start, at);
    double fraction = fraction(value);
    tokens.add(
        fraction == 0 && isPlain(digits)
            ? digits
            : written(value == (int) value && fraction > 0 ? value + fraction : value));
    unit();
  }

  /** Whether digits stand as the tokens write them; a large catalogue has millions that do. */
  private static boolean isPlain(String digits) {
    int point = digits.indexOf('.');
    boolean leads = digits.length() > 1 && digits.charAt(0) == '0' && point != 1;
    boolean trails = point >= 0 && digits.endsWith("0");
    return digits.length() <= 12
        && point == digits.lastIndexOf('.')
        && point != 0
        && digits.indexOf('/') < 0
        && Character.isDigit(digits.charAt(0))
        && !leads
        && !trails;
  }

  /** A decimal, or a fraction without a whole number before it. */
  private double plain() {
    int start = at;
    while (digit(at) || (at < text.length() && text.charAt(at) == '.' && digit(at + 1))) {
      at++;
    }
    String digits = text.substring(start, at);
    if (digits.length() > 12 || digits.indexOf('.') != digits.lastIndexOf('.')) {
      return 0;
    }
    double value = Double.parseDouble(digits);
    if (at < text.length() && text.charAt(at) == '/' && digit(at + 1)) {
      return divided(value);
    }
    return value;
  }

  /** What stands behind a whole number: {@code -3/4}, {@code 3/4} or {@code ¾}; else 0. */
  private double fraction(double whole) {
    if (at < text.length() && FRACTIONS.indexOf(text.charAt(at)) >= 0) {
      return FRACTION_VALUES[FRACTIONS.indexOf(text.charAt(at++))];
    }
    boolean joined = at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == ' ');
    if (!joined || !digit(at + 1) || whole > WIDEST_IN || whole != (int) whole) {
      return 0;
    }
    int end = at + 1;
    while (digit(end)) {
      end++;
    }
    if (end - at > 3 || end >= text.length() || text.charAt(end) != '/' || !digit(end + 1)) {
      return 0;
    }
    double top = Double.parseDouble(text.substring(at + 1, end));
    at = end;
    return divided(top);
  }

  private double divided(double top) {
    int start = ++at;
    while (digit(at)) {
      at++;
    }
    double bottom = at - start > 3 ? 0 : Double.parseDouble(text.substring(start, at));
    return bottom == 0 ? top : top / bottom;
  }

  private void unit() {
    if (at < text.length() && "\"”″".indexOf(text.charAt(at)) >= 0) {
      tokens.add("in");
      at++;
    } else if (at < text.length() && "'’′".indexOf(text.charAt(at)) >= 0) {
      tokens.add("ft");
      at++;
    }
  }

  private boolean digit(int place) {
    return place < text.length() && text.charAt(place) >= '0' && text.charAt(place) <= '9';
  }

  /** A number as the tokens write it. */
  static String written(double number) {
    return number == Math.rint(number) && number < 1e15
        ? Long.toString((long) number)
        : PlainNumber.of(number);
  }
}
