package hosewright.command;

import hosewright.desk.end.PictureFile;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import java.util.Optional;

/** How commands are told into which SVG file to draw. */
final class PictureOptions {
  private static final String NAME = "picture";

  private PictureOptions() {}

  static OptionSpec[] options() {
    return new OptionSpec[] {
      OptionSpec.value(NAME, "FILE.svg", "also draw it into this file").completingFiles(),
      OptionSpec.flag("overwrite", "replace the file if it is there already")
    };
  }

  /** The file asked for; empty for none. */
  static Optional<PictureFile> picture(Invocation in) {
    return in.value(NAME).map(name -> new PictureFile(name, in.flag("overwrite")));
  }
}
