package hosewright.door.shell.run;

import hosewright.door.shell.command.GlobalOptions;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Output;
import hosewright.problem.BadInputException;
import java.io.BufferedReader;
import java.io.IOException;

/** Runs commands line by line, without prompts, until one fails or to the end. */
final class Script {
  private static final int LONGEST_LINE = 64 * 1024;

  private final CommandRunner commands;
  private final Output out;

  Script(CommandRunner commands, Output out) {
    this.commands = commands;
    this.out = out;
  }

  /**
   * Runs every line; blank lines and lines that begin with # are passed over.
   *
   * @param name put before line numbers when a line fails; empty for standard input
   * @param keepGoing whether lines after one that failed are run too
   * @return the exit code of the first line that failed, else 0
   */
  int run(BufferedReader lines, GlobalOptions session, String name, boolean keepGoing)
      throws IOException {
    int number = 0;
    int exitCode = Answer.DONE;
    for (String line = line(lines); line != null; line = line(lines)) {
      number++;
      // A byte order mark is left by some editors at the very start.
      String command = (number == 1 ? line.replaceFirst("^\uFEFF", "") : line).strip();
      if (command.isEmpty() || command.startsWith("#")) {
        continue;
      }
      CommandRunner.Outcome outcome =
          commands.line(
              command, session, out, SessionRunner.NOBODY, name + "line " + number + ": ");
      if (exitCode == Answer.DONE) {
        exitCode = outcome.exitCode();
      }
      if (outcome.leave() || (exitCode != Answer.DONE && !keepGoing)) {
        return exitCode;
      }
    }
    return exitCode;
  }

  /** The next line, null at the end; one that never ends is given up before it fills memory. */
  private static String line(BufferedReader lines) throws IOException {
    StringBuilder line = new StringBuilder();
    int character = lines.read();
    if (character < 0) {
      return null;
    }
    while (character >= 0 && character != '\n') {
      if (line.length() == LONGEST_LINE) {
        throw new BadInputException(
            "line", line.toString(), "a line of at most " + LONGEST_LINE + " characters");
      }
      line.append((char) character);
      character = lines.read();
    }
    return line.toString();
  }
}
