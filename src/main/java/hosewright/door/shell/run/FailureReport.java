package hosewright.door.shell.run;

import hosewright.disk.DiskTrouble;
import hosewright.disk.OwnerOnly;
import hosewright.disk.WholeFile;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Standard;
import hosewright.paper.json.Json;
import hosewright.problem.FullDisk;
import hosewright.problem.Problem;
import hosewright.problem.RefusalException;
import hosewright.problem.TroubleException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
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
   * @param kind what is to be done next, as {@link Told} has it
   * @param problems what stands in the way; empty when the program is to blame
   */
  record Failed(String kind, String message, List<Problem> problems) {}

  /**
   * Reports a failure.
   *
   * @param names how the command's fields are typed
   * @param json whether a JSON document is also owed on standard output
   * @param verbose whether the details are kept in the log
   * @param where put before each sentence, for example "line 3: "
   * @param screen where the sentences are read
   * @return the exit code
   */
  int of(
      Throwable failure,
      TypedNames names,
      boolean json,
      boolean verbose,
      String where,
      Screen screen) {
    Optional<RefusalException> refusal = refusal(failure);
    Told told = refusal.map(RefusalException::kind).map(Told::of).orElse(Told.OUR_FAULT);
    Failed failed =
        new Failed(
            told.kind(),
            refusal
                .map(RefusalException::getMessage)
                .map(names::in)
                .orElseGet(() -> sentence(failure)),
            refusal.map(RefusalException::problems).orElse(List.of()).stream()
                .map(one -> allowed(one, names))
                .toList());
    failed
        .message()
        .lines()
        .map(line -> fitted(where + line, screen))
        .forEach(standard.err()::println);
    if (refusal.isEmpty()) {
      standard
          .err()
          .println(verbose ? keep(failure) : "Add --verbose to keep the details in a log.");
    }
    if (json) {
      standard.out().println(Json.write(new Failure(failed)));
    }
    return told.exitCode();
  }

  private static Problem allowed(Problem one, TypedNames names) {
    String allowed = names.in(one.allowed());
    return allowed.equals(one.allowed())
        ? one
        : new Problem(one.field(), one.value(), allowed, one.nearest());
  }

  private static Optional<RefusalException> refusal(Throwable failure) {
    return ExceptionUtils.getThrowableList(failure).stream()
        .filter(RefusalException.class::isInstance)
        .map(RefusalException.class::cast)
        .findFirst()
        .or(() -> fullDisk(failure))
        .or(() -> fileTrouble(failure));
  }

  private static String fitted(String line, Screen screen) {
    return screen.equals(Screen.PIPED)
        ? line
        : WordUtils.wrap(line, screen.proseWidth() - 2, "\n  ", false);
  }

  private static Optional<RefusalException> fullDisk(Throwable failure) {
    return ExceptionUtils.getThrowableList(failure).stream()
        .filter(IOException.class::isInstance)
        .map(Throwable::getMessage)
        .filter(FullDisk::isSaid)
        .findFirst()
        .map(
            said ->
                new TroubleException(
                    "disk", said, "it has no room left", TroubleException.Kept.MAYBE));
  }

  /** A file that the system would not give, such as a folder in its place, is no fault of ours. */
  private static Optional<RefusalException> fileTrouble(Throwable failure) {
    return ExceptionUtils.getThrowableList(failure).stream()
        .filter(FileSystemException.class::isInstance)
        .map(FileSystemException.class::cast)
        .filter(refused -> refused.getFile() != null)
        .findFirst()
        .map(
            refused ->
                new TroubleException(
                    "file",
                    refused.getFile(),
                    DiskTrouble.words(refused),
                    TroubleException.Kept.MAYBE));
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
      if (!WholeFile.mayAddTo(log)) {
        throw new FileSystemException(log.toString());
      }
      StringWriter details = new StringWriter();
      details.append(Instant.now().toString()).append('\n');
      failure.printStackTrace(new PrintWriter(details, true));
      OwnerOnly.file(log);
      Files.write(
          log,
          details.toString().getBytes(StandardCharsets.UTF_8),
          WholeFile.adding().toArray(OpenOption[]::new));
      return "The details are in " + log + ".";
    } catch (IOException | RefusalException e) {
      return "The details could not be kept: the data folder cannot be written to.";
    }
  }
}
