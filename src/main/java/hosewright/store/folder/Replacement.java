package hosewright.store.folder;

import hosewright.disk.OwnerOnly;
import hosewright.disk.Scratch;
import hosewright.problem.ConflictException;
import hosewright.problem.TroubleException;
import hosewright.store.seal.FileSum;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Files made ready in a folder inside the data folder, to take the places of what lies there: all
 * of them or none, even if the program is killed between two.
 *
 * <p>Renaming the folder decides it. Before that the next start throws it away, after that it
 * finishes what was begun.
 */
public final class Replacement implements AutoCloseable {
  private static final String BEING_MADE = ".restoring";
  private static final String DECIDED = ".restored";

  /** Stays: were it taken away, two programs could hold a file of this name each. */
  private static final String HOLD = "restoring.lock";

  private final Path folder;
  private final Held held;

  private Replacement(Path folder, Held held) {
    this.folder = folder;
    this.held = held;
  }

  /**
   * An empty folder to make files ready in.
   *
   * @param folder the data folder
   * @throws ConflictException while another program does so
   */
  public static Replacement in(Path folder) throws IOException {
    Held held =
        Held.take(folder.resolve(HOLD), StandardOpenOption.CREATE)
            .orElseThrow(
                () ->
                    ConflictException.somebodyWasFirst(
                        "data folder",
                        folder.toString(),
                        "has a backup put back by another hosewright just now, nothing was"
                            + " changed"));
    Replacement replacement = new Replacement(folder, held);
    try {
      replacement.settle();
      OwnerOnly.folder(replacement.folder());
      return replacement;
    } catch (IOException e) {
      held.close();
      throw e;
    }
  }

  /** Where to make the files ready. */
  public Path folder() {
    return folder.resolve(BEING_MADE);
  }

  /**
   * Sees that nothing lies in the place of a folder that was made ready, before anything else is
   * done that goes with putting it there.
   *
   * @throws IOException when a file or a link does
   */
  public void requireRoom() throws IOException {
    DealersFiles.requireRoom(folder(), folder);
  }

  /**
   * Puts every file that was made ready in its place.
   *
   * @throws IOException when it was not decided on; nothing lies in another place then
   * @throws TroubleException when it was, and could not be finished
   */
  public void putInPlace() throws IOException {
    Files.move(folder(), folder.resolve(DECIDED), StandardCopyOption.ATOMIC_MOVE);
    try {
      settle();
    } catch (IOException | UncheckedIOException e) {
      throw new TroubleException(
          "data folder",
          folder.toString(),
          "putting the backup back has begun and could not be ended: once the folder can be"
              + " written to again, the next command ends it",
          TroubleException.Kept.MAYBE);
    }
  }

  @Override
  public void close() throws IOException {
    try (held) {
      settle();
    }
  }

  /** Finishes what was decided and throws away what was not. */
  private void settle() throws IOException {
    Path decided = folder.resolve(DECIDED);
    if (Files.isDirectory(decided, LinkOption.NOFOLLOW_LINKS)) {
      for (String name : names(decided)) {
        if (Files.isRegularFile(decided.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
          if (name.equals(DataFolder.STORE)) {
            FileSum.of(folder.resolve(name)).forget();
          }
          OwnerOnly.folder(folder.resolve(name).getParent());
          Files.move(
              decided.resolve(name),
              folder.resolve(name),
              StandardCopyOption.REPLACE_EXISTING,
              StandardCopyOption.ATOMIC_MOVE);
        }
      }
    }
    delete(decided);
    delete(folder.resolve(BEING_MADE));
  }

  private static List<String> names(Path decided) throws IOException {
    List<String> names = new ArrayList<>(DealersFiles.in(decided));
    names.add(0, DataFolder.STORE);
    return names;
  }

  /**
   * Does what a program that was killed in a data folder left to do.
   *
   * @throws TroubleException when it cannot be done
   */
  public static void clear(Path folder) {
    try {
      clearAway(folder);
    } catch (IOException e) {
      throw new TroubleException(
          "data folder",
          folder.toString(),
          "what an earlier restore left in it cannot be cleared away: " + e.getMessage(),
          TroubleException.Kept.NOTHING);
    }
  }

  private static void clearAway(Path folder) throws IOException {
    if (Files.exists(folder.resolve(BEING_MADE), LinkOption.NOFOLLOW_LINKS)
        || Files.exists(folder.resolve(DECIDED), LinkOption.NOFOLLOW_LINKS)) {
      Held held = Held.take(folder.resolve(HOLD), StandardOpenOption.CREATE).orElse(null);
      if (held != null) {
        new Replacement(folder, held).close();
      }
    }
    UnfinishedFile.clear(folder);
    UnfinishedFile.clear(DataFolder.backups(folder));
  }

  private static void delete(Path tree) throws IOException {
    if (Files.exists(tree, LinkOption.NOFOLLOW_LINKS)) {
      Scratch.delete(tree);
    }
  }
}
