package hosewright.shell;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.ExitCodeGenerator;
import org.springframework.shell.core.InputReader;

/**
 * Decides from the arguments what to run: nothing and a terminal, the interactive shell; nothing
 * and no terminal, a script from standard input; {@code @file}, a script; else one command.
 */
final class SessionRunner implements ApplicationRunner, ExitCodeGenerator {
  /** Where no person can be asked. */
  static final InputReader NOBODY = new InputReader() {};

  private final CommandRunner commands;
  private final CommandIndex index;
  private final Workspace workspace;
  private final Standard standard;
  private final FailureReport failures;
  private int exitCode;

  SessionRunner(
      CommandRunner commands,
      CommandIndex index,
      Workspace workspace,
      Standard standard,
      FailureReport failures) {
    this.commands = commands;
    this.index = index;
    this.workspace = workspace;
    this.standard = standard;
    this.failures = failures;
  }

  @Override
  public void run(ApplicationArguments arguments) {
    List<String> words = List.of(arguments.getSourceArgs());
    try {
      exitCode = run(words);
    } catch (Exception e) {
      exitCode = failures.of(e, words.contains("--json"), words.contains("--verbose"), "");
    }
  }

  @Override
  public int getExitCode() {
    return exitCode;
  }

  private int run(List<String> words) throws IOException {
    GlobalOptions session = GlobalOptions.of(words);
    workspace.choose(session.data(), session.db());
    List<String> rest = session.rest();
    if (!rest.isEmpty() && rest.get(0).startsWith("@")) {
      return scriptFile(rest, session);
    }
    if (!rest.isEmpty() || session.help() || session.version()) {
      return oneCommand(words);
    }
    if (standard.terminal()) {
      return interactive(session);
    }
    try (BufferedReader lines = standard.in()) {
      return new Script(commands, standard.out()).run(lines, session, "");
    }
  }

  private int oneCommand(List<String> words) {
    if (!standard.terminal()) {
      return commands.run(words, standard.out(), NOBODY).exitCode();
    }
    try (TerminalAsker asker = new TerminalAsker()) {
      return commands.run(words, standard.out(), asker).exitCode();
    }
  }

  private int interactive(GlobalOptions session) {
    try (TerminalAsker asker = new TerminalAsker()) {
      return new InteractiveShell(commands, index, workspace, asker, standard).run(session);
    }
  }

  private int scriptFile(List<String> words, GlobalOptions session) throws IOException {
    String name = words.get(0).substring(1);
    if (words.size() > 1) {
      throw new BadInputException("word", words.get(1), "nothing may follow a script's name");
    }
    try (BufferedReader lines = Files.newBufferedReader(Path.of(name), StandardCharsets.UTF_8)) {
      return new Script(commands, standard.out()).run(lines, session, name + " ");
    } catch (IOException | InvalidPathException e) {
      throw new BadInputException(
          List.of(Problem.of("script", name, "give @ and a text file that can be read")));
    }
  }
}
