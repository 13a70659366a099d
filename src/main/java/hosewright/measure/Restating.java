package hosewright.measure;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the US measures written in a sentence and shows them in another system. */
final class Restating {
  private static final String NUMBER = "-?\\d+(?:,\\d{3})*(?:\\.\\d+)?";

  // "208.5 psi", and "22 to 280 psi" or "30.1 of 120 psi", where one unit serves two numbers. What
  // stands behind "per" names a coefficient's unit and is no measure.
  private static final Pattern MEASURE =
      Pattern.compile(
          "(?<!per )(?<![\\w.,/-])(?:(?<first>"
              + NUMBER
              + ")(?<between> to | of | or | and | against ))?(?<number>"
              + NUMBER
              + ") ?(?<unit>psi|gpm|ft/s|ft|lbf|lb|gal|°F|F)(?![\\w/²³])");

  private Restating() {}

  static String in(UnitSystem system, String sentence) {
    return MEASURE
        .matcher(sentence)
        .replaceAll(match -> Matcher.quoteReplacement(shown(system, match)));
  }

  private static String shown(UnitSystem system, MatchResult match) {
    Scale scale = system.scale(match.group(4)).orElseThrow();
    String last = scale.of(number(match.group(3)));
    return match.group(1) == null
        ? last
        : scale.of(number(match.group(1))).replace(" " + scale.unit(), "") + match.group(2) + last;
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(",", ""));
  }
}
