package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.quote.DeclineQuote;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Notes that a buyer did not take a quote, and why. */
final class QuoteDeclineCommand extends ShellCommand {
  private final DeclineQuote declineQuote;

  QuoteDeclineCommand(Supplier<Books> books) {
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
