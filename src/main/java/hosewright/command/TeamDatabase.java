package hosewright.command;

import hosewright.shell.Workspace;
import hosewright.store.Server;
import hosewright.store.ServerLogin;
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
