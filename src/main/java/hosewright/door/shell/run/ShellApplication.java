package hosewright.door.shell.run;

import hosewright.door.shell.command.CommandIndex;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Standard;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.logging.LogManager;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;

/** Starts the program around one set of arguments and gives its exit code. */
public final class ShellApplication {
  private ShellApplication() {}

  /**
   * Runs a command, a script or the interactive shell, whichever the arguments ask for.
   *
   * @param commands what the program can do besides help, version and quit
   * @return 0 done, 2 bad input, 3 no safe plan, 1 our fault
   */
  public static int run(
      String[] args, Greeting greeting, BiFunction<Workspace, Notices, List<Command>> commands) {
    // Libraries log through java.util.logging; none of it is for the user's console.
    LogManager.getLogManager().reset();
    Standard standard = Standard.ofProcess();
    Workspace workspace = new Workspace(System.getenv());
    FailureReport failures = new FailureReport(workspace, standard);
    try {
      // Put together by hand: an application context takes as long to start as a command to answer.
      CommandRegistry registry = new CommandRegistry(new LinkedHashSet<>());
      CommandIndex index = new CommandIndex(registry, workspace);
      Set.of(new HelpCommand(index), new VersionCommand(), new QuitCommand())
          .forEach(registry::registerCommand);
      commands.apply(workspace, new Notices(standard)).forEach(registry::registerCommand);
      CommandRunner runner = new CommandRunner(registry, new CommandLineParser(index), failures);
      return new SessionRunner(runner, index, workspace, standard, failures, greeting).run(args);
    } catch (RuntimeException | Error failure) {
      List<String> words = List.of(args);
      return failures.of(
          failure,
          TypedNames.NONE,
          words.contains("--json"),
          words.contains("--verbose"),
          "",
          standard.screen());
    }
  }
}
