package hosewright.store;

import hosewright.problem.BadInputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * The highest quote number ever used, kept in a file beside the store: putting an older store back
 * must not hand out a number that a customer already has on paper.
 */
record HighWaterMark(Path file) {

  static HighWaterMark in(Path folder) {
    return new HighWaterMark(folder.resolve("highest-quote-number.txt"));
  }

  /** 0 before the first quote. */
  int read() {
    if (!Files.exists(file)) {
      return 0;
    }
    try {
      String text = Files.readString(file).strip();
      if (!text.matches("\\d{1,9}")) {
        throw new BadInputException(
            file.toString(), text, "the highest quote number ever used, in digits");
      }
      return Integer.parseInt(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Written whole or not at all, so that a power cut leaves the old mark or the new one. */
  void write(int number) {
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    try {
      Files.writeString(fresh, number + "\n");
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
