package hosewright.problem;

import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a sentence names something that may be given, so that every door can say it the way it is
 * given there: between single angle quotes, as whoever knows no better way reads it.
 */
public final class Given {
  private static final Pattern NAMED = Pattern.compile("‹([a-z][a-z-]*)›");

  private Given() {}

  /** A field by its name, within a sentence: {@code ‹valid-days›}. */
  public static String as(String field) {
    return "‹" + field + "›";
  }

  /** A sentence with every field named as a door has it. */
  public static String named(String sentence, UnaryOperator<String> here) {
    return NAMED
        .matcher(sentence)
        .replaceAll(field -> Matcher.quoteReplacement(here.apply(field.group(1))));
  }
}
