package hosewright.door.shell.screen;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * How large the terminal of this process is.
 *
 * @param columns across
 * @param lines down
 */
record TerminalSize(int columns, int lines) {
  private static final TerminalSize USUAL = new TerminalSize(80, 24);
  private static final int NARROWEST = 20;

  /** What the environment says, else what the terminal says, else what is usual. */
  static TerminalSize of(Map<String, String> environment) {
    TerminalSize asked =
        said(environment.getOrDefault("LINES", ""), environment.getOrDefault("COLUMNS", ""))
            .or(TerminalSize::asked)
            .orElse(USUAL);
    String columns = environment.getOrDefault("COLUMNS", "");
    return columns.matches("[1-9][0-9]{1,3}")
        ? new TerminalSize(Integer.parseInt(columns), asked.lines())
        : asked;
  }

  /** A library for terminals would tell as well, but takes longer to start than a command. */
  private static Optional<TerminalSize> asked() {
    try {
      Process process =
          new ProcessBuilder("stty", "size")
              .redirectInput(new File("/dev/tty"))
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      String[] sides = told.strip().split(" ");
      return process.waitFor(1, TimeUnit.SECONDS) && sides.length == 2
          ? said(sides[0], sides[1])
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  private static Optional<TerminalSize> said(String lines, String columns) {
    return lines.matches("[1-9][0-9]{0,3}") && columns.matches("[1-9][0-9]{1,3}")
        ? Optional.of(
            new TerminalSize(
                Math.max(NARROWEST, Integer.parseInt(columns)), Integer.parseInt(lines)))
        : Optional.empty();
  }
}
