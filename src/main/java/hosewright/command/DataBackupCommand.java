package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.NamedPath;
import hosewright.desk.data.BackUpBooks;
import hosewright.desk.data.BackUpBooks.BackedUp;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.nio.file.Path;
import java.util.function.Supplier;

/** Copies the books into one file. */
final class DataBackupCommand extends ShellCommand {
  private final BackUpBooks backUp;

  DataBackupCommand(Supplier<Books> books) {
    super(
        CommandSpec.of("data backup", Group.DATA, "Copies all books into one file", "data backup")
            .alias("backup")
            .with(
                ArgumentSpec.optional("FILE", "the file to write; else one in the data folder")
                    .completingFiles()));
    backUp = new BackUpBooks(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    BackedUp done = backUp.backUp(in.argument(0).map(DataBackupCommand::path));
    return Answer.of(
        done,
        "Backed up into %s, %d KiB.\nKeep a copy on another machine."
            .formatted(done.file(), (done.bytes() + 1023) / 1024));
  }

  static Path path(String text) {
    return NamedPath.of("backup", text, "the name of a file");
  }
}
