package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.NamedPath;
import hosewright.desk.edit.EditQuote;
import hosewright.desk.quote.ReviseQuote;
import hosewright.disk.WholeFile;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.intake.SmallFile;
import hosewright.problem.BadInputException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Opens a quote's lines in the editor the user has set and revises it as they come back. */
public final class QuoteEditCommand extends ShellCommand {
  private static final int MOST_BYTES = 1024 * 1024;

  private final EditQuote editQuote;

  public QuoteEditCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote edit",
                Group.QUOTE,
                "Edits a quote's lines, prices, order and headings as a small text",
                "quote edit Q-000001 --out quote-lines.txt --overwrite")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value("out", "FILE", "only write the text there, to be edited later")
                    .completingFiles(),
                OptionSpec.flag("overwrite", "replace that file"),
                OptionSpec.value("sheet", "FILE", "read a text that was edited already")
                    .withDefaultSaid("the editor that VISUAL or EDITOR names is opened")
                    .completingFiles(),
                SignedBy.option()));
    this.editQuote = new EditQuote(books);
  }

  record Written(String file) {}

  @Override
  protected Answer answer(Invocation in) {
    Optional<Path> out =
        in.value("out").map(name -> NamedPath.of("out", name, "the name of a text file"));
    Optional<ReviseQuote.Outcome> outcome =
        editQuote.edit(
            in.argument(0).orElseThrow(),
            text -> out.isPresent() ? written(out.get(), text, in) : edited(text, in),
            SignedBy.name(in));
    return outcome
        .flatMap(ReviseQuote.Outcome::revised)
        .map(revised -> Answer.of(revised, screen -> QuoteText.of(revised, screen)))
        .orElseGet(
            () ->
                out.isPresent()
                    ? Answer.of(new Written(out.get().toString()), "Wrote " + out.get())
                    : Answer.of(Map.of(), "Nothing was changed."));
  }

  private static Optional<String> written(Path file, String text, Invocation in) {
    if (file.toFile().exists() && !in.flag("overwrite")) {
      throw new BadInputException("out", file.toString(), "a file not there yet, or --overwrite");
    }
    put(file, text);
    return Optional.empty();
  }

  private static Optional<String> edited(String text, Invocation in) {
    if (in.value("sheet").isPresent()) {
      return Optional.of(
          text(NamedPath.of("sheet", in.value("sheet").get(), "the name of a text file")));
    }
    Path file = Path.of("quote-" + in.argument(0).orElseThrow().replaceAll("\\W", "") + ".txt");
    put(file, text);
    open(file);
    String back = text(file);
    return back.equals(text) ? Optional.empty() : Optional.of(back);
  }

  private static void put(Path file, String text) {
    WholeFile.refuseLink("out", file);
    try {
      WholeFile.put(file, text, false);
    } catch (IOException e) {
      throw new BadInputException("out", file.toString(), "a file in a folder to be written to");
    }
  }

  private static String text(Path file) {
    try {
      return SmallFile.text(file, MOST_BYTES)
          .orElseThrow(() -> new BadInputException("sheet", file.toString(), "at most 1 MiB"));
    } catch (IOException e) {
      throw new BadInputException("sheet", file.toString(), "a text file that is there to be read");
    }
  }

  /** Runs the editor and waits until it is closed. */
  private static void open(Path file) {
    String editor =
        Optional.ofNullable(System.getenv("VISUAL"))
            .or(() -> Optional.ofNullable(System.getenv("EDITOR")))
            .filter(name -> !name.isBlank())
            .orElseThrow(
                () ->
                    new BadInputException(
                        "editor",
                        "",
                        "set in VISUAL or EDITOR; or write the text with --out and read it with"
                            + " --sheet"));
    List<String> words = new ArrayList<>(List.of(editor.strip().split("\\s+")));
    words.add(file.toString());
    try {
      int ended = new ProcessBuilder(words).inheritIO().start().waitFor();
      if (ended != 0) {
        throw new BadInputException("editor", editor, "one that ends well; it ended with " + ended);
      }
    } catch (IOException e) {
      throw new BadInputException("editor", editor, "a program that can be started");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new BadInputException("editor", editor, "one that is closed before going on");
    }
  }
}
