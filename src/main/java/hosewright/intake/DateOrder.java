package hosewright.intake;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** In which order a dealer writes the parts of a day. */
enum DateOrder {
  DAY_MONTH_YEAR("day month year", 3, 2, 1),
  MONTH_DAY_YEAR("month day year", 3, 1, 2);

  private static final Pattern PARTS = Pattern.compile("(\\d{1,2})[./ -](\\d{1,2})[./ -](\\d{4})");

  private final String words;
  private final int year;
  private final int month;
  private final int day;

  DateOrder(String words, int year, int month, int day) {
    this.words = words;
    this.year = year;
    this.month = month;
    this.day = day;
  }

  static DateOrder of(String text) {
    for (DateOrder order : values()) {
      if (order.words.equals(text)) {
        return order;
      }
    }
    List<String> known = List.of(DAY_MONTH_YEAR.words, MONTH_DAY_YEAR.words);
    throw new BadInputException(
        List.of(
            new Problem(
                "dates", text, "one of " + String.join(", ", known), Nearest.to(text, known))));
  }

  /** Year-month-day; what is not written in this order comes back as it is. */
  String iso(String text) {
    Matcher parts = PARTS.matcher(text);
    return parts.matches()
        ? "%s-%2s-%2s"
            .formatted(parts.group(year), parts.group(month), parts.group(day))
            .replace(' ', '0')
        : text;
  }
}
