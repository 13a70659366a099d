package hosewright.desk.data;

import hosewright.desk.Books;
import java.nio.file.Path;
import java.util.function.Supplier;

/** Puts a backup back, and keeps what stood there as a backup. */
public final class RestoreBooks {
  private final Supplier<Books> books;

  public RestoreBooks(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * A backup put back.
   *
   * @param before where the books that stood there were put; null when there were none
   */
  public record Restored(String file, String before) {}

  /**
   * Puts it back.
   *
   * @throws hosewright.problem.BadInputException when the file is no sound backup; nothing has
   *     changed then
   */
  public Restored restore(Path file) {
    try (Books open = books.get()) {
      return new Restored(file.toString(), open.restore(file).map(Path::toString).orElse(null));
    }
  }
}
