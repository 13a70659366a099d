package hosewright.line;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads this package's tables of facts. */
final class ReferenceRows {
  private ReferenceRows() {}

  static List<CSVRecord> of(String file) {
    String path = "/hosewright/reference/line/" + file;
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(ReferenceRows.class.getResourceAsStream(path), path),
            StandardCharsets.UTF_8)) {
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      return format.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
