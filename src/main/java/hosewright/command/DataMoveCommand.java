package hosewright.command;

import hosewright.desk.quote.Moved;
import hosewright.problem.BadInputException;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import hosewright.shell.Workspace;
import hosewright.store.Database;
import hosewright.store.Move;
import hosewright.store.Server;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Copies the books of one machine into the database of a team. */
final class DataMoveCommand extends ShellCommand {
  private final Workspace workspace;

  DataMoveCommand(Workspace workspace) {
    super(
        CommandSpec.of(
            "data move",
            Group.DATA,
            "Copies the books of the data folder into the database of a team, all or nothing",
            "data move --db jdbc:postgresql://books.port-harlow.example/hosewright"));
    this.workspace = workspace;
  }

  /**
   * @param tables what was copied, counted in both stores
   */
  record Moved(String from, String to, List<Move.Copied> tables) {}

  @Override
  protected Answer answer(Invocation in) {
    Server server = TeamDatabase.in(workspace).orElseThrow(DataMoveCommand::nowhere);
    Path folder = workspace.where();
    if (!Files.exists(folder.resolve("store.mv.db"))) {
      throw new BadInputException(
          "data folder", folder.toString(), "a folder with books in it: name it with --data");
    }
    try (Database from = Database.open(folder);
        Database to = Database.open(server, folder)) {
      Moved moved = new Moved(folder.toString(), server.address(), Move.copy(from, to));
      return Answer.of(moved, screen -> text(moved, screen));
    }
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

  private static BadInputException nowhere() {
    return new BadInputException(
        "--db", "", "say into which database: --db jdbc:postgresql://HOST/DATABASE");
  }
}
