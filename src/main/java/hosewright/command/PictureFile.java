package hosewright.command;

import hosewright.desk.NamedPath;
import hosewright.desk.Refusals;
import hosewright.problem.BadInputException;
import hosewright.report.Export;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** Puts a drawing into the SVG file that was asked for. */
final class PictureFile {
  private static final String OPTION = "picture";

  private PictureFile() {}

  static OptionSpec[] options() {
    return new OptionSpec[] {
      OptionSpec.value(OPTION, "FILE.svg", "also draw it into this file").completingFiles(),
      OptionSpec.flag("overwrite", "replace the file if it is there already")
    };
  }

  /**
   * The file asked for, looked at but not yet written.
   *
   * @throws BadInputException when it does not end in .svg, cannot be written, or is there already
   */
  static Optional<Export> place(Invocation in) {
    return in.value(OPTION)
        .map(name -> Refusals.named(OPTION, () -> place(name, in.flag("overwrite"))));
  }

  private static Export place(String name, boolean overwrite) {
    if (!name.toLowerCase(Locale.ROOT).endsWith(".svg")) {
      throw new BadInputException(OPTION, name, "the name of a file that ends in .svg");
    }
    Path file = NamedPath.of(OPTION, name, "the name of a file");
    Path folder = Optional.ofNullable(file.getParent()).orElse(Path.of("."));
    return Export.to(folder, file.getFileName().toString(), overwrite);
  }

  /** Draws into the place, if there is one; gives the path as text. */
  static String draw(Optional<Export> place, Supplier<String> svg) {
    if (place.isEmpty()) {
      return null;
    }
    byte[] bytes = svg.get().getBytes(StandardCharsets.UTF_8);
    try {
      return place.get().write(out -> out.write(bytes)).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
