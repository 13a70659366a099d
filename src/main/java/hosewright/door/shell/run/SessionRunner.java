package hosewright.door.shell.run;

import hosewright.door.shell.command.CommandIndex;
import hosewright.door.shell.command.GlobalOptions;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Output;
import hosewright.door.shell.screen.Standard;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.springframework.shell.core.InputReader;

/**
 * Decides from the arguments what to run: nothing and a terminal, the interactive shell; nothing
 * and no terminal, a script from standard input; {@code @file}, a script; else one command.
 */
final class SessionRunner {
  /** Said with a script: a line that fails does not end it. */
  static final String KEEP_GOING = "--keep-going";

  /** Where no person can be asked. */
  static final InputReader NOBODY = new InputReader() {};

  private final CommandRunner commands;
  private final CommandIndex index;
  private final Workspace workspace;
  private final Standard standard;
  private final FailureReport failures;
  private final Greeting greeting;

  SessionRunner(
      CommandRunner commands,
      CommandIndex index,
      Workspace workspace,
      Standard standard,
      FailureReport failures,
      Greeting greeting) {
    this.commands = commands;
    this.index = index;
    this.workspace = workspace;
    this.standard = standard;
    this.failures = failures;
    this.greeting = greeting;
  }

  /** Runs what the arguments ask for and gives the exit code. */
  int run(String[] args) {
    List<String> words = List.of(args);
    try {
      return run(words);
    } catch (Exception e) {
      return failures.of(
          e,
          TypedNames.NONE,
          words.contains("--json"),
          words.contains("--verbose"),
          "",
          standard.screen());
    }
  }

  private int run(List<String> words) throws IOException {
    GlobalOptions session = GlobalOptions.of(words);
    workspace.choose(session.data(), session.db());
    List<String> others = session.rest().stream().filter(word -> !word.equals(KEEP_GOING)).toList();
    boolean keepGoing = others.size() < session.rest().size() && isScript(others);
    List<String> rest = keepGoing ? others : session.rest();
    if (!rest.isEmpty() && isScript(rest)) {
      return scriptFile(rest, session, keepGoing);
    }
    if (!rest.isEmpty() || session.help() || session.version()) {
      return oneCommand(words, out(session));
    }
    if (standard.terminal()) {
      return interactive(session);
    }
    try (BufferedReader lines = standard.in()) {
      return new Script(commands, out(session)).run(lines, session, "", keepGoing);
    }
  }

  /** A script's name, or nothing, where standard input may be one. */
  private static boolean isScript(List<String> words) {
    return words.isEmpty() || words.get(0).startsWith("@");
  }

  private Output out(GlobalOptions session) {
    return standard.out().coloured(session.colour());
  }

  private int oneCommand(List<String> words, Output out) {
    if (!standard.terminal()) {
      return commands.run(words, out, NOBODY).exitCode();
    }
    try (TerminalAsker asker = new TerminalAsker()) {
      return commands.run(words, out, asker).exitCode();
    }
  }

  private int interactive(GlobalOptions session) {
    try (TerminalAsker asker = new TerminalAsker()) {
      return new InteractiveShell(commands, index, workspace, asker, standard, greeting)
          .run(session);
    }
  }

  private int scriptFile(List<String> words, GlobalOptions session, boolean keepGoing)
      throws IOException {
    String name = words.get(0).substring(1);
    if (words.size() > 1) {
      throw new BadInputException("word", words.get(1), "nothing may follow a script's name");
    }
    try (BufferedReader lines = Files.newBufferedReader(Path.of(name), StandardCharsets.UTF_8)) {
      return new Script(commands, out(session)).run(lines, session, name + " ", keepGoing);
    } catch (IOException | InvalidPathException e) {
      throw new BadInputException(
          List.of(Problem.of("script", name, "give @ and a text file that can be read")));
    }
  }
}
