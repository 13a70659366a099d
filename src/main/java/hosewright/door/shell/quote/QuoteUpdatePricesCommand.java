package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.Revising.Revised;
import hosewright.desk.quote.UpdatePrices;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Makes a new revision of the same parts at today's prices and shows the difference. */
public final class QuoteUpdatePricesCommand extends ShellCommand {
  private final UpdatePrices updatePrices;

  public QuoteUpdatePricesCommand(Supplier<Books> books) {
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
