package hosewright.store.backup;

import hosewright.store.folder.DealersFiles;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a backup is laid out: a zip whose parts are plain UTF-8 text, each line ended by a line feed,
 * cells parted by tabs.
 *
 * <ol>
 *   <li>{@code hosewright-backup.txt}: form, schema version, program and time.
 *   <li>{@code highest-numbers.txt}: a series of papers and the highest number ever used, a line.
 *   <li>The files a dealer keeps beside the store, byte for byte; {@code kits/NAME.txt} for each
 *       kit, from form 3 on.
 *   <li>{@code tables/NAME.txt} for each table, parents first: a line of {@code COLUMN type}, then
 *       a line for each row in the order of its key; {@link CellType} says how cells are written.
 *   <li>{@code manifest.txt}: of each part before it name, rows, bytes and SHA-256, and on the last
 *       line the SHA-256 of the lines above.
 * </ol>
 *
 * <p>It is written and read from front to back: nothing need be held whose size grows with the
 * books.
 */
final class Layout {
  /** Form 1 was a copy of the embedded store's own file; form 2 had no kits. */
  static final int FORM = 3;

  /** The oldest form that can be put back. */
  static final int OLDEST = 2;

  static final String HEAD = "hosewright-backup.txt";
  static final String NUMBERS = "highest-numbers.txt";
  static final String MANIFEST = "manifest.txt";

  private static final Pattern TABLE =
      Pattern.compile("tables/(?<name>[a-z][a-z0-9_]{0,59})\\.txt");

  private Layout() {}

  /** The name of a table's part. */
  static String part(String table) {
    return "tables/" + table.toLowerCase(Locale.ROOT) + ".txt";
  }

  /** The table a part is of, as the store writes it; empty for another part. */
  static Optional<String> table(String part) {
    Matcher name = TABLE.matcher(part);
    return name.matches()
        ? Optional.of(name.group("name").toUpperCase(Locale.ROOT))
        : Optional.empty();
  }

  static boolean isDealersFile(String part) {
    return DealersFiles.is(part);
  }

  /** How many bytes a dealer's file may have. */
  static int most(String part, Limits limits) {
    return DealersFiles.isKit(part)
        ? Math.min(DealersFiles.MOST_KIT_BYTES, limits.besideBytes())
        : limits.besideBytes();
  }

  /** Whether a file with this part was a backup of form 1, or a script of the embedded store. */
  static boolean isOfFormBefore(String part) {
    return part.endsWith(".mv.db") || part.endsWith(".sql");
  }
}
