package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Revising;
import hosewright.problem.BadInputException;
import hosewright.quote.Quote;
import hosewright.quote.QuoteDiff;
import hosewright.quote.QuoteStore;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Says what changed between two quotes or revisions: job, parts, prices, and why. */
final class QuoteDiffCommand extends ShellCommand {
  private final Supplier<Books> books;

  QuoteDiffCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote diff",
                Group.QUOTE,
                "Says what changed from one quote or revision to another, and why",
                "quote diff Q-000001-r1 Q-000001-r2")
            .with(
                QuoteChoice.argument(books, "A", "a quote, or a revision of it as Q-000001-r1"),
                ArgumentSpec.optional(
                        "B", "what to compare with it; left out, the revision before it")
                    .completing(() -> QuoteChoice.numbers(books))));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      QuoteStore quotes = open.quotes();
      Quote first = QuoteChoice.named(in.argument(0).orElseThrow(), quotes);
      QuoteDiff diff =
          in.argument(1)
              .map(second -> Revising.diff(first, QuoteChoice.named(second, quotes)))
              .orElseGet(() -> Revising.diff(before(first, quotes), first));
      return Answer.of(diff, screen -> DiffText.of(diff, screen));
    }
  }

  private static Quote before(Quote quote, QuoteStore quotes) {
    return quotes
        .find(quote.number(), quote.revision() - 1)
        .orElseThrow(
            () ->
                new BadInputException(
                    "B", "", quote.number() + " has one revision; name a quote to compare with"));
  }
}
