package hosewright.door.shell.command;

import hosewright.problem.BadInputException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The words of a typed line.
 *
 * <p>A quote mark groups only where a word, or the value after {@code =}, begins; elsewhere it is a
 * letter like any other, because people write {@code 2.5"} for inches. Nothing is an escape mark,
 * because backslashes part folders on some machines.
 */
public final class Words {
  private Words() {}

  /**
   * Splits a line.
   *
   * @throws BadInputException when a quoted part is not closed
   */
  public static List<String> of(String line) {
    List<String> words = new ArrayList<>();
    int at = 0;
    while (at < line.length()) {
      if (Character.isWhitespace(line.charAt(at))) {
        at++;
        continue;
      }
      StringBuilder word = new StringBuilder();
      at = readWord(line, at, word);
      words.add(word.toString());
    }
    return List.copyOf(words);
  }

  private static int readWord(String line, int start, StringBuilder word) {
    int at = start;
    while (at < line.length() && !Character.isWhitespace(line.charAt(at))) {
      char c = line.charAt(at);
      boolean opens = at == start || line.charAt(at - 1) == '=';
      if (opens && (c == '"' || c == '\'')) {
        int close = closing(line, at);
        word.append(line, at + 1, close);
        at = close + 1;
      } else {
        word.append(c);
        at++;
      }
    }
    return at;
  }

  private static int closing(String line, int open) {
    char mark = line.charAt(open);
    for (int at = open + 1; at < line.length(); at++) {
      boolean wordEnds = at + 1 == line.length() || Character.isWhitespace(line.charAt(at + 1));
      if (line.charAt(at) == mark && wordEnds) {
        return at;
      }
    }
    throw new BadInputException(
        "quoted value", line.substring(open), "close it with " + mark + " before a space");
  }

  /** Words as one line that splits into them again. */
  static String typed(List<String> words) {
    return words.stream().map(Words::quoted).collect(Collectors.joining(" "));
  }

  /** The word as it must be typed to come back whole; a word with both quote marks may not. */
  public static String quoted(String word) {
    boolean opens = List.of("\"", "'").stream().anyMatch(word::startsWith);
    boolean opensLater = word.contains("=\"") || word.contains("='");
    boolean spaced = word.chars().anyMatch(Character::isWhitespace);
    if (!word.isEmpty() && !opens && !opensLater && !spaced) {
      return word;
    }
    return word.contains("\"") ? "'" + word + "'" : "\"" + word + "\"";
  }
}
