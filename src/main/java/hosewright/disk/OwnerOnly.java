package hosewright.disk;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a program keeps for itself, closed to other users of the machine.
 *
 * <p>Where a file system knows no owners, files are made as it makes them.
 */
public final class OwnerOnly {
  private static final Set<PosixFilePermission> FOLDER =
      PosixFilePermissions.fromString("rwx------");
  private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");

  private OwnerOnly() {}

  /**
   * A folder, made for its owner alone where there is none; one that is there stays as it is.
   *
   * @throws IOException when it cannot be made
   */
  public static Path folder(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      return folder;
    }
    Path above = folder.toAbsolutePath().getParent();
    if (above != null) {
      Files.createDirectories(above);
    }
    try {
      return Files.createDirectory(folder, attributes(folder, FOLDER));
    } catch (FileAlreadyExistsException e) {
      if (Files.isDirectory(folder)) {
        return folder;
      }
      throw e;
    }
  }

  /** What a new file is made with. */
  public static FileAttribute<?>[] newFile(Path file) {
    return attributes(file, FILE);
  }

  /**
   * Makes a file of a library's making the owner's alone, empty where there is none yet; one that
   * is there already is closed too.
   */
  public static void file(Path file) throws IOException {
    try {
      Files.createFile(file, newFile(file));
    } catch (FileAlreadyExistsException e) {
      PosixFileAttributeView view = view(file, LinkOption.NOFOLLOW_LINKS);
      if (view != null && view.readAttributes().isRegularFile()) {
        view.setPermissions(FILE);
      }
    }
  }

  /** Whether anybody but its owner may read or change a file, or look into a folder. */
  public static boolean isOpenToOthers(Path path) throws IOException {
    PosixFileAttributeView view = view(path);
    if (view == null) {
      return false;
    }
    Set<PosixFilePermission> others = EnumSet.copyOf(view.readAttributes().permissions());
    others.removeAll(FOLDER);
    return !others.isEmpty();
  }

  private static FileAttribute<?>[] attributes(Path path, Set<PosixFilePermission> permissions) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)}
        : new FileAttribute<?>[0];
  }

  private static PosixFileAttributeView view(Path path, LinkOption... options) {
    return Files.getFileAttributeView(path, PosixFileAttributeView.class, options);
  }
}
