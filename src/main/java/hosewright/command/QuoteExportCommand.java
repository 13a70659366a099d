package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.quote.Dealer;
import hosewright.quote.Quote;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.List;
import java.util.function.Supplier;

/** Writes a quote's papers into a folder. */
final class QuoteExportCommand extends ShellCommand {
  private final Supplier<Books> books;

  QuoteExportCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote export",
                Group.QUOTE,
                "Writes a quote as a workbook and other papers",
                "quote export Q-000001 --as workbook,pdf --overwrite")
            .alias("export")
            .with(QuoteChoice.argument(books))
            .with(
                QuoteChoice.revision(),
                OptionSpec.value("as", "KINDS", "which papers: " + String.join(", ", Papers.KINDS))
                    .withDefault("workbook")
                    .completingList(() -> Papers.KINDS))
            .with(PaperOptions.options()));
    this.books = books;
  }

  record Exported(String number, int revision, List<String> files) {}

  @Override
  protected Answer answer(Invocation in) {
    Papers papers = PaperOptions.papers("as", in.value("as").orElseThrow(), in);
    Quote quote;
    Dealer dealer;
    try (Books open = books.get()) {
      quote = QuoteChoice.of(in, open);
      dealer = Papers.dealer(open.terms());
    }
    List<String> files = papers.write(quote, dealer);
    return Answer.of(
        new Exported(quote.number(), quote.revision(), files), PaperOptions.said(files));
  }
}
