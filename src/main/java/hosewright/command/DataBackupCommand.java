package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.NamedPath;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;

/** Copies the books into one file. */
final class DataBackupCommand extends ShellCommand {
  private final Supplier<Books> books;

  DataBackupCommand(Supplier<Books> books) {
    super(
        CommandSpec.of("data backup", Group.DATA, "Copies all books into one file", "data backup")
            .alias("backup")
            .with(
                ArgumentSpec.optional("FILE", "the file to write; else one in the data folder")
                    .completingFiles()));
    this.books = books;
  }

  record BackedUp(String file, long bytes) {}

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Path file = open.backUp(in.argument(0).map(DataBackupCommand::path));
      BackedUp done = new BackedUp(file.toString(), Files.size(file));
      return Answer.of(
          done,
          "Backed up into %s, %d KiB.\nKeep a copy on another machine."
              .formatted(file, (done.bytes() + 1023) / 1024));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path path(String text) {
    return NamedPath.of("backup", text, "the name of a file");
  }
}
