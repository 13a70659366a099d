package hosewright.shell;

import hosewright.json.Json;
import hosewright.problem.BadInputException;
import hosewright.problem.FullDisk;
import hosewright.problem.Problem;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.apache.commons.lang3.exception.ExceptionUtils;
import org.apache.commons.text.WordUtils;

/** Tells the user what went wrong, in words, and gives the exit code. */
final class FailureReport {
  static final String LOG = "hosewright.log";

  private final Workspace workspace;
  private final Standard standard;

  FailureReport(Workspace workspace, Standard standard) {
    this.workspace = workspace;
    this.standard = standard;
  }

  /** The screen of the process, where no session has one of its own. */
  Screen screen() {
    return standard.screen();
  }

  /** What {@code --json} prints when a command fails. */
  record Failure(Failed error) {}

  /**
   * Why it failed.
   *
   * @param problems what is wrong with the input; empty when the input is not to blame
   */
  record Failed(String message, List<Problem> problems) {}

  /**
   * Reports a failure.
   *
   * @param json whether a JSON document is also owed on standard output
   * @param verbose whether the details are kept in the log
   * @param where put before each sentence, for example "line 3: "
   * @param screen where the sentences are read
   * @return the exit code
   */
  int of(Throwable failure, boolean json, boolean verbose, String where, Screen screen) {
    Optional<BadInputException> badInput =
        ExceptionUtils.getThrowableList(failure).stream()
            .filter(BadInputException.class::isInstance)
            .map(BadInputException.class::cast)
            .findFirst()
            .or(() -> fullDisk(failure));
    Failed failed =
        badInput
            .map(bad -> new Failed(bad.getMessage(), bad.problems()))
            .orElseGet(() -> new Failed(sentence(failure), List.of()));
    failed
        .message()
        .lines()
        .map(line -> fitted(where + line, screen))
        .forEach(standard.err()::println);
    if (badInput.isEmpty()) {
      standard
          .err()
          .println(verbose ? keep(failure) : "Add --verbose to keep the details in a log.");
    }
    if (json) {
      standard.out().println(Json.write(new Failure(failed)));
    }
    return badInput.isPresent() ? Answer.BAD_INPUT : Answer.OUR_FAULT;
  }

  private static String fitted(String line, Screen screen) {
    return screen.equals(Screen.PIPED)
        ? line
        : WordUtils.wrap(line, screen.proseWidth() - 2, "\n  ", false);
  }

  private static Optional<BadInputException> fullDisk(Throwable failure) {
    return ExceptionUtils.getThrowableList(failure).stream()
        .filter(IOException.class::isInstance)
        .map(Throwable::getMessage)
        .filter(FullDisk::isSaid)
        .findFirst()
        .map(
            said ->
                new BadInputException(
                    "disk",
                    said,
                    "a disk with room left; look whether the last step was kept before you"
                        + " repeat it"));
  }

  private static String sentence(Throwable failure) {
    Throwable root = Optional.ofNullable(ExceptionUtils.getRootCause(failure)).orElse(failure);
    String message =
        Optional.ofNullable(root.getMessage()).orElse("").lines().findFirst().orElse("");
    return "Hosewright failed, and it is not your input: "
        + root.getClass().getSimpleName()
        + (message.isEmpty() ? "" : ", " + message);
  }

  private String keep(Throwable failure) {
    try {
      Path log = workspace.folder().resolve(LOG);
      StringWriter details = new StringWriter();
      details.append(Instant.now().toString()).append('\n');
      failure.printStackTrace(new PrintWriter(details, true));
      Files.writeString(
          log, details.toString(), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
      return "The details are in " + log + ".";
    } catch (IOException | BadInputException e) {
      return "The details could not be kept: the data folder cannot be written to.";
    }
  }
}
