package hosewright.desk.words;

import hosewright.problem.BadInputException;
import hosewright.problem.NoSuchThingException;
import hosewright.quote.QuoteLine;
import java.util.List;
import java.util.stream.Collectors;

/** The line of a quote that is meant. */
public final class LineChoice {
  private LineChoice() {}

  /**
   * The item or free text of a line, named by its number, its item or its text, in whichever groups
   * it stands.
   *
   * @throws NoSuchThingException naming the lines there are and the nearest
   */
  public static String goods(String field, String text, List<QuoteLine> among) {
    String typed = text.strip();
    return among.stream()
        .filter(line -> isNamed(line, typed))
        .map(line -> line.goods().key())
        .findFirst()
        .orElseThrow(() -> unknown(field, typed, among));
  }

  private static boolean isNamed(QuoteLine line, String typed) {
    return String.valueOf(line.position()).equals(typed)
        || line.goods().key().equalsIgnoreCase(typed)
        || line.key().equalsIgnoreCase(typed);
  }

  /**
   * What a line is kept under, of a line named by its number or its item.
   *
   * @throws NoSuchThingException naming the lines there are and the nearest
   */
  public static String key(String field, String text, List<QuoteLine> among) {
    String typed = text.strip();
    List<QuoteLine> meant = among.stream().filter(line -> isNamed(line, typed)).toList();
    if (meant.isEmpty()) {
      throw unknown(field, typed, among);
    }
    if (meant.stream().map(QuoteLine::group).distinct().count() > 1) {
      throw new BadInputException(
          field,
          typed,
          "it stands in several groups: name one of the lines "
              + meant.stream()
                  .map(line -> String.valueOf(line.position()))
                  .collect(Collectors.joining(", ")));
    }
    return meant.get(0).key();
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
