package hosewright.door.shell.screen;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** Opens a file in whatever program the system has for it. */
public final class SystemProgram {
  private SystemProgram() {}

  /** Whether the system took the file; it shows it on its own. */
  public static boolean opens(Path file) {
    try {
      Process process =
          new ProcessBuilder(command(System.getProperty("os.name", ""), file))
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      // Some openers stay with the program they start; what fails does so at once.
      return !process.waitFor(2, TimeUnit.SECONDS) || process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** What each system calls its opener. */
  static List<String> command(String system, Path file) {
    String path = file.toAbsolutePath().toString();
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return List.of("rundll32", "url.dll,FileProtocolHandler", path);
    }
    return List.of(name.startsWith("mac") ? "open" : "xdg-open", path);
  }
}
