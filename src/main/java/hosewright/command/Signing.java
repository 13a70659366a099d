package hosewright.command;

import hosewright.problem.BadInputException;
import hosewright.quote.QuoteLife.Step;
import hosewright.quote.Signed;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.regex.Pattern;

/** Who takes a step, and how steps are shown. */
final class Signing {
  private static final int LONGEST_NAME = 100;
  private static final int LONGEST_NOTE = 1000;
  private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");
  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm zzz");

  private Signing() {}

  static OptionSpec option() {
    return OptionSpec.value("by", "NAME", "who does this")
        .withDefaultSaid("the name you are logged in under");
  }

  /** The name behind {@code --by}, else the system's user. */
  static String name(Invocation in) {
    return in.value("by")
        .map(name -> text("by", name, LONGEST_NAME))
        .orElseGet(() -> System.getProperty("user.name", "unknown"));
  }

  static Signed as(Invocation in, Step step, Instant at, String note) {
    return Signed.of(step, name(in), at, note);
  }

  /** A sentence somebody typed behind an option. */
  static String sentence(String option, String typed) {
    return text(option, typed, LONGEST_NOTE);
  }

  static String text(String option, String typed, int longest) {
    String text = typed.strip();
    if (text.isEmpty() || text.length() > longest || CONTROL.matcher(text).find()) {
      throw new BadInputException(
          option, text, "a text of 1 to " + longest + " characters on one line");
    }
    return text;
  }

  /** A step as a sentence: {@code issued by ines, 2026-11-02 12:00 UTC: first order}. */
  static String words(Signed step, ZoneId zone) {
    return step.step().done()
        + " by "
        + step.by()
        + ", "
        + MINUTES.format(step.at().truncatedTo(ChronoUnit.MINUTES).atZone(zone))
        + (step.note().isEmpty() ? "" : ": " + step.note());
  }
}
