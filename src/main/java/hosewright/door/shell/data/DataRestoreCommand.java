package hosewright.door.shell.data;

import hosewright.desk.Books;
import hosewright.desk.data.RestoreBooks;
import hosewright.desk.data.RestoreBooks.Restored;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Puts a backup back. */
public final class DataRestoreCommand extends ShellCommand {
  private final RestoreBooks restore;

  public DataRestoreCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "data restore",
                Group.DATA,
                "Puts a backup back, and keeps what stood there as a backup",
                "data restore monday.zip")
            .with(
                ArgumentSpec.required("FILE", "a file that 'data backup' wrote")
                    .completingFiles()));
    restore = new RestoreBooks(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Restored done = restore.restore(DataBackupCommand.path(in.argument(0).orElseThrow()));
    return Answer.of(
        done,
        "Put back "
            + done.file()
            + (done.before() == null ? "" : ".\nWhat stood there is in " + done.before())
            + ".");
  }
}
