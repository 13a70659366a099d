package hosewright.door.shell.data;

import hosewright.desk.Books;
import hosewright.desk.data.CheckBooks;
import hosewright.desk.data.CheckBooks.Found;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.option.WorkspacePlace;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import java.util.Locale;
import java.util.function.Supplier;

/** Reads all books and says what is damaged. */
public final class DataCheckCommand extends ShellCommand {
  private static final int SHOWN = 50;

  private final CheckBooks check;

  DataCheckCommand(Supplier<Books> books, Workspace workspace) {
    super(
        CommandSpec.of(
            "data check",
            Group.DATA,
            "Reads all books and says what is damaged, and which backup would bring it back",
            "data check"));
    check = new CheckBooks(books, new WorkspacePlace(workspace));
  }

  @Override
  protected Answer answer(Invocation in) {
    Found found = check.check();
    return found.sound()
        ? Answer.of(found, screen -> text(found, screen))
        : Answer.trouble(found, screen -> text(found, screen));
  }

  private static String text(Found found, Screen screen) {
    Prose prose = new Prose(screen);
    if (found.sound()) {
      prose.line(
          String.format(
              Locale.ROOT, "Read %,d rows: all of them read as they were written.", found.rows()));
      if (found.changed()) {
        prose.line(
            "The store's file was changed since it was last closed, and nothing in it is damaged:"
                + " it is taken as it is now.");
      }
      return prose.toString();
    }
    prose.line(
        String.format(
            Locale.ROOT, "Read %,d rows. Damaged: %,d.", found.rows(), found.damaged().size()));
    Table table = Table.of("what", "which", "damage");
    found.damaged().stream()
        .limit(SHOWN)
        .forEach(one -> table.row(one.thing(), one.named(), one.what()));
    prose.block(table.on(screen));
    if (found.damaged().size() > SHOWN) {
      prose.line("--json shows all of them.");
    }
    return prose
        .line(
            found.backup() == null
                ? "No backup lies in the data folder: if you keep one elsewhere, 'data restore"
                    + " FILE' puts it back."
                : "The last backup was written %s: 'data restore %s' puts all books back as they"
                        .formatted(found.backup().written(), found.backup().file())
                    + " stood then, and keeps these as they are now.")
        .toString();
  }
}
