package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.quote.ExportQuote;
import hosewright.desk.quote.ExportQuote.Exported;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Writes a quote's papers into a folder. */
final class QuoteExportCommand extends ShellCommand {
  private final ExportQuote exportQuote;

  QuoteExportCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote export",
                Group.QUOTE,
                "Writes a quote as a workbook and other papers",
                "quote export Q-000001 --as workbook,pdf --overwrite")
            .alias("export")
            .with(QuoteArgument.of(books))
            .with(
                QuoteArgument.revision(),
                OptionSpec.value("as", "KINDS", "which papers: " + String.join(", ", Papers.KINDS))
                    .withDefault("workbook")
                    .completingList(() -> Papers.KINDS))
            .with(PaperOptions.options()));
    this.exportQuote = new ExportQuote(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Papers papers = PaperOptions.papers("as", in.value("as").orElseThrow(), in);
    Exported exported =
        exportQuote.export(in.argument(0).orElseThrow(), in.value("revision"), papers);
    return Answer.of(exported, PaperOptions.said(exported.files()));
  }
}
