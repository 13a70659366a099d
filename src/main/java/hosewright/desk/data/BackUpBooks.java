package hosewright.desk.data;

import hosewright.desk.Books;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/** Copies the books into one file. */
public final class BackUpBooks {
  private final Supplier<Books> books;

  public BackUpBooks(Supplier<Books> books) {
    this.books = books;
  }

  /** The copy made. */
  public record BackedUp(String file, long bytes) {}

  /**
   * The copy.
   *
   * @param file where to; empty for a place in the data folder
   * @throws hosewright.problem.BadInputException when the file is there already or cannot be
   *     written
   */
  public BackedUp backUp(Optional<Path> file) {
    try (Books open = books.get()) {
      Path written = open.backUp(file);
      return new BackedUp(written.toString(), Files.size(written));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
