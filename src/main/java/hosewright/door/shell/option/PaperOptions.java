package hosewright.door.shell.option;

import hosewright.desk.NamedPath;
import hosewright.desk.Papers;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.paper.page.Paper;
import hosewright.problem.BadInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** How commands are told which papers to write, on what paper and into which folder. */
public final class PaperOptions {
  private PaperOptions() {}

  /** The options that say where papers go and how. */
  public static OptionSpec[] options() {
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
  public static Papers papers(String option, String kinds, Invocation in) {
    return new Papers(Papers.kinds(option, kinds), paper(in), folder(in), in.flag("overwrite"));
  }

  public static Paper paper(Invocation in) {
    String text = in.value("paper").orElse("letter");
    return Arrays.stream(Paper.values())
        .filter(paper -> paper.name().equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(() -> new BadInputException("paper", text, "letter or a4"));
  }

  public static Path folder(Invocation in) {
    String folder =
        in.value("out").orElseGet(() -> Files.isDirectory(Path.of("quotes")) ? "quotes" : ".");
    return NamedPath.of("out", folder, "the name of a folder");
  }

  public static String said(List<String> files) {
    return "Wrote " + String.join("\nand   ", files);
  }
}
