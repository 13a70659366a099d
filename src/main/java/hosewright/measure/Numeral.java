package hosewright.measure;

import hosewright.csv.WrittenNumber;
import hosewright.problem.BadInputException;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Splits a written quantity into its number and its unit.
 *
 * @param number empty when no number could be read
 * @param numberText the number as written, to build a suggestion from
 * @param unitText what follows the number, trimmed; empty for a bare number
 */
record Numeral(OptionalDouble number, String numberText, String unitText) {

  private static final Map<Character, String> VULGAR_FRACTIONS =
      Map.of(
          '½', "1/2", '¼', "1/4", '¾', "3/4", '⅛', "1/8", '⅜', "3/8", '⅝', "5/8", '⅞', "7/8", '⅓',
          "1/3", '⅔', "2/3");

  private static final String DECIMAL =
      "(?:[1-9]\\d{0,2}(?:,\\d{3})+(?:\\.\\d+)?|\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?";

  private static final Pattern WRITTEN =
      Pattern.compile("(?<number>-?\\d(?:[\\d.,' ]*\\d)?)(?<unit>.*)", Pattern.DOTALL);

  // 2-1/2, 2 1/2, 3/4, 1,200.5: a whole part, a fraction, or both.
  private static final Pattern QUANTITY =
      Pattern.compile(
          "\\s*(?<sign>[+\\-−])?\\s*(?<number>(?:(?<whole>\\d+)[\\s\\-]+)?(?<top>\\d+)/(?<bottom>\\d+)|(?<decimal>"
              + DECIMAL
              + "))(?![\\d,.])\\s*(?<unit>.*?)\\s*",
          Pattern.DOTALL);

  static Numeral read(String text) {
    Matcher matcher = QUANTITY.matcher(spellFractions(text));
    if (!matcher.matches()) {
      return new Numeral(OptionalDouble.empty(), "", text.trim());
    }
    double value;
    if (matcher.group("decimal") != null) {
      value = Double.parseDouble(matcher.group("decimal").replace(",", ""));
    } else {
      double whole =
          matcher.group("whole") == null ? 0 : Double.parseDouble(matcher.group("whole"));
      value =
          whole
              + Double.parseDouble(matcher.group("top"))
                  / Double.parseDouble(matcher.group("bottom"));
    }
    boolean negative = matcher.group("sign") != null && !matcher.group("sign").equals("+");
    return new Numeral(
        Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(negative ? -value : value),
        (negative ? "-" : "") + matcher.group("number"),
        matcher.group("unit"));
  }

  /**
   * A text whose number is written with other marks, such as a decimal comma, as it is read.
   *
   * @return empty where it is not read so either
   */
  private static String meant(String text) {
    Matcher written = WRITTEN.matcher(text.strip());
    if (!written.matches()) {
      return "";
    }
    String plain = WrittenNumber.plain(written.group("number"));
    String meant = plain + written.group("unit");
    return plain.isEmpty() || read(meant).number().isEmpty() ? "" : meant;
  }

  /**
   * What to give in the place of a text in which no number can be read.
   *
   * @param reader reads what was meant, or refuses it with what is right instead of that
   * @param example what to give where it cannot be told what was meant
   */
  static String rightFor(String text, ToDoubleFunction<String> reader, String example) {
    String meant = meant(text);
    if (meant.isEmpty()) {
      return example;
    }
    try {
      var unused = reader.applyAsDouble(meant);
      return meant;
    } catch (BadInputException e) {
      return e.problems().get(0).nearest();
    }
  }

  private static String spellFractions(String text) {
    StringBuilder spelled = new StringBuilder(text.length() + 4);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      String fraction = VULGAR_FRACTIONS.get(c);
      if (fraction == null) {
        spelled.append(c == '⁄' ? '/' : c);
      } else {
        boolean afterDigit =
            spelled.length() > 0 && Character.isDigit(spelled.charAt(spelled.length() - 1));
        spelled.append(afterDigit ? "-" : "").append(fraction);
      }
    }
    return spelled.toString();
  }
}
