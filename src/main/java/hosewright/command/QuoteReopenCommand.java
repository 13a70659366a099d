package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Revising;
import hosewright.desk.Revising.Revised;
import hosewright.desk.Signing;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.QuoteLife.Step;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Takes up a quote that was accepted, declined or expired, as a new revision. */
final class QuoteReopenCommand extends ShellCommand {
  private final Supplier<Books> books;

  QuoteReopenCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote reopen",
                Group.QUOTE,
                "Takes up an accepted, declined or expired quote as a new revision, prices kept",
                "quote reopen Q-000001 --reason \"they came back\"")
            .with(QuoteChoice.argument(books))
            .with(
                OptionSpec.value("reason", "TEXT", "why").asRequired(),
                AmendmentOptions.terms(),
                SignedBy.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(in, open);
      QuoteLife.take(seen, Step.REOPEN);
      String reason = Signing.sentence("reason", in.required("reason"));
      Quote next =
          open.revisions()
              .revised(
                  seen,
                  seen.title(),
                  seen.jobYaml(),
                  seen.plan(),
                  Revising.withTerms(in.value("terms"), open, seen.amendments()).because(reason));
      Revised revised = Revising.keep(open, seen, next, Step.REOPEN, SignedBy.name(in));
      return Answer.of(revised, screen -> QuoteText.of(revised, screen));
    }
  }
}
