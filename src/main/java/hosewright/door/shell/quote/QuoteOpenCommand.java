package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.quote.ExportQuote;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.SystemProgram;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/** Writes a quote's paper anew and opens it in the system's program, where a person is there. */
public final class QuoteOpenCommand extends ShellCommand {
  private final ExportQuote exportQuote;

  public QuoteOpenCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote open",
                Group.QUOTE,
                "Opens a quote's paper in the system's program",
                "quote open Q-000001")
            .alias("open")
            .with(QuoteArgument.of(books))
            .with(
                QuoteArgument.revision(),
                OptionSpec.value("as", "KIND", "which paper: " + String.join(", ", Papers.KINDS))
                    .withDefault("pdf")
                    .completing(() -> Papers.KINDS),
                OptionSpec.value("out", "FOLDER", "where to put it")
                    .withDefaultSaid("the folder quotes, where there is one, else here")
                    .completingFiles(),
                OptionSpec.value("paper", "SIZE", "letter or a4")
                    .withDefaultSaid("letter")
                    .completing("letter", "a4")));
    this.exportQuote = new ExportQuote(books);
  }

  /**
   * What came of it.
   *
   * @param opened whether the system's program was given it
   */
  record Opened(String number, int revision, List<String> files, boolean opened) {}

  @Override
  protected Answer answer(Invocation in) {
    Papers papers =
        new Papers(
            Papers.kinds("as", in.value("as").orElseThrow()),
            PaperOptions.paper(in),
            PaperOptions.folder(in),
            // It is made anew from the books each time, so the one before is no loss.
            true);
    ExportQuote.Exported exported =
        exportQuote.export(in.argument(0).orElseThrow(), in.value("revision"), papers);
    boolean opened =
        in.asker().isPresent()
            && exported.files().stream().allMatch(file -> SystemProgram.opens(Path.of(file)));
    Opened document = new Opened(exported.number(), exported.revision(), exported.files(), opened);
    return Answer.of(
        document,
        PaperOptions.said(exported.files())
            + (in.asker().isPresent() && !opened
                ? "\nNo program of this system opens it; the file is there."
                : ""));
  }
}
