package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Revising;
import hosewright.desk.Revising.Revised;
import hosewright.desk.Signing;
import hosewright.quote.Customer;
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

/** Makes a new revision of the same parts at today's prices and shows the difference. */
final class QuoteUpdatePricesCommand extends ShellCommand {
  private final Supplier<Books> books;

  QuoteUpdatePricesCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote update-prices",
                Group.QUOTE,
                "Makes a new revision at today's prices and shows the difference",
                "quote update-prices Q-000001")
            .with(QuoteChoice.argument(books))
            .with(
                OptionSpec.value("reason", "TEXT", "why").withDefault("prices of the day"),
                AmendmentOptions.terms(),
                SignedBy.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(in, open);
      QuoteLife.take(seen, Step.UPDATE_PRICES);
      String reason = Signing.sentence("reason", in.required("reason"));
      Customer customer = open.customers().get(seen.customer().id(), open.today());
      Quote next =
          open.revisions()
              .repriced(
                  seen,
                  customer,
                  Revising.withTerms(in.value("terms"), open, seen.amendments()).because(reason));
      Revised revised = Revising.keep(open, seen, next, Step.UPDATE_PRICES, SignedBy.name(in));
      return Answer.of(revised, screen -> QuoteText.of(revised, screen));
    }
  }
}
