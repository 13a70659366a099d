package hosewright.store.folder;

import hosewright.disk.BoundedFile;
import hosewright.disk.OwnerOnly;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A file that one process holds while it works, and that the system lets go of when the process
 * ends, however it ends: who finds it not held knows that nobody works there any more.
 */
final class Held implements AutoCloseable {
  private final FileChannel channel;

  private Held(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * The file; empty while another holds it.
   *
   * @param making whether it may be there, must be, or must not
   * @throws IOException when it cannot be opened, or something lies there that is no file: opening
   *     a pipe would wait for whoever reads it
   */
  static Optional<Held> take(Path file, OpenOption... making) throws IOException {
    if (BoundedFile.isOther(file)) {
      throw new FileSystemException(file.toString(), null, "no file, but a folder, pipe or device");
    }
    Set<OpenOption> options = new HashSet<>(List.of(making));
    options.add(StandardOpenOption.WRITE);
    options.add(LinkOption.NOFOLLOW_LINKS);
    FileChannel channel = FileChannel.open(file, options, OwnerOnly.newFile(file));
    try {
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return Optional.of(new Held(channel));
      }
    } catch (OverlappingFileLockException e) {
      // Another thread of this process holds it.
    } catch (IOException e) {
      channel.close();
      throw e;
    }
    channel.close();
    return Optional.empty();
  }

  FileChannel channel() {
    return channel;
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
