package hosewright.fault;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.Set;

/**
 * A folder that turns read-only in the middle of something: what is changed in it through {@link
 * ViewedPath}s goes through for so many steps, and is refused from then on as the system refuses
 * it.
 *
 * <p>Permissions would not do: whoever may do anything is not held by them.
 */
final class TurningFolder extends FileSystemProvider {
  private final FileSystemProvider real = Path.of("").getFileSystem().provider();
  private final FileSystem files = new ViewedFiles(this);
  private How how = How.CLOSED_TO_US;
  private int stepsLeft = Integer.MAX_VALUE;

  /** What becomes of it. */
  enum How {
    /** Nothing may be made, removed or named anew in it any more; open files are still written. */
    CLOSED_TO_US,
    /** The system found its disk faulty and writes nothing to it at all any more. */
    DISK_READ_ONLY
  }

  /** A path of the real folder as it looks through here. */
  Path view(Path path) {
    return ViewedPath.of(path, files);
  }

  void turn(How into, int after) {
    how = into;
    stepsLeft = after;
  }

  void turnBack() {
    stepsLeft = Integer.MAX_VALUE;
  }

  /** A change of the folder itself. */
  private void step(Path path) throws IOException {
    if (stepsLeft == 0) {
      throw how == How.CLOSED_TO_US
          ? new AccessDeniedException(path.toString())
          : readOnly(path.toString());
    }
    stepsLeft--;
  }

  /** A change of a file that is open. */
  void write(String file) throws IOException {
    if (how == How.DISK_READ_ONLY) {
      if (stepsLeft == 0) {
        throw readOnly(file);
      }
      stepsLeft--;
    }
  }

  /** The words of the system's EROFS. */
  private static FileSystemException readOnly(String file) {
    return new FileSystemException(file, null, "Read-only file system");
  }

  @Override
  public ViewedChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    Path file = ViewedPath.real(path);
    if (!Collections.disjoint(
            options, Set.of(StandardOpenOption.CREATE, StandardOpenOption.CREATE_NEW))
        && !Files.exists(file)) {
      step(file);
    } else if (options.contains(StandardOpenOption.WRITE)
        || options.contains(StandardOpenOption.APPEND)) {
      write(file.toString());
    }
    return new ViewedChannel(real.newFileChannel(file, options, attributes), this, file.toString());
  }

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    return newFileChannel(path, options, attributes);
  }

  @Override
  public DirectoryStream<Path> newDirectoryStream(
      Path folder, DirectoryStream.Filter<? super Path> filter) throws IOException {
    return ViewedFiles.listing(
        real.newDirectoryStream(ViewedPath.real(folder), path -> filter.accept(view(path))),
        this::view);
  }

  @Override
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    step(folder);
    real.createDirectory(ViewedPath.real(folder), attributes);
  }

  @Override
  public void delete(Path path) throws IOException {
    // A disk that is read-only is found out before the file is looked for, the other way not.
    if (how == How.DISK_READ_ONLY || Files.exists(ViewedPath.real(path))) {
      step(path);
    }
    real.delete(ViewedPath.real(path));
  }

  @Override
  public void copy(Path from, Path to, CopyOption... options) throws IOException {
    step(to);
    real.copy(ViewedPath.real(from), ViewedPath.real(to), options);
  }

  @Override
  public void move(Path from, Path to, CopyOption... options) throws IOException {
    step(to);
    real.move(ViewedPath.real(from), ViewedPath.real(to), options);
  }

  @Override
  public void checkAccess(Path path, AccessMode... modes) throws IOException {
    if (Arrays.asList(modes).contains(AccessMode.WRITE) && stepsLeft == 0) {
      throw new AccessDeniedException(path.toString());
    }
    real.checkAccess(ViewedPath.real(path), modes);
  }

  @Override
  public boolean isSameFile(Path one, Path other) throws IOException {
    return real.isSameFile(ViewedPath.real(one), ViewedPath.real(other));
  }

  @Override
  public boolean isHidden(Path path) throws IOException {
    return real.isHidden(ViewedPath.real(path));
  }

  @Override
  public FileStore getFileStore(Path path) throws IOException {
    return real.getFileStore(ViewedPath.real(path));
  }

  @Override
  public <V extends FileAttributeView> V getFileAttributeView(
      Path path, Class<V> type, LinkOption... options) {
    return real.getFileAttributeView(ViewedPath.real(path), type, options);
  }

  @Override
  public <A extends BasicFileAttributes> A readAttributes(
      Path path, Class<A> type, LinkOption... options) throws IOException {
    return real.readAttributes(ViewedPath.real(path), type, options);
  }

  @Override
  public Map<String, Object> readAttributes(Path path, String wanted, LinkOption... options)
      throws IOException {
    return real.readAttributes(ViewedPath.real(path), wanted, options);
  }

  @Override
  public void setAttribute(Path path, String name, Object value, LinkOption... options)
      throws IOException {
    step(path);
    real.setAttribute(ViewedPath.real(path), name, value, options);
  }

  @Override
  public String getScheme() {
    return "turning";
  }

  @Override
  public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileSystem getFileSystem(URI uri) {
    return files;
  }

  @Override
  public Path getPath(URI uri) {
    throw new UnsupportedOperationException();
  }
}
