package hosewright.desk.end;

import hosewright.paper.drawing.StripPdf;
import hosewright.paper.page.Export;
import hosewright.paper.page.Paper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;

/** Prints a strip to cut out and wrap round a male thread, in true size. */
public final class PrintStrip {

  /** The file written, and the paper it is for in lower case. */
  public record Strip(String file, String paper) {}

  /**
   * The strip, written.
   *
   * @throws hosewright.problem.BadInputException when it cannot be put there
   */
  public Strip print(Paper paper, Path folder, boolean overwrite) {
    String size = paper.name().toLowerCase(Locale.ROOT);
    Export place = Export.to(folder, "thread-strip-" + size + ".pdf", overwrite);
    try {
      Path file = place.write(out -> StripPdf.write(paper, out));
      return new Strip(file.toString(), size);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
