package hosewright.door.shell.quote;

import hosewright.catalogue.MoneyWords;
import hosewright.desk.Books;
import hosewright.desk.quote.ListQuotes;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Table;
import hosewright.quote.life.QuoteHeading;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Lists the quotes on the books. */
public final class QuoteListCommand extends ShellCommand {
  private final ListQuotes listQuotes;

  public QuoteListCommand(Supplier<Books> books) {
    super(
        CommandSpec.of("quote list", Group.QUOTE, "Lists the quotes", "quote list")
            .alias("quotes"));
    this.listQuotes = new ListQuotes(books);
  }

  record Quotes(List<QuoteHeading> quotes) {}

  @Override
  protected Answer answer(Invocation in) {
    List<QuoteHeading> quotes = listQuotes.list();
    return Answer.of(
        new Quotes(quotes),
        screen -> {
          if (quotes.isEmpty()) {
            return "No quotes yet. Start with 'quote make'.";
          }
          Table table =
              Table.of("number", "rev", "status", "customer", "date", "total", "title")
                  .numbers(1, 5);
          for (QuoteHeading quote : quotes) {
            table.row(
                quote.number(),
                quote.revision(),
                quote.status().name().toLowerCase(Locale.ROOT),
                quote.buyer().customerName(),
                quote.days().date(),
                MoneyWords.of(quote.total()),
                quote.title());
          }
          return table.on(screen);
        });
  }
}
