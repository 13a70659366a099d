package hosewright.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder of this process alone, for files that end with it: made when first needed under a name
 * nobody can know beforehand, removed at exit.
 */
public final class Scratch {
  private static Path folder;

  private Scratch() {}

  /** A new file, empty. */
  public static Path file(String prefix, String suffix) throws IOException {
    return Files.createTempFile(folder(), prefix, suffix);
  }

  /** A new folder, empty. */
  public static Path folder(String prefix) throws IOException {
    return Files.createTempDirectory(folder(), prefix);
  }

  /** Made anew where whatever tidies the system's temporary files took it away. */
  private static synchronized Path folder() throws IOException {
    if (folder == null) {
      Runtime.getRuntime().addShutdownHook(new Thread(Scratch::remove));
    }
    if (folder == null || !Files.isDirectory(folder)) {
      folder = Files.createTempDirectory("hosewright-");
    }
    return folder;
  }

  private static void remove() {
    try {
      delete(folder);
    } catch (IOException e) {
      // What is left lies in a folder that only its owner can enter.
      return;
    }
  }

  /** Removes a folder with all that is in it; links in it are removed, not followed. */
  public static void delete(Path folder) throws IOException {
    List<Path> inside;
    try (Stream<Path> files = Files.walk(folder)) {
      inside = files.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : inside) {
      Files.deleteIfExists(file);
    }
  }
}
