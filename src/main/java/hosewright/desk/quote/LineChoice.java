package hosewright.desk.quote;

import hosewright.problem.NoSuchThingException;
import hosewright.quote.Quote.QuoteLine;
import java.util.List;

/** The line of a quote that is meant. */
final class LineChoice {
  private LineChoice() {}

  /**
   * What a line is kept under, of a line named by its number or its item.
   *
   * @throws NoSuchThingException naming the lines there are and the nearest
   */
  static String key(String field, String text, List<QuoteLine> among) {
    String typed = text.strip();
    return among.stream()
        .filter(
            line ->
                String.valueOf(line.position()).equals(typed) || line.key().equalsIgnoreCase(typed))
        .findFirst()
        .map(QuoteLine::key)
        .orElseThrow(() -> unknown(field, typed, among));
  }

  private static NoSuchThingException unknown(String field, String typed, List<QuoteLine> among) {
    String next =
        among.isEmpty()
            ? "the quote has no lines that " + field + " could mean"
            : "%s takes a line among %d to %d, or its item"
                .formatted(field, among.get(0).position(), among.get(among.size() - 1).position());
    return new NoSuchThingException(
        "line", typed, among.stream().map(QuoteLine::key).toList(), next);
  }
}
