package hosewright.door.shell.command;

import hosewright.intake.SmallFile;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A user's own short forms of commands, from a file in the data folder: {@code WORD = COMMAND}, one
 * a line, with as many options as are always the same.
 *
 * @param forms what each word stands for, in the order of the file
 * @param problems what is wrong with the lines that are not among them
 */
public record ShortForms(Map<String, List<String>> forms, List<Problem> problems) {
  public static final String FILE = "short-forms.txt";
  private static final int MOST_BYTES = 64 * 1024;

  /**
   * Reads the file anew, since it may be edited while the shell runs. A line that cannot be used
   * spoils no other.
   *
   * @param taken words that already mean something, which no short form may hide
   * @param refusal why words are no command; empty when they are
   */
  static ShortForms read(
      Path file, Predicate<String> taken, Function<List<String>, Optional<Problem>> refusal) {
    Map<String, List<String>> forms = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    int number = 0;
    for (String line : lines(file, problems)) {
      number++;
      String text = line.strip();
      if (text.isEmpty() || text.startsWith("#")) {
        continue;
      }
      try {
        int equals = text.indexOf('=');
        String word = equals < 0 ? text : text.substring(0, equals).strip();
        checkWord(word, equals, taken.test(word), forms.containsKey(word));
        List<String> stands = Words.of(text.substring(equals + 1));
        checkCommand(stands, refusal);
        forms.put(word, stands);
      } catch (BadInputException e) {
        String where = FILE + " line " + number;
        e.problems().stream()
            .map(p -> new Problem(where, p.value(), p.allowed(), p.nearest()))
            .forEach(problems::add);
      }
    }
    return new ShortForms(forms, List.copyOf(problems));
  }

  private static List<String> lines(Path file, List<Problem> problems) {
    if (!Files.exists(file)) {
      return List.of();
    }
    try {
      return SmallFile.text(file, MOST_BYTES).orElseThrow(IOException::new).lines().toList();
    } catch (IOException e) {
      problems.add(Problem.of("short forms", file.toString(), "a text file that can be read"));
      return List.of();
    }
  }

  private static void checkWord(String word, int equals, boolean taken, boolean twice) {
    if (equals < 0) {
      throw new BadInputException("line", word, "a word, '=' and the command it stands for");
    }
    if (!word.matches("[\\p{L}\\p{N}][\\p{L}\\p{N}_-]*")) {
      throw new BadInputException("word", word, "one word of letters, digits and dashes");
    }
    if (taken) {
      throw new BadInputException("word", word, "a word that no command is called by already");
    }
    if (twice) {
      throw new BadInputException("word", word, "give each word once");
    }
  }

  private static void checkCommand(
      List<String> stands, Function<List<String>, Optional<Problem>> refusal) {
    if (!GlobalOptions.of(stands).rest().equals(stands)) {
      throw new BadInputException(
          "command",
          String.join(" ", stands),
          "a command with its own options; what every command takes is said when it is used");
    }
    refusal
        .apply(stands)
        .ifPresent(
            problem -> {
              throw new BadInputException(List.of(problem));
            });
  }
}
