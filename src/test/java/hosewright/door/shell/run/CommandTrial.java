package hosewright.door.shell.run;

import hosewright.desk.LastRead;
import hosewright.door.shell.command.CommandIndex;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Output;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Standard;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;
import tools.jackson.databind.JsonNode;

/** Runs real commands one after another as a session would. */
public final class CommandTrial {
  private static final Screen EIGHTY_COLUMNS = new Screen(80, false);

  private final Workspace workspace;
  private final CommandRunner runner;
  private final LastRead lastRead = new LastRead();

  private CommandTrial(
      Map<String, String> environment, Function<CommandTrial, List<Command>> commands) {
    Standard standard = new Standard(false, StandardCharsets.UTF_8, Screen.PIPED);
    workspace = new Workspace(environment);
    CommandRegistry registry = new CommandRegistry(new LinkedHashSet<>(commands.apply(this)));
    runner =
        new CommandRunner(
            registry,
            new CommandLineParser(new CommandIndex(registry, workspace)),
            new FailureReport(workspace, standard));
  }

  /**
   * A shell with some commands.
   *
   * @param data the data folder
   * @param commands what to make, told which trial it is for
   */
  public static CommandTrial of(Path data, Function<CommandTrial, List<Command>> commands) {
    return of(data, Map.of(), commands);
  }

  /** A trial of commands with more in the environment. */
  public static CommandTrial of(
      Path data, Map<String, String> more, Function<CommandTrial, List<Command>> commands) {
    Map<String, String> environment = new HashMap<>(more);
    environment.put("HOSEWRIGHT_DATA", data.toString());
    return new CommandTrial(environment, commands);
  }

  public Workspace workspace() {
    return workspace;
  }

  /** The catalogue as the command before read it: a session has one for all its commands. */
  public LastRead lastRead() {
    return lastRead;
  }

  public Notices notices() {
    return new Notices(new Standard(false, StandardCharsets.UTF_8, Screen.PIPED));
  }

  /** What came of one command. */
  public record Ended(int exitCode, String out, String err) {

    /** Standard output as the one JSON document it must be. */
    public JsonNode json() {
      return OneDocument.in(out);
    }
  }

  /** Runs a line as it is typed, with words that belong together between apostrophes. */
  public Ended typed(String line) {
    List<String> words = new ArrayList<>();
    String[] parts = line.split("'", -1);
    for (int i = 0; i < parts.length; i++) {
      words.addAll(i % 2 == 1 ? List.of(parts[i]) : List.of(parts[i].strip().split("\\s+")));
    }
    words.removeIf(String::isEmpty);
    return run(words.toArray(String[]::new));
  }

  /** Runs words that are already apart, on a screen of 80 columns. */
  public Ended run(String... words) {
    StringWriter out = new StringWriter();
    ByteArrayOutputStream failureOut = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream usualOut = System.out;
    PrintStream usualErr = System.err;
    System.setOut(new PrintStream(failureOut, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
    try {
      int exitCode =
          runner
              .run(Arrays.asList(words), new Output(out, EIGHTY_COLUMNS), SessionRunner.NOBODY)
              .exitCode();
      return new Ended(
          exitCode,
          out + failureOut.toString(StandardCharsets.UTF_8),
          err.toString(StandardCharsets.UTF_8));
    } finally {
      System.setOut(usualOut);
      System.setErr(usualErr);
    }
  }
}
