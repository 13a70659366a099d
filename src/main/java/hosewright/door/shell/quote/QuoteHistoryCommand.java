package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.quote.ReadHistory;
import hosewright.desk.quote.ReadHistory.History;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.words.Prose;
import hosewright.quote.Margin;
import hosewright.quote.life.QuoteStore.Logged;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Lists every step taken with a quote: what, who, when and why. */
public final class QuoteHistoryCommand extends ShellCommand {
  private final ReadHistory readHistory;

  public QuoteHistoryCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote history",
                Group.QUOTE,
                "Lists every step taken with a quote, by whom and when",
                "quote history Q-000001")
            .with(QuoteArgument.of(books))
            .with(OptionSpec.flag("internal", "say too what went out under the margin floor")));
    this.readHistory = new ReadHistory(books);
  }

  /** One step; {@code belowFloor} and {@code floorUnknown} only where the dealer asked for it. */
  record Step(
      int revision,
      String step,
      String by,
      Instant at,
      String note,
      Optional<Boolean> belowFloor,
      Optional<Boolean> floorUnknown) {}

  record Steps(String number, List<Step> steps) {}

  @Override
  protected Answer answer(Invocation in) {
    boolean internal = in.flag("internal");
    History history = readHistory.read(in.argument(0).orElseThrow());
    List<Step> steps = history.steps().stream().map(logged -> step(logged, internal)).toList();
    return Answer.of(
        new Steps(history.number(), steps),
        screen -> {
          Prose prose = new Prose(screen);
          history.steps().forEach(logged -> prose.line(sentence(logged, history.zone(), internal)));
          return prose.toString();
        });
  }

  private static Step step(Logged logged, boolean internal) {
    return new Step(
        logged.revision(),
        logged.step().step().word(),
        logged.step().by(),
        logged.step().at(),
        logged.step().note(),
        asked(internal, logged, Margin.Floor.BELOW),
        asked(internal, logged, Margin.Floor.UNKNOWN));
  }

  private static Optional<Boolean> asked(boolean internal, Logged logged, Margin.Floor standing) {
    return internal ? Optional.of(logged.step().floor() == standing) : Optional.empty();
  }

  private static String sentence(Logged logged, ZoneId zone, boolean internal) {
    return logged.number()
        + "-r"
        + logged.revision()
        + " "
        + SignedBy.words(logged.step(), zone)
        + (internal ? floor(logged.step().floor()) : "");
  }

  private static String floor(Margin.Floor standing) {
    return switch (standing) {
      case KEPT -> "";
      case BELOW -> " (under the margin floor)";
      case UNKNOWN ->
          " (a cost was not known: nobody could tell whether the margin floor was kept)";
    };
  }
}
