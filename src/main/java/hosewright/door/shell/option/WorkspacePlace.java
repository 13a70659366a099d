package hosewright.door.shell.option;

import hosewright.desk.BooksPlace;
import hosewright.door.shell.command.Workspace;
import hosewright.store.database.Server;
import java.nio.file.Path;
import java.util.Optional;

/** The books where the shell was told that they are. */
public record WorkspacePlace(Workspace workspace) implements BooksPlace {
  @Override
  public Path where() {
    return workspace.where();
  }

  @Override
  public Path folder() {
    return workspace.folder();
  }

  @Override
  public Optional<Server> server() {
    return TeamDatabase.in(workspace);
  }

  @Override
  public Optional<String> serverField() {
    return workspace.database().map(address -> workspace.databaseField());
  }
}
