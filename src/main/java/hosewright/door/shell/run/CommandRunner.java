package hosewright.door.shell.run;

import hosewright.door.shell.command.GlobalOptions;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.command.Words;
import hosewright.door.shell.screen.Output;
import hosewright.door.shell.screen.Screen;
import hosewright.problem.BadInputException;
import java.util.ArrayList;
import java.util.List;
import org.springframework.shell.core.InputReader;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandExecutor;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.ParsedInput;

/** Runs one command and turns whatever comes of it into an exit code. */
final class CommandRunner {
  private final CommandRegistry registry;
  private final CommandLineParser parser;
  private final FailureReport failures;

  CommandRunner(CommandRegistry registry, CommandLineParser parser, FailureReport failures) {
    this.registry = registry;
    this.parser = parser;
    this.failures = failures;
  }

  /**
   * What came of a command.
   *
   * @param leave whether the session or script is to end here
   */
  record Outcome(int exitCode, boolean leave) {}

  /** Runs words that are already apart. */
  Outcome run(List<String> words, Output out, InputReader reader) {
    return run(words, out, reader, "", failures.screen());
  }

  /**
   * Runs a line of a session or script.
   *
   * @param session what was said when the session began; holds for every line
   * @param where put before each sentence of a failure
   */
  Outcome line(String line, GlobalOptions session, Output out, InputReader reader, String where) {
    List<String> words = new ArrayList<>();
    Output shown = out;
    if (session.json()) {
      words.add("--json");
    }
    if (session.verbose()) {
      words.add("--verbose");
    }
    try {
      List<String> typed = Words.of(line);
      GlobalOptions said = GlobalOptions.of(typed);
      refuseStores(said);
      shown = out.coloured(said.colour());
      words.addAll(typed);
    } catch (BadInputException e) {
      return new Outcome(
          failures.of(e, TypedNames.NONE, session.json(), session.verbose(), where, out.screen()),
          false);
    }
    return run(words, shown, reader, where, out.screen());
  }

  private Outcome run(
      List<String> words, Output out, InputReader reader, String where, Screen errors) {
    TypedNames names = TypedNames.NONE;
    try {
      ParsedInput input = parser.parse(words);
      names = names(input);
      CommandContext context = new CommandContext(input, registry, out, reader);
      int exitCode = new CommandExecutor(registry).execute(context).code();
      return new Outcome(exitCode, leaves(input));
    } catch (Exception | StackOverflowError | OutOfMemoryError e) {
      return new Outcome(
          failures.of(e, names, said("--json", words), said("--verbose", words), where, errors),
          false);
    }
  }

  private TypedNames names(ParsedInput input) {
    return registry.getCommandByName(input.commandName()) instanceof ShellCommand command
        ? TypedNames.of(command.spec())
        : TypedNames.NONE;
  }

  private static boolean leaves(ParsedInput input) {
    return input.commandName().equals(QuitCommand.NAME) && input.options().isEmpty();
  }

  private static boolean said(String option, List<String> words) {
    int end = words.indexOf("--");
    return (end < 0 ? words : words.subList(0, end)).contains(option);
  }

  private static void refuseStores(GlobalOptions typed) {
    if (typed.data().isPresent()) {
      throw new BadInputException(
          "--data", typed.data().get(), "the data folder is chosen once, when Hosewright starts");
    }
    if (typed.db().isPresent()) {
      throw new BadInputException(
          "--db", "", "the database is chosen once, when Hosewright starts");
    }
  }
}
