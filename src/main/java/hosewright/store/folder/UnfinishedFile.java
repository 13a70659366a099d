package hosewright.store.folder;

import hosewright.disk.WholeFile;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * A file that gets its name only when it is whole. Until then it lies beside its place under a name
 * by which whoever comes after a program that was killed knows what it left.
 */
public final class UnfinishedFile implements AutoCloseable {
  private final Path file;
  private final Held held;
  private boolean finished;

  private UnfinishedFile(Path file, Held held) {
    this.file = file;
    this.held = held;
  }

  /** An empty one in a folder, from which those of programs that are no more are taken away. */
  public static UnfinishedFile in(Path folder) throws IOException {
    clear(folder);
    Path file = folder.resolve(WholeFile.UNFINISHED + UUID.randomUUID());
    Held held = Held.take(file, StandardOpenOption.CREATE_NEW).orElseThrow();
    return new UnfinishedFile(file, held);
  }

  /** Where to write. */
  public OutputStream out() {
    return Channels.newOutputStream(held.channel());
  }

  /** Where it lies until it is finished. */
  public Path file() {
    return file;
  }

  /** Sees it onto the disk and gives it its name. */
  public void finish(Path target) throws IOException {
    held.channel().force(true);
    Files.move(file, target, StandardCopyOption.ATOMIC_MOVE);
    finished = true;
  }

  @Override
  public void close() throws IOException {
    // Let go of even where it may not be taken away, so that whoever comes next can do it.
    try (held) {
      if (!finished) {
        Files.deleteIfExists(file);
      }
    }
  }

  /** Takes away what programs that are no more left in a folder. */
  static void clear(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (DirectoryStream<Path> left =
        Files.newDirectoryStream(folder, WholeFile.UNFINISHED + "*")) {
      for (Path file : left) {
        try (Held held = Held.take(file).orElse(null)) {
          if (held != null) {
            Files.deleteIfExists(file);
          }
        } catch (NoSuchFileException e) {
          // It was finished meanwhile.
        }
      }
    }
  }
}
