package hosewright.door.shell.option;

import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.quote.life.Signed;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** Who takes a step, as it is typed, and how steps are shown. */
public final class SignedBy {
  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm zzz");

  private SignedBy() {}

  public static OptionSpec option() {
    return OptionSpec.value("by", "NAME", "who does this")
        .withDefaultSaid("the name you are logged in under");
  }

  /** The name behind {@code --by}, else the system's user. */
  public static String name(Invocation in) {
    return in.value("by").orElseGet(() -> System.getProperty("user.name", "unknown"));
  }

  /** A step as a sentence: {@code issued by ines, 2026-11-02 12:00 UTC: first order}. */
  public static String words(Signed step, ZoneId zone) {
    return step.step().done()
        + " by "
        + step.by()
        + ", "
        + MINUTES.format(step.at().truncatedTo(ChronoUnit.MINUTES).atZone(zone))
        + (step.note().isEmpty() ? "" : ": " + step.note());
  }
}
