package hosewright.desk;

import hosewright.disk.OwnerOnly;
import hosewright.disk.WholeFile;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.problem.NoSuchThingException;
import hosewright.store.folder.DealersFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The dealer's kits: plain text files beside the books that anybody may edit. */
public final class Kits {
  private final Path folder;

  private Kits(Path folder) {
    this.folder = folder;
  }

  /** The kits kept in a data folder. */
  public static Kits in(Path dataFolder) {
    return new Kits(dataFolder);
  }

  /** A kit with its lines as they are written. */
  public record Kit(String name, List<String> lines) {}

  /**
   * The kit of a name.
   *
   * @throws NoSuchThingException naming the nearest
   */
  public Kit get(String typed) {
    String name = name(typed);
    Path file = file(name);
    if (!Files.exists(file)) {
      List<String> known = names();
      throw new NoSuchThingException(
          "kit",
          typed,
          known,
          known.isEmpty() ? "none is kept yet, 'kit add' keeps one" : "'kit show' lists all");
    }
    return new Kit(name, TextLines.read("kit " + name, file));
  }

  /** The names of all kits, in order. */
  public List<String> names() {
    try {
      return DealersFiles.kits(folder);
    } catch (IOException e) {
      return List.of();
    }
  }

  /**
   * Keeps a kit.
   *
   * @param overwrite whether one of that name may be replaced
   * @throws BadInputException when the name is taken or cannot be used, or a kit has no lines
   */
  public Kit keep(String typed, List<String> lines, boolean overwrite) {
    String name = name(typed);
    if (lines.isEmpty()) {
      throw new BadInputException("kit", typed, "at least one part: a kit sells something");
    }
    TextLines.requireFew("kit", typed, lines);
    if (Files.exists(file(name)) && !overwrite) {
      throw new BadInputException(
          "kit",
          typed,
          "a name that is not taken, or " + Given.as("overwrite") + "; quotes made before stay");
    }
    if (!Files.exists(file(name)) && names().size() >= DealersFiles.MOST_KITS) {
      throw new BadInputException(
          "kit", typed, "one of at most " + DealersFiles.MOST_KITS + " kits");
    }
    try {
      OwnerOnly.folder(file(name).getParent());
      WholeFile.put(file(name), String.join("\n", lines) + "\n", true);
    } catch (IOException e) {
      throw new BadInputException("kit", file(name).toString(), "a folder that can be written to");
    }
    return new Kit(name, lines);
  }

  private Path file(String name) {
    return DealersFiles.kit(folder, name);
  }

  private static String name(String typed) {
    String name = typed.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    if (!DealersFiles.isKitName(name)) {
      throw new BadInputException(
          "kit", typed, "a name of letters, digits and hyphens, 40 at most, such as engine-locker");
    }
    return name;
  }
}
