package hosewright.desk;

import hosewright.store.database.Server;
import java.nio.file.Path;
import java.util.Optional;

/** Where the dealer's books are kept, as whoever opened the door was told. */
public interface BooksPlace {

  /** Where the data folder is, or would be. */
  Path where();

  /**
   * The data folder, made if it was not there.
   *
   * @throws hosewright.problem.BadInputException when it cannot be made or written to
   */
  Path folder();

  /**
   * The server of a team that shares its books; empty where they are files in the folder.
   *
   * @throws hosewright.problem.BadInputException when its address or login cannot be used
   */
  Optional<Server> server();

  /** What a user calls the setting that names a server; empty where none is named. */
  Optional<String> serverField();
}
