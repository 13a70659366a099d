package hosewright.door.shell.line;

import hosewright.job.question.JobField;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Pattern;

/**
 * A job without options: {@code 2.5 NH male hydrant to 1.5 NH nozzle 400ft 150gpm 50psi}. What
 * could mean two things is asked back, never guessed.
 */
final class LineWords {
  private static final Pattern NUMBER = Pattern.compile("\\d[\\d.,/-]*");
  private static final Pattern MEASURE =
      Pattern.compile("\\d[\\d.,/-]*[\\p{L}%'\"\u2032\u2033/].*");
  private static final Pattern INCHES =
      Pattern.compile("(?i)\\d[\\d./-]*\\s*(in|inch|inches|\"|mm)");
  private static final Set<String> FILLERS =
      Set.of("at", "and", "with", "of", "over", "hose", "water", "away", "along", "needs", "for");
  private static final Set<String> UP = Set.of("up", "uphill");
  private static final Set<String> DOWN = Set.of("down", "downhill");

  private final List<String> words;
  private final List<String> options = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private int at;

  private LineWords(List<String> words) {
    this.words = words;
  }

  static List<String> asOptions(List<String> words) {
    LineWords reading = new LineWords(words);
    reading.ends();
    while (reading.at < words.size()) {
      reading.rest();
    }
    if (!reading.problems.isEmpty()) {
      throw new BadInputException(reading.problems);
    }
    return reading.options;
  }

  /** The source as far as the first "to", then the appliance as far as the first measure. */
  private void ends() {
    if (word(0).equals("from")) {
      at = 1;
    }
    int to = at;
    while (to < words.size() && !word(to).equals("to")) {
      to++;
    }
    if (to == words.size() || to == at) {
      throw new BadInputException(
          "ends",
          String.join(" ", words),
          "what it starts at, 'to', what it feeds, then the measures with their units: 2.5 NH male"
              + " hydrant to 1.5 NH nozzle 400ft 150gpm 50psi");
    }
    option(JobField.FROM, String.join(" ", words.subList(at, to)));
    at = to + 1;
    List<String> appliance = new ArrayList<>();
    while (at < words.size() && !beginsMeasures(appliance)) {
      appliance.add(words.get(at++));
    }
    option(JobField.TO, String.join(" ", appliance));
  }

  private boolean beginsMeasures(List<String> appliance) {
    boolean sized = appliance.stream().anyMatch(word -> Character.isDigit(word.charAt(0)));
    String measure = measure();
    boolean inches = INCHES.matcher(measure).matches();
    return (inches && sized)
        || (!inches && !measure.isEmpty() && field(measure).isPresent())
        || UP.contains(word(at))
        || DOWN.contains(word(at));
  }

  /** What stands here as a number and its unit, in one word or two; empty where nothing does. */
  private String measure() {
    String here = words.get(at);
    if (MEASURE.matcher(here).matches()) {
      return here;
    }
    boolean number = NUMBER.matcher(here).matches() && at + 1 < words.size();
    return number ? here + " " + words.get(at + 1) : "";
  }

  private void rest() {
    String word = word(at);
    String measure = measure();
    if ((UP.contains(word) || DOWN.contains(word)) && at + 1 < words.size()) {
      at++;
      String rise = measure();
      option(
          JobField.RISE,
          (DOWN.contains(word) ? "-" : "") + (rise.isEmpty() ? words.get(at) : rise));
      skip(rise);
    } else if (!measure.isEmpty() && field(measure).isPresent()) {
      measured(field(measure).orElseThrow(), measure);
      skip(measure);
    } else {
      if (JobField.USE.choices().contains(word)) {
        option(JobField.USE, word);
      } else if (!FILLERS.contains(word)) {
        problems.add(
            Problem.of(
                "word",
                words.get(at),
                "a length, flow, pressure or hose size with its unit, up or down with a height, or"
                    + " one of "
                    + String.join(", ", JobField.USE.choices())
                    + "; all else is an option"));
      }
      at++;
    }
  }

  private void skip(String measure) {
    at += Math.max(1, measure.split(" ").length);
  }

  private void measured(JobField field, String text) {
    if (options.contains("--" + field.word())) {
      problems.add(
          Problem.of(
              field.word(),
              text,
              field.equals(JobField.NEED)
                  ? "one pressure alone, which the appliance needs: --source-pressure says what the"
                      + " source holds"
                  : "give it only once"));
    }
    option(field, text);
  }

  private void option(JobField field, String value) {
    options.add("--" + field.word());
    options.add(value);
  }

  /** The question that a measure can only answer; empty where it answers none. */
  private static Optional<JobField> field(String measure) {
    if (INCHES.matcher(measure).matches()) {
      return Optional.of(JobField.SIZE);
    }
    if (reads(Measures::lengthFt, measure)) {
      return Optional.of(JobField.LENGTH);
    }
    if (reads(Measures::flowGpm, measure)) {
      return Optional.of(JobField.FLOW);
    }
    return reads(Measures::pressurePsi, measure) ? Optional.of(JobField.NEED) : Optional.empty();
  }

  private static boolean reads(BiFunction<String, String, Double> reader, String text) {
    try {
      return reader.apply("measure", text) != null;
    } catch (BadInputException e) {
      return false;
    }
  }

  private String word(int place) {
    return words.get(place).toLowerCase(Locale.ROOT);
  }
}
