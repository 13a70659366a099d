package hosewright.store.database;

import hosewright.disk.OwnerOnly;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A store with nothing in it, for tests of something else than how one comes to be. */
public final class MigratedStore {
  private static Path made;

  private MigratedStore() {}

  /** Puts a copy into a folder that has no store yet: running our migrations takes longer. */
  public static void into(Path folder) {
    try {
      OwnerOnly.folder(folder);
      for (Path file : made()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static synchronized List<Path> made() throws IOException {
    if (made == null) {
      made = Files.createTempDirectory("hosewright-migrated");
      made.toFile().deleteOnExit();
      Database.open(made).close();
      files().forEach(file -> file.toFile().deleteOnExit());
    }
    return files();
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(made)) {
      return files.toList();
    }
  }
}
