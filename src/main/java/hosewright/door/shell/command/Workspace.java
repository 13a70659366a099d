package hosewright.door.shell.command;

import hosewright.disk.OwnerOnly;
import hosewright.problem.BadInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Where the books are: a data folder, found at once and made only when something is to be kept in
 * it, and the database of a team where one is named.
 */
public final class Workspace {
  private final Map<String, String> environment;
  private Optional<String> chosen = Optional.empty();
  private Optional<String> chosenDatabase = Optional.empty();

  public Workspace(Map<String, String> environment) {
    this.environment = environment;
  }

  /**
   * Takes what was given with {@code --data} and {@code --db}; called once, before any command
   * runs.
   */
  public void choose(Optional<String> folder, Optional<String> database) {
    chosen = folder;
    chosenDatabase = database;
  }

  /** The environment of this process, in which a login to a database may stand. */
  public Map<String, String> environment() {
    return environment;
  }

  /** The address of the team's database as it was given; empty where none was. */
  public Optional<String> database() {
    return chosenDatabase
        .or(() -> Optional.ofNullable(environment.get("HOSEWRIGHT_DB")))
        .filter(address -> !address.isBlank());
  }

  /** What a user calls the place that {@link #database} came from. */
  public String databaseField() {
    return chosenDatabase.isPresent() ? "--db" : "HOSEWRIGHT_DB";
  }

  /**
   * Where the data folder is, or would be.
   *
   * @throws BadInputException when the name cannot be a folder's
   */
  public Path where() {
    String field = chosen.isPresent() ? "--data" : "HOSEWRIGHT_DATA";
    Optional<String> named =
        chosen
            .or(() -> Optional.ofNullable(environment.get("HOSEWRIGHT_DATA")))
            .filter(name -> !name.isBlank());
    String home = System.getProperty("user.home");
    try {
      return named
          .map(name -> name.startsWith("~/") ? Path.of(home, name.substring(2)) : Path.of(name))
          .orElseGet(() -> Path.of(home, ".hosewright"))
          .toAbsolutePath()
          .normalize();
    } catch (InvalidPathException e) {
      throw new BadInputException(field, named.orElse(""), "give the name of a folder");
    }
  }

  /**
   * The data folder, made if it was not there.
   *
   * @throws BadInputException when it cannot be made or written to
   */
  public Path folder() {
    Path folder = where();
    try {
      OwnerOnly.folder(folder);
    } catch (IOException e) {
      throw unusable(folder);
    }
    if (!Files.isWritable(folder)) {
      throw unusable(folder);
    }
    return folder;
  }

  private static BadInputException unusable(Path folder) {
    return new BadInputException(
        "data folder",
        folder.toString(),
        "give a folder that can be written to, with --data or HOSEWRIGHT_DATA");
  }
}
