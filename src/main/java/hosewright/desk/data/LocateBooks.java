package hosewright.desk.data;

import hosewright.desk.BooksPlace;
import hosewright.store.database.Server;
import hosewright.store.folder.DataFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Says where the books are kept; opens nothing, so that it works when they cannot be opened. */
public final class LocateBooks {
  private final BooksPlace place;

  public LocateBooks(BooksPlace place) {
    this.place = place;
  }

  /**
   * Where they are.
   *
   * @param database address of the team's database; null where the books are in the folder
   * @param made false where the folder is yet to be made
   * @param lastBackup null when none was made in the usual place
   */
  public record Where(
      String database, String folder, boolean made, List<Kept> files, String lastBackup) {}

  /** A file of the folder. */
  public record Kept(String name, long bytes) {}

  /**
   * The place.
   *
   * @throws hosewright.problem.BadInputException when what names it cannot be used
   */
  public Where locate() {
    Path folder = place.where();
    String last = DataFolder.lastBackup(folder).map(Path::toString).orElse(null);
    String database = place.server().map(Server::address).orElse(null);
    return new Where(database, folder.toString(), Files.isDirectory(folder), kept(folder), last);
  }

  private static List<Kept> kept(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(Files::isRegularFile)
          .sorted()
          .map(file -> new Kept(file.getFileName().toString(), file.toFile().length()))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
