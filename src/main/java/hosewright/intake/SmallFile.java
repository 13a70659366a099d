package hosewright.intake;

import hosewright.disk.BoundedFile;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A small text file, read whole: never more of it than is allowed, whatever it says it holds. */
public final class SmallFile {
  /** What is said of a folder, a pipe or a device behind what should lie there. */
  private static final String NO_OTHER = ", and no folder, pipe or device";

  private SmallFile() {}

  /**
   * Its text, or what is wrong with it in the words of whoever named it.
   *
   * @param field what the file was named behind
   * @param what what it should be, such as "a text file"
   * @throws BadInputException when it is a folder, a pipe or a device, not there, too large or not
   *     UTF-8
   */
  public static String named(String field, Path file, String what, int mostKib) {
    return named(field, file, what, mostKib, missing -> "");
  }

  /**
   * Its text, or what is wrong with it, as above.
   *
   * @param meant what was probably meant where it is not there; empty where nothing is like it
   */
  static String named(
      String field, Path file, String what, int mostKib, Function<Path, String> meant) {
    if (BoundedFile.isOther(file)) {
      throw new BadInputException(field, file.toString(), what + NO_OTHER);
    }
    try {
      return text(file, mostKib * 1024)
          .orElseThrow(
              () ->
                  new BadInputException(
                      field, file.toString(), what + " of at most " + mostKib + " KiB"));
    } catch (CharacterCodingException e) {
      throw new BadInputException(field, file.toString(), what + " in UTF-8");
    } catch (IOException e) {
      String missing = what + " that is there to be read";
      throw new BadInputException(
          List.of(new Problem(field, file.toString(), missing, meant.apply(file))));
    }
  }

  /**
   * Its text.
   *
   * @return empty when there is more of it
   * @throws CharacterCodingException when it is not UTF-8
   * @throws IOException when it cannot be read, or is a folder, a pipe or a device
   */
  public static Optional<String> text(Path file, int mostBytes) throws IOException {
    Optional<byte[]> bytes = BoundedFile.bytes(file, mostBytes);
    return bytes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes.get())).toString());
  }
}
