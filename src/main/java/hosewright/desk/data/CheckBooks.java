package hosewright.desk.data;

import hosewright.desk.Books;
import hosewright.desk.BooksPlace;
import hosewright.store.database.BooksCheck;
import hosewright.store.folder.DataFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Supplier;

/** Reads everything in the books and says what is damaged, and what a backup would bring back. */
public final class CheckBooks {
  private final Supplier<Books> books;
  private final BooksPlace place;

  public CheckBooks(Supplier<Books> books, BooksPlace place) {
    this.books = books;
    this.place = place;
  }

  /**
   * What was found.
   *
   * @param changed whether the store's file was changed since it was last closed, by a disk or a
   *     person
   * @param rows how many were read
   * @param backup the newest known; null where none was made in the usual place
   */
  public record Found(
      boolean sound,
      boolean changed,
      long rows,
      List<BooksCheck.Damaged> damaged,
      LastBackup backup) {}

  /** A backup and the moment it was written, as ISO 8601 has it. */
  public record LastBackup(String file, String written) {}

  /**
   * Reads it all. Books found sound are taken as they are from then on.
   *
   * @throws hosewright.problem.TroubleException when the store cannot be opened at all
   */
  public Found check() {
    try (Books open = books.get()) {
      BooksCheck.Checked checked = open.check();
      return new Found(
          checked.damaged().isEmpty(),
          checked.changed(),
          checked.rows(),
          checked.damaged(),
          DataFolder.lastBackup(place.where()).map(CheckBooks::described).orElse(null));
    }
  }

  private static LastBackup described(Path backup) {
    try {
      return new LastBackup(
          backup.toString(),
          Files.getLastModifiedTime(backup).toInstant().truncatedTo(ChronoUnit.SECONDS).toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
