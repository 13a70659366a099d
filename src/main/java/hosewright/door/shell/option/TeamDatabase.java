package hosewright.door.shell.option;

import hosewright.door.shell.command.Workspace;
import hosewright.store.database.Server;
import hosewright.store.database.ServerLogin;
import java.util.Optional;

/** The database a team shares, where the user named one. */
final class TeamDatabase {
  private TeamDatabase() {}

  static Optional<Server> in(Workspace workspace) {
    return workspace
        .database()
        .map(
            address ->
                Server.of(
                    workspace.databaseField(), address, ServerLogin.in(workspace.environment())));
  }
}
