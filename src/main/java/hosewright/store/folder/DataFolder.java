package hosewright.store.folder;

import hosewright.disk.DiskTrouble;
import hosewright.disk.OwnerOnly;
import hosewright.problem.BadInputException;
import hosewright.problem.TroubleException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A data folder: by which names it holds what, and whether it can be used. */
public final class DataFolder {
  /** The file of the embedded store. */
  public static final String STORE = "store.mv.db";

  private DataFolder() {}

  /** Where backups go when no other place is named. */
  public static Path backups(Path folder) {
    return folder.resolve("backups");
  }

  /**
   * A data folder by its whole path, made if it is not there yet.
   *
   * @throws BadInputException when it cannot be used
   */
  public static Path usable(Path dataFolder) {
    Path folder = dataFolder.toAbsolutePath().normalize();
    if (folder.toString().contains(";")) {
      throw new BadInputException("data folder", folder.toString(), "a path without semicolons");
    }
    try {
      OwnerOnly.folder(folder);
    } catch (IOException e) {
      throw new BadInputException(
          "data folder", folder.toString(), "a folder that can be made or is there already");
    }
    if (!Files.isWritable(folder)) {
      throw new BadInputException(
          "data folder", folder.toString(), "a folder that may be written to");
    }
    return folder;
  }

  /** What is told where the system would not change the files of a data folder. */
  public static TroubleException trouble(Path folder, IOException refused) {
    return new TroubleException(
        "data folder",
        folder.toString(),
        DiskTrouble.words(refused),
        TroubleException.Kept.NOTHING);
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
