package hosewright.command;

import hosewright.desk.NamedPath;
import hosewright.desk.Papers;
import hosewright.problem.BadInputException;
import hosewright.report.Paper;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** How commands are told which papers to write, on what paper and into which folder. */
final class PaperOptions {
  private PaperOptions() {}

  /** The options that say where papers go and how. */
  static OptionSpec[] options() {
    return new OptionSpec[] {
      OptionSpec.value("out", "FOLDER", "where to put papers")
          .withDefaultSaid("the folder quotes, where there is one, else here")
          .completingFiles(),
      OptionSpec.value("paper", "SIZE", "letter or a4")
          .withDefaultSaid("letter")
          .completing("letter", "a4"),
      OptionSpec.flag("overwrite", "replace files that are there already")
    };
  }

  /**
   * The papers asked for.
   *
   * @param option the option that names the kinds
   * @throws BadInputException for a kind or paper there is none of
   */
  static Papers papers(String option, String kinds, Invocation in) {
    return new Papers(Papers.kinds(option, kinds), paper(in), folder(in), in.flag("overwrite"));
  }

  static Paper paper(Invocation in) {
    String text = in.value("paper").orElse("letter");
    return Arrays.stream(Paper.values())
        .filter(paper -> paper.name().equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(() -> new BadInputException("paper", text, "letter or a4"));
  }

  static Path folder(Invocation in) {
    String folder =
        in.value("out").orElseGet(() -> Files.isDirectory(Path.of("quotes")) ? "quotes" : ".");
    return NamedPath.of("out", folder, "the name of a folder");
  }

  static String said(List<String> files) {
    return "Wrote " + String.join("\nand   ", files);
  }
}
