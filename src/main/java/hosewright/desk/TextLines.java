package hosewright.desk;

import hosewright.problem.BadInputException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Sentences out of a plain text file, one a line. Empty lines and lines that begin with {@code #}
 * say nothing.
 */
public final class TextLines {
  private static final int MOST_BYTES = 64 * 1024;
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
    try {
      if (Files.isDirectory(file) || Files.size(file) > MOST_BYTES) {
        throw new BadInputException(option, file.toString(), "a text file of at most 64 KiB");
      }
      List<String> lines =
          Files.readString(file, StandardCharsets.UTF_8)
              .replace("\uFEFF", "")
              .lines()
              .map(String::strip)
              .filter(line -> !line.isEmpty() && !line.startsWith("#"))
              .toList();
      if (lines.size() > MOST_LINES || lines.stream().anyMatch(line -> line.length() > LONGEST)) {
        throw new BadInputException(
            option,
            file.toString(),
            "at most " + MOST_LINES + " lines of at most " + LONGEST + " characters");
      }
      return lines;
    } catch (CharacterCodingException e) {
      throw new BadInputException(option, file.toString(), "a text file in UTF-8");
    } catch (IOException e) {
      throw new BadInputException(option, file.toString(), "a text file that is there to be read");
    }
  }
}
