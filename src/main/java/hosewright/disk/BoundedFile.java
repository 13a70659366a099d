package hosewright.disk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What a file holds, read whole: never more than is allowed, and nothing from a folder, a pipe or a
 * device, of which one may keep a reader waiting for good.
 */
public final class BoundedFile {
  private BoundedFile() {}

  /** Whether something lies there that is no file. */
  public static boolean isOther(Path file) {
    return Files.exists(file) && !Files.isRegularFile(file);
  }

  /**
   * Its bytes.
   *
   * @return empty when there are more of them
   * @throws IOException when it cannot be read, or is no file
   */
  public static Optional<byte[]> bytes(Path file, int most) throws IOException {
    if (isOther(file)) {
      throw new FileSystemException(file.toString(), null, "a folder, pipe or device");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(most + 1);
      return bytes.length > most ? Optional.empty() : Optional.of(bytes);
    }
  }
}
