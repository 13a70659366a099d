package hosewright.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A small text file, read whole: never more of it than is allowed, whatever it says it holds. */
public final class SmallFile {
  private SmallFile() {}

  /**
   * Its text.
   *
   * @return empty when there is more of it
   * @throws java.nio.charset.CharacterCodingException when it is not UTF-8
   */
  public static Optional<String> text(Path file, int mostBytes) throws IOException {
    // A pipe or a device has no size to ask for.
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(mostBytes + 1);
      return bytes.length > mostBytes
          ? Optional.empty()
          : Optional.of(
              StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    }
  }
}
