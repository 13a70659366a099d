package hosewright.door.shell.screen;

import java.io.BufferedReader;
import java.io.Console;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;

/**
 * The process's input and output as the shell sees them.
 *
 * @param terminal whether a person is at both ends of it
 * @param charset how text is written: what the terminal reads, else UTF-8
 */
public record Standard(boolean terminal, Charset charset, Screen screen) {
  @SuppressWarnings("SystemConsoleNull")
  public // null up to Java 21, asked for a terminal after
  static Standard ofProcess() {
    Console console = System.console();
    boolean terminal = console != null && isTerminal(console);
    Charset charset = terminal ? console.charset() : StandardCharsets.UTF_8;
    return new Standard(terminal, charset, screen(terminal, System.getenv()));
  }

  static Screen screen(boolean terminal, Map<String, String> environment) {
    boolean colour =
        terminal
            && environment.getOrDefault("NO_COLOR", "").isEmpty()
            && !"dumb".equals(environment.get("TERM"));
    if (terminal) {
      return new Screen(TerminalSize.of(environment).columns(), colour);
    }
    String columns = environment.getOrDefault("COLUMNS", "");
    return columns.matches("[1-9][0-9]{1,3}")
        ? new Screen(Integer.parseInt(columns), colour)
        : Screen.PIPED;
  }

  // From Java 22 on a console is given even where no terminal is; only then it can be asked.
  private static boolean isTerminal(Console console) {
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException olderJava) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }

  public BufferedReader in() {
    return new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
  }

  /** For answers longer than a terminal of so many lines; empty where no person reads. */
  public Optional<Pager> pager(IntSupplier lines) {
    return terminal ? Optional.of(new Pager(lines, charset, System.getenv())) : Optional.empty();
  }

  public Output out() {
    return new Output(
        System.out, charset, screen, pager(() -> TerminalSize.of(System.getenv()).lines()));
  }

  public Output err() {
    return new Output(System.err, charset, screen, Optional.empty());
  }
}
