package hosewright.desk;

import hosewright.intake.SmallFile;
import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Sentences out of a plain text file, one a line. Empty lines and lines that begin with {@code #}
 * say nothing.
 */
public final class TextLines {
  private static final int MOST_KIB = 64;
  private static final int MOST_LINES = 100;
  private static final int LONGEST = 1000;

  private TextLines() {}

  /**
   * The sentences.
   *
   * @param option what names the file
   * @throws BadInputException when it cannot be read as such
   */
  public static List<String> read(String option, String file) {
    return read(option, NamedPath.of(option, file, "the name of a text file"));
  }

  public static List<String> read(String option, Path file) {
    String text = SmallFile.named(option, file, "a text file", MOST_KIB).replace("\uFEFF", "");
    List<String> lines = new ArrayList<>();
    int number = 0;
    for (String line : text.lines().map(String::strip).toList()) {
      number++;
      if (!line.isEmpty() && !line.startsWith("#")) {
        lines.add(PlainText.require("line %d of %s".formatted(number, option), line));
      }
    }
    requireFew(option, file.toString(), lines);
    return lines;
  }

  /**
   * Sees that lines are few and short enough to be read again from a file.
   *
   * @param shown what they are, for the refusal
   * @throws BadInputException when they are not
   */
  static void requireFew(String option, String shown, List<String> lines) {
    if (lines.size() > MOST_LINES || lines.stream().anyMatch(line -> line.length() > LONGEST)) {
      throw new BadInputException(
          option, shown, "at most " + MOST_LINES + " lines of at most " + LONGEST + " characters");
    }
  }
}
