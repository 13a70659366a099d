package hosewright.desk.end;

import hosewright.desk.NamedPath;
import hosewright.desk.Refusals;
import hosewright.paper.page.Export;
import hosewright.problem.BadInputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * An SVG file that a drawing is wanted in.
 *
 * @param name as somebody named it
 * @param overwrite whether a file that is there already may be replaced
 */
public record PictureFile(String name, boolean overwrite) {
  private static final String FIELD = "picture";

  /**
   * The place, looked at but not yet written to.
   *
   * @throws BadInputException when it does not end in .svg, cannot be written, or is there already
   */
  Export place() {
    return Refusals.named(FIELD, this::looked);
  }

  private Export looked() {
    if (!name.toLowerCase(Locale.ROOT).endsWith(".svg")) {
      throw new BadInputException(FIELD, name, "the name of a file that ends in .svg");
    }
    Path file = NamedPath.of(FIELD, name, "the name of a file");
    Path folder = Optional.ofNullable(file.getParent()).orElse(Path.of("."));
    return Export.to(folder, file.getFileName().toString(), overwrite);
  }

  /** Draws into the place, if there is one; gives the path as text, null where there is none. */
  static String draw(Optional<Export> place, Supplier<String> svg) {
    if (place.isEmpty()) {
      return null;
    }
    Export.Body drawn = Export.text(svg.get());
    try {
      return place.get().write(drawn).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
