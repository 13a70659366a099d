package hosewright.desk;

import hosewright.disk.OwnerOnly;
import hosewright.disk.WholeFile;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.problem.NoSuchThingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The dealer's kits: plain text files beside the books that anybody may edit. */
public final class Kits {
  private static final String ENDING = ".txt";
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

  private final Path folder;

  private Kits(Path folder) {
    this.folder = folder;
  }

  /** The kits kept in a data folder. */
  public static Kits in(Path dataFolder) {
    return new Kits(dataFolder.resolve("kits"));
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
    return new Kit(name, TextLines.read("kit", file));
  }

  /** The names of all kits, in order. */
  public List<String> names() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(ENDING))
          .map(file -> file.substring(0, file.length() - ENDING.length()))
          .sorted()
          .toList();
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
    if (Files.exists(file(name)) && !overwrite) {
      throw new BadInputException(
          "kit",
          typed,
          "a name that is not taken, or " + Given.as("overwrite") + "; quotes made before stay");
    }
    try {
      OwnerOnly.folder(folder);
      WholeFile.put(file(name), String.join("\n", lines) + "\n", true);
    } catch (IOException e) {
      throw new BadInputException("kit", folder.toString(), "a folder that can be written to");
    }
    return new Kit(name, lines);
  }

  private Path file(String name) {
    return folder.resolve(name + ENDING);
  }

  private static String name(String typed) {
    String name = typed.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    if (!NAME.matcher(name).matches()) {
      throw new BadInputException(
          "kit", typed, "a name of letters, digits and hyphens, 40 at most, such as engine-locker");
    }
    return name;
  }
}
