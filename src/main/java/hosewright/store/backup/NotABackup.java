package hosewright.store.backup;

import hosewright.problem.BadInputException;
import java.nio.file.Path;

/** Says of a file why it is no backup that can be put back. */
record NotABackup(Path file) {

  /** For a reason, such as {@code it is damaged}. */
  BadInputException because(String why) {
    return new BadInputException(
        "backup", file.toString(), "a file that 'data backup' wrote; " + why);
  }

  /** The way out for backups of the form before. */
  BadInputException ofFormBefore() {
    return new BadInputException(
        "backup",
        file.toString(),
        "a backup of form %d or later; this one is of the form before, a database file, in which"
                .formatted(Layout.OLDEST)
            + " somebody"
            + " could hide what runs when it is opened: put it back with the version of hosewright"
            + " that wrote it, then open those books with this one and back them up again");
  }

  /** What stands in a place, cut where it is long. */
  static String quoted(String text) {
    return "'" + (text.length() > 60 ? text.substring(0, 60) + "..." : text) + "'";
  }
}
