package hosewright.door.shell.screen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Files and folders for completion. */
public final class FileNames {
  private FileNames() {}

  /** What can follow the name typed so far; folders end in a slash. */
  public static List<String> beginning(String typed) {
    String parent = typed.substring(0, typed.lastIndexOf('/') + 1);
    try (Stream<Path> entries = Files.list(Path.of(parent.isEmpty() ? "." : parent))) {
      return entries
          .map(e -> parent + e.getFileName() + (Files.isDirectory(e) ? "/" : ""))
          .filter(name -> name.startsWith(typed))
          .sorted()
          .toList();
    } catch (IOException | InvalidPathException e) {
      return List.of();
    }
  }
}
