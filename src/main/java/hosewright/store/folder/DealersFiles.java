package hosewright.store.folder;

import hosewright.problem.BadInputException;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a dealer writes and keeps beside the store, and what goes into a backup with it: the
 * register of local threads, the terms of sale, and the kits.
 *
 * <p>Short forms of commands are a person's own and stay out: whoever puts back a backup from
 * somebody else should not find their commands changed.
 */
public final class DealersFiles {
  /** A dealer's terms of sale, one sentence a line. */
  public static final String TERMS_OF_SALE = "terms.txt";

  /** More would go into no backup. */
  public static final int MOST_KITS = 1000;

  /** More is no list of parts. */
  public static final int MOST_KIT_BYTES = 64 * 1024;

  private static final List<String> SINGLE = List.of(LocalThreads.FILE, TERMS_OF_SALE);
  private static final String KITS = "kits";
  private static final String ENDING = ".txt";
  private static final Pattern KIT = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

  private DealersFiles() {}

  /** Whether a kit may be called so. */
  public static boolean isKitName(String name) {
    return KIT.matcher(name).matches();
  }

  /** The file of a kit. */
  public static Path kit(Path folder, String name) {
    return folder.resolve(KITS).resolve(name + ENDING);
  }

  /** The names of the kits kept in a data folder, in order; other files there are none. */
  public static List<String> kits(Path folder) throws IOException {
    Path kits = folder.resolve(KITS);
    if (!Files.isDirectory(kits)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(kits)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(ENDING))
          .map(file -> file.substring(0, file.length() - ENDING.length()))
          .filter(DealersFiles::isKitName)
          .sorted()
          .toList();
    }
  }

  /** Whether a file of this name in a data folder is one of these. */
  public static boolean is(String name) {
    return SINGLE.contains(name) || isKit(name);
  }

  /** Whether a file of this name in a data folder is a kit. */
  public static boolean isKit(String name) {
    return name.startsWith(KITS + "/")
        && name.endsWith(ENDING)
        && isKitName(name.substring(KITS.length() + 1, name.length() - ENDING.length()));
  }

  /**
   * The names of those that are in a data folder.
   *
   * @throws BadInputException when there are more kits than a backup takes
   */
  public static List<String> in(Path folder) throws IOException {
    List<String> names = new ArrayList<>(SINGLE);
    List<String> kits = kits(folder);
    if (kits.size() > MOST_KITS) {
      throw new BadInputException(
          "kits", folder.resolve(KITS).toString(), "a folder of at most " + MOST_KITS + " kits");
    }
    kits.forEach(kit -> names.add(KITS + "/" + kit + ENDING));
    names.removeIf(name -> !Files.isRegularFile(folder.resolve(name)));
    return names;
  }

  /**
   * Sees that those made ready in one folder can take the places of those in another.
   *
   * @throws FileSystemException when something else lies in the place of the kits
   */
  static void requireRoom(Path from, Path to) throws FileSystemException {
    Path place = to.resolve(KITS);
    if (Files.exists(from.resolve(KITS), LinkOption.NOFOLLOW_LINKS)
        && Files.exists(place, LinkOption.NOFOLLOW_LINKS)
        && !Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileSystemException(place.toString(), null, "no folder, but a file or a link");
    }
  }
}
