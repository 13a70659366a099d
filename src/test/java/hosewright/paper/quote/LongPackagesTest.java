package hosewright.paper.quote;

import hosewright.paper.page.Paper;
import hosewright.paper.sheet.Spreadsheet;
import hosewright.paper.sheet.WorkbookReader;
import hosewright.quote.RandomPackage;
import hosewright.quote.terms.Dealer;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Five hundred random packages through a second spreadsheet program. */
@Tag("long")
final class LongPackagesTest {
  private static final Dealer DEALER =
      new Dealer("An invented dealer", List.of("Quay"), "", "", "");

  /** As many as a busy machine recalculates while one start of LibreOffice is waited for. */
  private static final int TOGETHER = 25;

  @Test
  void five_hundred_random_packages_come_to_what_a_plain_reckoning_says(@TempDir Path folder)
      throws Exception {
    for (int from = 0; from < 500; from += TOGETHER) {
      hold(Files.createDirectories(folder.resolve("from-" + from)), from);
    }
  }

  private static void hold(Path folder, int from) throws Exception {
    List<Path> files = new ArrayList<>();
    for (int seed = from; seed < from + TOGETHER; seed++) {
      Path file = folder.resolve("package-" + seed + ".xlsx");
      try (OutputStream out = Files.newOutputStream(file)) {
        QuoteWorkbook.write(RandomPackage.of(new Random(seed)).quote(), DEALER, Paper.LETTER, out);
      }
      files.add(file);
    }
    List<Path> recalculated = Spreadsheet.in(folder).recalculated(files);
    for (int i = 0; i < TOGETHER; i++) {
      try (XSSFWorkbook workbook = WorkbookReader.open(recalculated.get(i))) {
        PackageSums.hold(workbook, RandomPackage.of(new Random(from + i)));
      }
    }
  }
}
