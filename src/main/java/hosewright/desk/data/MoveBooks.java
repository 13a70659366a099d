package hosewright.desk.data;

import hosewright.desk.BooksPlace;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.store.database.Database;
import hosewright.store.database.Move;
import hosewright.store.database.Server;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Copies the books of one machine into the database of a team, all or nothing. */
public final class MoveBooks {
  private static final String STORE = "store.mv.db";

  private final BooksPlace place;

  public MoveBooks(BooksPlace place) {
    this.place = place;
  }

  /**
   * Books copied.
   *
   * @param tables what was copied, counted in both stores
   */
  public record Moved(String from, String to, List<Move.Copied> tables) {}

  /**
   * Copies them; what lies in the folder stays as it was.
   *
   * @throws BadInputException when there are no books in the folder, or some on the server already
   */
  public Moved move() {
    Server server = place.server().orElseThrow(MoveBooks::nowhere);
    Path folder = place.where();
    if (!Files.exists(folder.resolve(STORE))) {
      throw new BadInputException(
          "data folder",
          folder.toString(),
          "a folder with books in it: name it with " + Given.as("data"));
    }
    try (Database from = Database.open(folder);
        Database to = Database.open(server, folder)) {
      return new Moved(folder.toString(), server.address(), Move.copy(from, to));
    }
  }

  private static BadInputException nowhere() {
    return new BadInputException(
        "db", "", "say into which database, such as jdbc:postgresql://HOST/DATABASE");
  }
}
