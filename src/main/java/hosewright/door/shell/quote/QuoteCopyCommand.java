package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.quote.CopyQuote;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.CatalogueChoice;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.quote.Quote;
import java.util.function.Supplier;

/** Makes a new quote of the same parts at today's prices. */
public final class QuoteCopyCommand extends ShellCommand {
  private final CopyQuote copyQuote;

  public QuoteCopyCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote copy",
                Group.QUOTE,
                "Makes a new quote of the same parts at today's prices, for the same or another"
                    + " buyer",
                "quote copy Q-000001 --customer DUNMERE-CON")
            .with(QuoteArgument.of(books))
            .with(
                QuoteArgument.revision(),
                OptionSpec.value("customer", "ID", "whom it is for")
                    .withDefaultSaid("the same buyer")
                    .completing(() -> CatalogueChoice.customers(books)),
                OptionSpec.value("title", "TEXT", "a short name for the papers")
                    .withDefaultSaid("the same"),
                AmendmentOptions.terms(),
                SignedBy.option()));
    this.copyQuote = new CopyQuote(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Quote copy =
        copyQuote.copy(
            new CopyQuote.Request(
                in.argument(0).orElseThrow(),
                in.value("revision"),
                in.value("customer"),
                in.value("title"),
                in.value("terms"),
                SignedBy.name(in)));
    return Answer.of(copy, screen -> QuoteText.of(copy, screen));
  }
}
