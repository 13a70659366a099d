package hosewright.command;

import hosewright.desk.Books;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/** Puts a backup back. */
final class DataRestoreCommand extends ShellCommand {
  private final Supplier<Books> books;

  DataRestoreCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "data restore",
                Group.DATA,
                "Puts a backup back, and keeps what stood there as a backup",
                "data restore monday.zip")
            .with(
                ArgumentSpec.required("FILE", "a file that 'data backup' wrote")
                    .completingFiles()));
    this.books = books;
  }

  /**
   * @param before where the books that stood there were put; null when there were none
   */
  record Restored(String file, String before) {}

  @Override
  protected Answer answer(Invocation in) {
    Path file = DataBackupCommand.path(in.argument(0).orElseThrow());
    try (Books open = books.get()) {
      Optional<String> before = open.restore(file).map(Path::toString);
      return Answer.of(
          new Restored(file.toString(), before.orElse(null)),
          "Put back "
              + file
              + before.map(kept -> ".\nWhat stood there is in " + kept).orElse("")
              + ".");
    }
  }
}
