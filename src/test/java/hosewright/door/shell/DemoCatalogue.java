package hosewright.door.shell;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The demo catalogue with its list prices changed, loaded as a dealer would load it. */
final class DemoCatalogue {
  private DemoCatalogue() {}

  /** Loads the catalogue with every list price multiplied, rounded to the cent. */
  static void loadInto(TradingDesk desk, Path folder, BigDecimal factor) throws IOException {
    Files.createDirectories(folder);
    try (Stream<Path> files = Files.list(Path.of("catalogue"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        List<String> lines = Files.readAllLines(file);
        if (file.endsWith("prices.csv")) {
          lines = lines.stream().map(line -> raised(line, factor)).toList();
        }
        Files.write(folder.resolve(file.getFileName()), lines);
      }
    }
    desk.done("catalogue", "load", folder.toString());
  }

  private static String raised(String line, BigDecimal factor) {
    String[] cells = line.split(",", -1);
    if (cells[4].equals("unit_price")) {
      return line;
    }
    cells[4] =
        new BigDecimal(cells[4]).multiply(factor).setScale(2, RoundingMode.HALF_UP).toString();
    return String.join(",", cells);
  }
}
