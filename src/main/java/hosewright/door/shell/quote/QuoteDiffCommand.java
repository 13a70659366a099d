package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.quote.CompareQuotes;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.screen.Answer;
import hosewright.quote.QuoteDiff;
import java.util.function.Supplier;

/** Says what changed between two quotes or revisions: job, parts, prices, and why. */
public final class QuoteDiffCommand extends ShellCommand {
  private final CompareQuotes compareQuotes;

  public QuoteDiffCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote diff",
                Group.QUOTE,
                "Says what changed from one quote or revision to another, and why",
                "quote diff Q-000001-r1 Q-000001-r2")
            .with(
                QuoteArgument.of(books, "A", "a quote, or a revision of it as Q-000001-r1"),
                ArgumentSpec.optional(
                        "B", "what to compare with it; left out, the revision before it")
                    .completing(() -> QuoteArgument.numbers(books))));
    this.compareQuotes = new CompareQuotes(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    QuoteDiff diff = compareQuotes.compare(in.argument(0).orElseThrow(), in.argument(1));
    return Answer.of(diff, screen -> DiffText.of(diff, screen));
  }
}
