package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.quote.DeclineQuote;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Notes that a buyer did not take a quote, and why. */
public final class QuoteDeclineCommand extends ShellCommand {
  private final DeclineQuote declineQuote;

  public QuoteDeclineCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote decline",
                Group.QUOTE,
                "Notes that the buyer did not take an issued quote, and why",
                "quote decline Q-000001 --reason \"too slow\"")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value("reason", "TEXT", "what the buyer said").asRequired(),
                SignedBy.option()));
    this.declineQuote = new DeclineQuote(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return MovedText.answer(
        declineQuote.decline(
            in.argument(0).orElseThrow(), in.required("reason"), SignedBy.name(in)));
  }
}
