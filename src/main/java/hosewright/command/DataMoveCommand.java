package hosewright.command;

import hosewright.desk.data.MoveBooks;
import hosewright.desk.data.MoveBooks.Moved;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import hosewright.shell.Workspace;

/** Copies the books of one machine into the database of a team. */
final class DataMoveCommand extends ShellCommand {
  private final MoveBooks move;

  DataMoveCommand(Workspace workspace) {
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
