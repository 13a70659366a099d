package hosewright.store.database;

import hosewright.problem.TroubleException;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;

/** The store's file holds what this version never puts there, and was not opened. */
public final class ForeignStoreException extends TroubleException {
  private static final long serialVersionUID = 1;

  private static final int NAMED = 3;
  private static final int LONGEST = 70;

  /**
   * @param foreign what is not ours, as the file has it
   */
  ForeignStoreException(Path folder, Set<String> foreign) {
    super(
        "data folder",
        folder.toString(),
        "its store was not opened, because it holds what this version never makes and what could"
            + " run: "
            + foreign.stream()
                .limit(NAMED)
                .map(ForeignStoreException::shown)
                .collect(Collectors.joining("; "))
            + (foreign.size() > NAMED ? " and %d more".formatted(foreign.size() - NAMED) : "")
            + ". If a newer version wrote it, use that one; else put a backup in its place with"
            + " 'data restore', or ask whoever handed the folder over for a file that 'data backup'"
            + " wrote",
        Kept.NOTHING);
  }

  /** Written by a stranger: on one line, in plain characters and cut. */
  private static String shown(String foreign) {
    String plain = foreign.replaceAll("\\s+", " ").replaceAll("[^ -~]", "?");
    return plain.length() > LONGEST ? plain.substring(0, LONGEST) + "..." : plain;
  }
}
