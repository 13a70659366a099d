package hosewright.door.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file of a dealer's in which one cell says something at the edge of what cells may say.
 *
 * @param command loads the folder of the file
 */
record CellAtTheEdge(Path file, String command, int column, String value, String before) {
  private static final List<String> EDGES =
      List.of(
          "",
          "0",
          "1",
          "0.00000001",
          "0.9999",
          "999999999.99",
          "2147483647",
          "0001-01-01",
          "9999-12-31",
          "yes",
          "x".repeat(200));

  /** Every column of every file of a folder with every edge. */
  static List<CellAtTheEdge> in(Path folder, String command) throws IOException {
    List<CellAtTheEdge> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String text = Files.readString(file);
        int columns = records(text).get(0).size();
        for (int column = 0; column < columns; column++) {
          for (String edge : EDGES) {
            all.add(new CellAtTheEdge(file, command, column, edge, text));
          }
        }
      }
    }
    return all;
  }

  /** Lets the first row below the heads say it. */
  void put() throws IOException {
    List<CSVRecord> records = records(before);
    StringBuilder text = new StringBuilder();
    for (int row = 0; row < records.size(); row++) {
      List<String> cells = new ArrayList<>(records.get(row).toList());
      if (row == 1) {
        cells.set(column, value);
      }
      text.append(CSVFormat.DEFAULT.format(cells.toArray())).append('\n');
    }
    Files.writeString(file, text);
  }

  void putBack() throws IOException {
    Files.writeString(file, before);
  }

  private static List<CSVRecord> records(String text) throws IOException {
    try (CSVParser parser = CSVParser.parse(text, CSVFormat.DEFAULT)) {
      return parser.getRecords();
    }
  }
}
