package hosewright.door.shell.data;

import hosewright.desk.data.MoveBooks;
import hosewright.desk.data.MoveBooks.Moved;
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

/** Copies the books of one machine into the database of a team. */
public final class DataMoveCommand extends ShellCommand {
  private final MoveBooks move;

  public DataMoveCommand(Workspace workspace) {
    super(
        CommandSpec.of(
            "data move",
            Group.DATA,
            "Copies the books of the data folder into the database of a team, all or nothing",
            "data move --db jdbc:postgresql://books.port-harlow.example/hosewright"));
    move = new MoveBooks(new WorkspacePlace(workspace));
  }

  @Override
  protected Answer answer(Invocation in) {
    Moved moved = move.move();
    return Answer.of(moved, screen -> text(moved, screen));
  }

  private static String text(Moved moved, Screen screen) {
    Table table = Table.of("table", "rows").numbers(1);
    moved.tables().forEach(copied -> table.row(copied.table(), copied.rows()));
    return new Prose(screen)
        .line("Copied the books of %s into %s.".formatted(moved.from(), moved.to()))
        .block(table.on(screen))
        .line(
            "What lies in the folder stays as it was. Quote with --db or HOSEWRIGHT_DB from now on:"
                + " quotes made in the folder would take the same numbers again.")
        .toString();
  }
}
