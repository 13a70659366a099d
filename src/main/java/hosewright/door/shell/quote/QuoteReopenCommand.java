package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.Revising.Revised;
import hosewright.desk.quote.ReopenQuote;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Takes up a quote that was accepted, declined or expired, as a new revision. */
public final class QuoteReopenCommand extends ShellCommand {
  private final ReopenQuote reopenQuote;

  public QuoteReopenCommand(Supplier<Books> books) {
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
