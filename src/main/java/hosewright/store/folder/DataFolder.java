package hosewright.store.folder;

import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The names of what a data folder holds. */
public final class DataFolder {
  /** The file of the embedded store. */
  public static final String STORE = "store.mv.db";

  /** A dealer's terms of sale, one sentence a line. */
  public static final String TERMS_OF_SALE = "terms.txt";

  /** What a dealer writes and keeps beside the store. */
  public static final List<String> DEALERS_FILES = List.of(LocalThreads.FILE, TERMS_OF_SALE);

  private DataFolder() {}

  /** Where backups go when no other place is named. */
  public static Path backups(Path folder) {
    return folder.resolve("backups");
  }

  /** The newest backup of a data folder that lies in the usual place. */
  public static Optional<Path> lastBackup(Path folder) {
    return backupsNewestFirst(folder).stream().findFirst();
  }

  /** The backups of a data folder that lie in the usual place. */
  public static List<Path> backupsNewestFirst(Path folder) {
    if (!Files.isDirectory(backups(folder))) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(backups(folder))) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(".zip"))
          .sorted(Comparator.comparing(Path::getFileName).reversed())
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }
}
