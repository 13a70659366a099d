package hosewright.intake;

import hosewright.problem.BadInputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/** A small text file, read whole: never more of it than is allowed, whatever it says it holds. */
public final class SmallFile {
  private SmallFile() {}

  /**
   * Its text, or what is wrong with it in the words of whoever named it.
   *
   * @param field what the file was named behind
   * @param what what it should be, such as "a text file"
   * @throws BadInputException when it is a folder, not there, too large or not UTF-8
   */
  public static String named(String field, Path file, String what, int mostKib) {
    Supplier<BadInputException> tooLarge =
        () ->
            new BadInputException(field, file.toString(), what + " of at most " + mostKib + " KiB");
    if (Files.isDirectory(file)) {
      throw tooLarge.get();
    }
    try {
      return text(file, mostKib * 1024).orElseThrow(tooLarge);
    } catch (CharacterCodingException e) {
      throw new BadInputException(field, file.toString(), what + " in UTF-8");
    } catch (IOException e) {
      throw new BadInputException(field, file.toString(), what + " that is there to be read");
    }
  }

  /**
   * Its text.
   *
   * @return empty when there is more of it
   * @throws CharacterCodingException when it is not UTF-8
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
