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

  @Test
  void five_hundred_random_packages_come_to_what_a_plain_reckoning_says(@TempDir Path folder)
      throws Exception {
    Spreadsheet spreadsheet = Spreadsheet.in(folder);
    List<Path> files = new ArrayList<>();
    for (int seed = 0; seed < 500; seed++) {
      Path file = folder.resolve("package-" + seed + ".xlsx");
      try (OutputStream out = Files.newOutputStream(file)) {
        QuoteWorkbook.write(RandomPackage.of(new Random(seed)).quote(), DEALER, Paper.LETTER, out);
      }
      files.add(file);
    }
    List<Path> recalculated = spreadsheet.recalculated(files);
    for (int seed = 0; seed < 500; seed++) {
      try (XSSFWorkbook workbook = WorkbookReader.open(recalculated.get(seed))) {
        PackageSums.hold(workbook, RandomPackage.of(new Random(seed)));
      }
    }
  }
}
