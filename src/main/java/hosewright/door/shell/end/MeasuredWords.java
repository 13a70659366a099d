package hosewright.door.shell.end;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What was measured on a thread, without options: {@code 1.99in 9tpi}. */
final class MeasuredWords {
  private static final Pattern THREADS =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:tpi|threads(?: per inch)?)");
  private static final Pattern LENGTH =
      Pattern.compile("(wrap |round |pitch )?(\\d+(?:\\.\\d+)?)\\s*(inch(?:es)?|in|\"|mm|cm)");
  private static final Pattern WORD = Pattern.compile("\\S+");

  private static final List<String> SHAPES = List.of("straight", "tapered");
  private static final List<String> HALVES = List.of("male", "female");

  private final List<String> options = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private MeasuredWords() {}

  static List<String> asOptions(List<String> words) {
    MeasuredWords reading = new MeasuredWords();
    reading.read(String.join(" ", words).toLowerCase(Locale.ROOT));
    if (!reading.problems.isEmpty()) {
      throw new BadInputException(reading.problems);
    }
    return reading.options;
  }

  private void read(String text) {
    int at = 0;
    while (at < text.length()) {
      Matcher threads = THREADS.matcher(text).region(at, text.length());
      Matcher length = LENGTH.matcher(text).region(at, text.length());
      Matcher word = WORD.matcher(text).region(at, text.length());
      if (threads.lookingAt()) {
        option("tpi", threads.group(1));
        at = threads.end();
      } else if (length.lookingAt()) {
        option(named(length.group(1)), length.group(2) + " " + length.group(3));
        at = length.end();
      } else if (word.lookingAt()) {
        word(word.group());
        at = word.end();
      } else {
        at++;
      }
    }
  }

  private static String named(String before) {
    return before == null ? "od" : before.equals("pitch ") ? "pitch" : "wrap";
  }

  private void word(String word) {
    if (SHAPES.contains(word)) {
      option("taper", word);
    } else if (HALVES.contains(word)) {
      option("gender", word);
    } else if (!List.of("od", "across", "x", "by").contains(word)) {
      problems.add(
          Problem.of(
              "word",
              word,
              "a diameter such as 1.99in, threads such as 9tpi, 'wrap 6.25in', 'pitch 2.82mm',"
                  + " straight or tapered"));
    }
  }

  private void option(String name, String value) {
    if (options.contains("--" + name)) {
      problems.add(Problem.of(name, value, "give it only once"));
    }
    options.add("--" + name);
    options.add(value);
  }
}
