package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Revising.Revised;
import hosewright.desk.quote.ReopenQuote;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Takes up a quote that was accepted, declined or expired, as a new revision. */
final class QuoteReopenCommand extends ShellCommand {
  private final ReopenQuote reopenQuote;

  QuoteReopenCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote reopen",
                Group.QUOTE,
                "Takes up an accepted, declined or expired quote as a new revision, prices kept",
                "quote reopen Q-000001 --reason \"they came back\"")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value("reason", "TEXT", "why").asRequired(),
                AmendmentOptions.terms(),
                SignedBy.option()));
    this.reopenQuote = new ReopenQuote(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Revised revised = reopenQuote.reopen(AmendmentOptions.furtherRevision(in));
    return Answer.of(revised, screen -> QuoteText.of(revised, screen));
  }
}
