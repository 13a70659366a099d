package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.quote.ExportQuote;
import hosewright.desk.quote.ExportQuote.Exported;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Writes a quote's papers into a folder. */
public final class QuoteExportCommand extends ShellCommand {
  private final ExportQuote exportQuote;

  public QuoteExportCommand(Supplier<Books> books) {
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
