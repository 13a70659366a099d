package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.quote.ShowQuote;
import hosewright.desk.quote.ShowQuote.Internal;
import hosewright.desk.quote.ShowQuote.Shown;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.quote.life.QuoteStore.Logged;
import java.util.function.Supplier;

/** Shows one quote as it was made. */
public final class QuoteShowCommand extends ShellCommand {
  private final ShowQuote showQuote;

  public QuoteShowCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote show", Group.QUOTE, "Shows a quote as it was made", "quote show Q-000001")
            .with(QuoteArgument.of(books))
            .with(
                QuoteArgument.revision(),
                OptionSpec.flag("internal", "with cost and margin: not for the buyer's eyes")));
    this.showQuote = new ShowQuote(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Shown shown =
        showQuote.show(in.argument(0).orElseThrow(), in.value("revision"), in.flag("internal"));
    return shown
        .internal()
        .map(internal -> Answer.of(internal, screen -> text(shown, internal, screen)))
        .orElseGet(() -> Answer.of(shown.quote(), screen -> text(shown, screen)));
  }

  private static String text(Shown shown, Internal internal, Screen screen) {
    return text(shown, screen)
        + "\n\n"
        + EarningsText.of(internal.earnings(), internal.floor(), screen);
  }

  private static String text(Shown shown, Screen screen) {
    StringBuilder text = new StringBuilder(QuoteText.of(shown.quote(), screen));
    for (Logged logged : shown.steps()) {
      text.append("\n- ").append(SignedBy.words(logged.step(), shown.zone()));
    }
    return text.toString();
  }
}
