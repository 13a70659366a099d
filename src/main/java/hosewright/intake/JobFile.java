package hosewright.intake;

import hosewright.disk.WholeFile;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A job kept in a file; what the file says is a {@link JobText}. */
public final class JobFile {
  /** No job needs more; a larger file is something else. */
  private static final int MOST_KIB = 64;

  private static final String SUFFIX = ".yaml";

  private JobFile() {}

  /** A job file as it was read, with its text. */
  public record Read(LayoutText layout, String text) {

    /**
     * The answers of a file of one line.
     *
     * @throws BadInputException when the file lists legs
     */
    public Map<JobField, String> answers() {
      return JobText.oneLine(layout);
    }
  }

  /**
   * The answers in a file.
   *
   * @throws BadInputException when the file cannot be read, is not YAML or has unknown words
   */
  public static Read read(Path file) {
    String text = SmallFile.named("job", file, "a job file", MOST_KIB, JobFile::beside);
    Optional<Path> folder = Optional.ofNullable(file.toAbsolutePath().getParent());
    return new Read(withRoutes(JobText.layout(text), folder), text);
  }

  private static LayoutText withRoutes(LayoutText layout, Optional<Path> folder) {
    return new LayoutText(
        RouteFile.putInto(layout.answers(), folder),
        layout.legs().stream()
            .map(leg -> leg.saying(RouteFile.putInto(leg.answers(), folder)))
            .toList(),
        layout.points(),
        layout.beside());
  }

  /**
   * The file that a job is kept in under a name, which may leave out what all are called.
   *
   * @throws java.nio.file.InvalidPathException where no file can be called so
   */
  public static Path named(String name) {
    return Path.of(name.endsWith(SUFFIX) ? name : name + SUFFIX);
  }

  /** The job file in the same folder that was probably meant. */
  private static String beside(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    Path name = file.getFileName();
    if (folder == null || name == null) {
      return "";
    }
    try (Stream<Path> there = Files.list(folder)) {
      String meant =
          Nearest.to(
              name.toString(),
              there
                  .map(one -> one.getFileName().toString())
                  .filter(one -> one.endsWith(SUFFIX))
                  .toList());
      return meant.isEmpty() ? "" : file.resolveSibling(meant).toString();
    } catch (IOException e) {
      return "";
    }
  }

  /**
   * Writes a new job file.
   *
   * @throws BadInputException when the file is there already or cannot be written
   */
  public static void save(Path file, Map<JobField, String> answers) {
    WholeFile.refuseLink("job", file);
    try {
      Files.writeString(
          file, JobText.write(answers), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (FileAlreadyExistsException e) {
      throw new BadInputException(
          "job", file.toString(), "a file that is not there yet: give another name");
    } catch (IOException e) {
      throw new BadInputException(
          "job", file.toString(), "a file in a folder that can be written to");
    }
  }

  /** Writes answers that may still grow, in place of those kept there before. */
  public static void keep(Path file, Map<JobField, String> answers) {
    try {
      WholeFile.put(file, JobText.write(answers), false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Removes answers that were kept and are no longer needed. */
  public static void forget(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
