package hosewright.command;

import hosewright.catalogue.MoneyWords;
import hosewright.desk.Books;
import hosewright.desk.quote.ListQuotes;
import hosewright.quote.QuoteHeading;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Lists the quotes on the books. */
final class QuoteListCommand extends ShellCommand {
  private final ListQuotes listQuotes;

  QuoteListCommand(Supplier<Books> books) {
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
                quote.customerName(),
                quote.date(),
                MoneyWords.of(quote.total()),
                quote.title());
          }
          return table.on(screen);
        });
  }
}
