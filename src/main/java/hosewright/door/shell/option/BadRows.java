package hosewright.door.shell.option;

import hosewright.desk.NamedPath;
import hosewright.desk.Refusals;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.paper.page.Export;
import hosewright.paper.tender.ProblemsCsv;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** Shows the first bad rows of many, and writes them all to a file where that was asked for. */
public final class BadRows {
  private static final int SHOWN = 50;

  private BadRows() {}

  public static OptionSpec[] options() {
    return new OptionSpec[] {
      OptionSpec.flag("all", "show everything, however much it is"),
      OptionSpec.value("report", "FILE", "write every bad row to a CSV file").completingFiles()
    };
  }

  /** What the reader gives; when it refuses, the report is written and the rest is capped. */
  public static <T> T reported(Invocation in, Supplier<T> reader) {
    try {
      return reader.get();
    } catch (BadInputException e) {
      Optional<Path> report =
          in.value("report")
              .map(file -> write(NamedPath.of("report", file, "the name of a file"), e.problems()));
      throw capped(e.problems(), in.flag("all"), report);
    }
  }

  private static BadInputException capped(
      List<Problem> problems, boolean all, Optional<Path> report) {
    boolean whole = all || problems.size() <= SHOWN;
    String closing =
        report
            .map(file -> count(problems.size()) + " problems in all; every one is in " + file + ".")
            .orElseGet(
                () ->
                    count(problems.size() - SHOWN)
                        + " more problems: --all shows them, --report FILE writes them to a file.");
    if (whole && report.isEmpty()) {
      return new BadInputException(problems);
    }
    return new BadInputException(whole ? problems : problems.subList(0, SHOWN), closing);
  }

  private static Path write(Path file, List<Problem> problems) {
    Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
    String name = String.valueOf(file.getFileName());
    if (!Export.safeName(name).equals(name)) {
      throw new BadInputException("report", name, "a plain file name, such as bad-rows.csv");
    }
    // Mending goes in rounds: an earlier report may be replaced, anything else may not.
    Export export = Refusals.named("report", () -> Export.to(folder, name, isReport(file)));
    try {
      return export.write(out -> ProblemsCsv.write(problems, out));
    } catch (IOException e) {
      throw new BadInputException("report", file.toString(), "a file that can be written");
    }
  }

  private static boolean isReport(Path file) {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    byte[] heading = ProblemsCsv.HEADING.getBytes(StandardCharsets.UTF_8);
    try (InputStream text = Files.newInputStream(file)) {
      return Arrays.equals(text.readNBytes(heading.length), heading)
          && "\r\n".indexOf(text.read()) >= 0;
    } catch (IOException e) {
      return false;
    }
  }

  private static String count(int number) {
    return String.format(Locale.ROOT, "%,d", number);
  }
}
