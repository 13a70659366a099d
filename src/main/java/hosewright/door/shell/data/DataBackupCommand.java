package hosewright.door.shell.data;

import hosewright.desk.Books;
import hosewright.desk.NamedPath;
import hosewright.desk.data.BackUpBooks;
import hosewright.desk.data.BackUpBooks.BackedUp;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import java.nio.file.Path;
import java.util.function.Supplier;

/** Copies the books into one file. */
public final class DataBackupCommand extends ShellCommand {
  private final BackUpBooks backUp;

  public DataBackupCommand(Supplier<Books> books) {
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
