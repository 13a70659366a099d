package hosewright.paper.sheet;

import hosewright.disk.Scratch;
import java.io.File;
import java.io.IOException;
import org.apache.poi.util.TempFile;
import org.apache.poi.util.TempFileCreationStrategy;

/**
 * Where the rows of streamed sheets lie until their workbook is written.
 *
 * <p>POI's own choice is a folder of a known name that all users of a machine share: whoever makes
 * it first keeps the others out, or reads what they write.
 */
public final class SheetScratch implements TempFileCreationStrategy {
  static {
    TempFile.setTempFileCreationStrategy(new SheetScratch());
  }

  private SheetScratch() {}

  /** Sees to it that POI writes nowhere else, from here on. */
  public static void use() {
    // Loading this class did it.
  }

  @Override
  public File createTempFile(String prefix, String suffix) throws IOException {
    return Scratch.file(prefix, suffix).toFile();
  }

  @Override
  public File createTempDirectory(String prefix) throws IOException {
    return Scratch.folder(prefix).toFile();
  }
}
