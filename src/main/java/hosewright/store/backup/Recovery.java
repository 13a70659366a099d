package hosewright.store.backup;

import hosewright.problem.RefusalException;
import hosewright.store.database.BooksCheck.Damaged;
import hosewright.store.database.Database;
import hosewright.store.folder.DataFolder;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the backups of a data folder would do for damaged books.
 *
 * @param passedOver newer backups than the one named, none of which would help
 */
public record Recovery(Optional<Offer> offer, List<PassedOver> passedOver) {
  public Recovery {
    passedOver = List.copyOf(passedOver);
  }

  /**
   * The newest backup that reads as it was written from its first row to its last.
   *
   * @param holdings what it holds of each thing that is damaged, in their order
   * @param lost what is in the books and would not be there any more, kind by kind
   */
  public record Offer(Path file, Instant made, List<String> holdings, List<Lost> lost) {
    public Offer {
      holdings = List.copyOf(holdings);
      lost = List.copyOf(lost);
    }
  }

  /**
   * Rows written since a backup was.
   *
   * @param thing of what kind they are: quote, stock
   * @param rows how many were added or changed
   * @param gone the papers and customers among them that the backup does not have at all
   * @param goBack those it has as they stood then
   */
  public record Lost(String thing, long rows, List<String> gone, List<String> goBack) {
    public Lost {
      gone = List.copyOf(gone);
      goBack = List.copyOf(goBack);
    }
  }

  /** A backup that would not help, and why. */
  public record PassedOver(Path file, String why) {}

  /**
   * Reads the backups of a folder, newest first, up to one that is sound.
   *
   * @param books as they are, damaged
   */
  public static Recovery of(Database books, Path folder, List<Damaged> damaged) {
    List<PassedOver> passedOver = new ArrayList<>();
    for (Path file : DataFolder.backupsNewestFirst(folder)) {
      try {
        Optional<Offer> offer =
            books.asItIs().steadily(steady -> offer(file, steady, damaged, passedOver));
        if (offer.isPresent()) {
          return new Recovery(offer, passedOver);
        }
      } catch (RefusalException e) {
        passedOver.add(new PassedOver(file, e.getMessage()));
      }
    }
    return new Recovery(Optional.empty(), passedOver);
  }

  private static Optional<Offer> offer(
      Path file, Database books, List<Damaged> damaged, List<PassedOver> passedOver) {
    Comparing comparing = new Comparing(file, books.context(), damaged);
    new BackupReader(file, Limits.USUAL).read(comparing);
    if (comparing.damagedRows() > 0) {
      passedOver.add(
          new PassedOver(
              file,
              "it was made of damaged books: %d of its rows".formatted(comparing.damagedRows())));
      return Optional.empty();
    }
    return Optional.of(new Offer(file, comparing.made(), comparing.holdings(), comparing.lost()));
  }
}
