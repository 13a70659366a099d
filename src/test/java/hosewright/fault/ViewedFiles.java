package hosewright.fault;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.Iterator;
import java.util.Set;
import java.util.function.UnaryOperator;

/** The real file system as a folder under test shows it. */
final class ViewedFiles extends FileSystem {
  private final FileSystem real = Path.of("").getFileSystem();
  private final TurningFolder folder;

  ViewedFiles(TurningFolder folder) {
    this.folder = folder;
  }

  /** What lies in a folder, each path shown another way. */
  static DirectoryStream<Path> listing(DirectoryStream<Path> real, UnaryOperator<Path> shown) {
    return new DirectoryStream<>() {
      @Override
      public Iterator<Path> iterator() {
        Iterator<Path> paths = real.iterator();
        return new Iterator<>() {
          @Override
          public boolean hasNext() {
            return paths.hasNext();
          }

          @Override
          public Path next() {
            return shown.apply(paths.next());
          }
        };
      }

      @Override
      public void close() throws IOException {
        real.close();
      }
    };
  }

  @Override
  public FileSystemProvider provider() {
    return folder;
  }

  @Override
  public void close() {}

  @Override
  public boolean isOpen() {
    return true;
  }

  @Override
  public boolean isReadOnly() {
    return false;
  }

  @Override
  public String getSeparator() {
    return real.getSeparator();
  }

  @Override
  public Iterable<Path> getRootDirectories() {
    return real.getRootDirectories();
  }

  @Override
  public Iterable<FileStore> getFileStores() {
    return real.getFileStores();
  }

  @Override
  public Set<String> supportedFileAttributeViews() {
    return real.supportedFileAttributeViews();
  }

  @Override
  public Path getPath(String first, String... more) {
    return folder.view(real.getPath(first, more));
  }

  @Override
  public PathMatcher getPathMatcher(String pattern) {
    PathMatcher matcher = real.getPathMatcher(pattern);
    return path -> matcher.matches(ViewedPath.real(path));
  }

  @Override
  public UserPrincipalLookupService getUserPrincipalLookupService() {
    return real.getUserPrincipalLookupService();
  }

  @Override
  public WatchService newWatchService() {
    throw new UnsupportedOperationException();
  }
}
