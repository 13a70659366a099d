package hosewright.desk;

import hosewright.csv.CsvFile;
import hosewright.disk.BoundedFile;
import hosewright.problem.BadInputException;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The dealer's register of local threads, a file in the data folder that the dealer edits. */
public record LocalRegister(Path file) {
  private static final String EXAMPLE =
      "Port Harlow,2.5,PCT,2026-01-31,thread gauge on two hydrants";

  public static LocalRegister in(Path dataFolder) {
    return new LocalRegister(dataFolder.resolve(LocalThreads.FILE));
  }

  /**
   * What the register says.
   *
   * @return empty when none is kept
   * @throws BadInputException naming every cell that is wrong
   */
  public Optional<LocalThreads> read() {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    if (BoundedFile.isOther(file)) {
      throw new BadInputException(
          "file", file.toString(), "a file that may be read, and no folder, pipe or device");
    }
    try (Reader text = CsvFile.utf8(Files.newInputStream(file))) {
      return Optional.of(LocalThreads.read(text));
    } catch (IOException e) {
      throw new BadInputException("file", file.toString(), "a file that can be read");
    }
  }

  public String howTo() {
    return "To keep one, make "
        + file
        + " with the header line '"
        + String.join(",", LocalThreads.COLUMNS)
        + "' and lines such as '"
        + EXAMPLE
        + "'";
  }
}
