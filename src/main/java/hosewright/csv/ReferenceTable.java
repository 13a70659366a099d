package hosewright.csv;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the tables of facts that come with the program. */
public final class ReferenceTable {
  private static final String FOLDER = "/hosewright/reference/";
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private ReferenceTable() {}

  /**
   * The rows of a table.
   *
   * @param file path below the folder of reference tables, for example {@code threads/families.csv}
   */
  public static <T> List<T> rows(String file, Function<CSVRecord, T> row) {
    String path = FOLDER + file;
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(ReferenceTable.class.getResourceAsStream(path), path),
            StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).stream().map(row).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  /** A cell that holds a number or nothing. */
  public static OptionalDouble number(CSVRecord row, String column) {
    String text = row.get(column);
    return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
  }

  /** The entries of a cell that holds a list. */
  public static List<String> list(CSVRecord row, String column, String separator) {
    String text = row.get(column);
    return text.isEmpty() ? List.of() : List.of(text.split(separator, -1));
  }
}
