package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Revising.Revised;
import hosewright.desk.quote.UpdatePrices;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Makes a new revision of the same parts at today's prices and shows the difference. */
final class QuoteUpdatePricesCommand extends ShellCommand {
  private final UpdatePrices updatePrices;

  QuoteUpdatePricesCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote update-prices",
                Group.QUOTE,
                "Makes a new revision at today's prices and shows the difference",
                "quote update-prices Q-000001")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value("reason", "TEXT", "why").withDefault("prices of the day"),
                AmendmentOptions.terms(),
                SignedBy.option()));
    this.updatePrices = new UpdatePrices(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Revised revised = updatePrices.update(AmendmentOptions.furtherRevision(in));
    return Answer.of(revised, screen -> QuoteText.of(revised, screen));
  }
}
