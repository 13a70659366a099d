package hosewright.door.shell.data;

import hosewright.desk.data.LocateBooks;
import hosewright.desk.data.LocateBooks.Kept;
import hosewright.desk.data.LocateBooks.Where;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.option.WorkspacePlace;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;

/** Says where the books are kept; opens nothing, so that it works when they cannot be opened. */
public final class DataWhereCommand extends ShellCommand {
  private final LocateBooks locate;

  public DataWhereCommand(Workspace workspace) {
    super(
        CommandSpec.of(
            "data where", Group.DATA, "Says where catalogue and quotes are kept", "data where"));
    locate = new LocateBooks(new WorkspacePlace(workspace));
  }

  @Override
  protected Answer answer(Invocation in) {
    Where where = locate.locate();
    return Answer.of(where, screen -> text(where, screen));
  }

  private static String text(Where where, Screen screen) {
    Prose text = new Prose(screen);
    if (where.database() != null) {
      text.line("The books are in " + where.database() + "; on this machine:");
    }
    text.line(
        where.made()
            ? where.folder()
            : where.folder() + ", which is made when something is first kept in it");
    for (Kept file : where.files()) {
      text.line("  ", "%s, %d KiB".formatted(file.name(), (file.bytes() + 1023) / 1024));
    }
    return text.line(
            where.lastBackup() == null
                ? "No backup yet: data backup."
                : "Last backup: " + where.lastBackup())
        .toString();
  }
}
