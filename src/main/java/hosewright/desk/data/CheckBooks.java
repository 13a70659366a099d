package hosewright.desk.data;

import hosewright.desk.BooksPlace;
import hosewright.store.backup.Recovery;
import hosewright.store.database.BooksCheck;
import hosewright.store.database.BooksCheck.Checked;
import hosewright.store.database.Database;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reads everything in the books and says what is damaged, what the last backup would bring back of
 * it, and what putting it back would lose.
 */
public final class CheckBooks {
  private final BooksPlace place;

  public CheckBooks(BooksPlace place) {
    this.place = place;
  }

  /**
   * What was found.
   *
   * @param changed whether the store's file was changed since it was last closed, by a disk or a
   *     person
   * @param rows how many were read
   * @param backup the newest one that would help; null where there is none in the usual place, and
   *     where nothing is damaged
   * @param passedOver newer ones that would not
   */
  public record Found(
      boolean sound,
      boolean changed,
      long rows,
      List<Damaged> damaged,
      LastBackup backup,
      List<PassedOver> passedOver) {}

  /**
   * Something that is damaged.
   *
   * @param thing what it is: a quote, a price
   * @param named which
   * @param inBackup what the backup has of it; null where there is none
   */
  public record Damaged(String thing, String named, String what, String inBackup) {}

  /**
   * A backup that would help.
   *
   * @param written the moment it was, as ISO 8601 has it
   * @param lost what was written to the books since and would go, kind by kind
   */
  public record LastBackup(String file, String written, List<Lost> lost) {}

  /**
   * Rows of a kind that putting a backup back would lose.
   *
   * @param gone the papers and customers among them that would be there no more
   * @param goBack those that would stand as they did then
   */
  public record Lost(String thing, long rows, List<String> gone, List<String> goBack) {}

  /** A backup that would not help, and why. */
  public record PassedOver(String file, String why) {}

  /**
   * Reads it all. Books found sound are taken as they are from then on.
   *
   * @throws hosewright.problem.TroubleException when the store cannot be opened at all
   */
  public Found check() {
    try (Database open =
        place
            .server()
            .map(server -> Database.open(server, place.folder()))
            .orElseGet(() -> Database.openAsItIs(place.folder()))) {
      Checked checked = BooksCheck.of(open);
      return checked.damaged().isEmpty()
          ? new Found(true, checked.changed(), checked.rows(), List.of(), null, List.of())
          : damaged(checked, Recovery.of(open, place.where(), checked.damaged()));
    }
  }

  private static Found damaged(Checked checked, Recovery recovery) {
    Optional<List<String>> holdings = recovery.offer().map(Recovery.Offer::holdings);
    List<Damaged> damaged =
        IntStream.range(0, checked.damaged().size())
            .mapToObj(
                i -> told(checked.damaged().get(i), holdings.map(all -> all.get(i)).orElse(null)))
            .toList();
    return new Found(
        false,
        checked.changed(),
        checked.rows(),
        damaged,
        recovery.offer().map(CheckBooks::told).orElse(null),
        recovery.passedOver().stream()
            .map(one -> new PassedOver(one.file().toString(), one.why()))
            .toList());
  }

  private static Damaged told(BooksCheck.Damaged one, String inBackup) {
    return new Damaged(one.thing(), one.named(), one.what(), inBackup);
  }

  private static LastBackup told(Recovery.Offer offer) {
    return new LastBackup(
        offer.file().toString(),
        offer.made().toString(),
        offer.lost().stream()
            .map(one -> new Lost(one.thing(), one.rows(), one.gone(), one.goBack()))
            .toList());
  }
}
