package hosewright.problem;

import java.util.Locale;

/**
 * One thing wrong with what a user gave, fit to be shown: what is very long is cut, and what would
 * disturb a terminal is spelt out.
 *
 * @param field the name the user knows it by: an option, a job-file key, a column
 * @param value what was given, as given; empty when it was missing
 * @param allowed what is allowed there, in words
 * @param nearest the nearest right thing, ready to type; empty when there is none
 */
public record Problem(String field, String value, String allowed, String nearest) {
  private static final int LONGEST_VALUE = 240;
  private static final int LONGEST_LIST = 4_000;

  /** Of one character. */
  private static final int LONGEST_SPELT = "{U+10FFFF}".length();

  public Problem {
    field = cut(field, LONGEST_VALUE);
    value = cut(value, LONGEST_VALUE);
    allowed = cut(allowed, LONGEST_LIST);
    // What is not right as it stands is no suggestion.
    nearest = nearest.length() <= LONGEST_VALUE && PlainText.is(nearest) ? nearest : "";
  }

  public static Problem of(String field, String value, String allowed) {
    return new Problem(field, value, allowed, "");
  }

  /** One line for the user. */
  public String sentence() {
    String given = value.isEmpty() ? field + " is missing" : field + " cannot be '" + value + "'";
    String suggestion =
        nearest.isEmpty()
            ? ""
            : value.isEmpty()
                ? " For example '" + nearest + "'."
                : " Did you mean '" + nearest + "'?";
    return given + ": " + allowed + "." + suggestion;
  }

  /** What is spelt out takes room too, so it is cut as it would be shown. */
  private static String cut(String text, int most) {
    int end = Math.min(text.length(), most);
    String shown = PlainText.spelt(text.substring(0, end));
    while (shown.length() > most) {
      end -= Math.max(1, (shown.length() - most) / LONGEST_SPELT);
      shown = PlainText.spelt(text.substring(0, end));
    }
    if (end == text.length()) {
      return shown;
    }
    if (Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    return PlainText.spelt(text.substring(0, end))
        + String.format(Locale.ROOT, "… (%,d characters)", text.length());
  }
}
