package hosewright.door.shell.option;

import hosewright.desk.end.PictureFile;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import java.util.Optional;

/** How commands are told into which SVG file to draw. */
public final class PictureOptions {
  private static final String NAME = "picture";

  private PictureOptions() {}

  public static OptionSpec[] options() {
    return new OptionSpec[] {
      OptionSpec.value(NAME, "FILE.svg", "also draw it into this file").completingFiles(),
      OptionSpec.flag("overwrite", "replace the file if it is there already")
    };
  }

  /** The file asked for; empty for none. */
  public static Optional<PictureFile> picture(Invocation in) {
    return in.value(NAME).map(name -> new PictureFile(name, in.flag("overwrite")));
  }
}
