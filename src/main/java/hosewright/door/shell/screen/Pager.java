package hosewright.door.shell.screen;

import java.io.File;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;

/** Shows text that is longer than the terminal in the user's own program for that. */
public final class Pager {
  private static final String USUAL = "less";

  private final IntSupplier height;
  private final Charset charset;
  private final Map<String, String> environment;

  /**
   * @param height lines of the terminal, asked for when there is something to show
   */
  public Pager(IntSupplier height, Charset charset, Map<String, String> environment) {
    this.height = height;
    this.charset = charset;
    this.environment = environment;
  }

  /** Shows a text if it is long; false where it still has to be printed. */
  boolean shows(String text) {
    Optional<String> program = program();
    if (program.isEmpty() || text.lines().count() < height.getAsInt()) {
      return false;
    }
    ProcessBuilder builder =
        new ProcessBuilder("sh", "-c", program.get())
            .redirectOutput(ProcessBuilder.Redirect.INHERIT)
            .redirectError(ProcessBuilder.Redirect.INHERIT);
    // Colours pass; nothing else is chosen for a user who has chosen.
    builder.environment().putIfAbsent("LESS", "-R");
    try {
      Process shown = builder.start();
      feed(shown, text);
      // 126 and 127: the shell found no such program.
      return shown.waitFor() < 126;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return true;
    }
  }

  private void feed(Process shown, String text) {
    try (Writer in = new OutputStreamWriter(shown.getOutputStream(), charset)) {
      in.write(text);
      in.write('\n');
    } catch (IOException e) {
      // Whoever has read enough leaves before the end.
    }
  }

  private Optional<String> program() {
    String named = environment.getOrDefault("PAGER", "");
    return named.isBlank() ? Optional.of(USUAL).filter(this::isThere) : Optional.of(named);
  }

  private boolean isThere(String program) {
    return Arrays.stream(environment.getOrDefault("PATH", "").split(File.pathSeparator))
        .filter(folder -> !folder.isBlank())
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }
}
