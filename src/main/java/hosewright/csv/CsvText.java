package hosewright.csv;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A table kept as separated text. */
public final class CsvText implements CellRows {
  /** What was no table at all would else be refused letter by letter. */
  static final int MOST_COLUMNS = 1_000;

  static final String BYTE_ORDER_MARK = "\uFEFF";

  private final String title;
  private final Reader text;
  private final CSVFormat format;

  /**
   * @param text closed when it has been read
   */
  public CsvText(String title, Reader text) {
    this(title, text, ',');
  }

  /** Text with another mark than the comma between its cells. */
  public CsvText(String title, Reader text, char separator) {
    this.title = title;
    this.text = text;
    this.format = format(separator);
  }

  static CSVFormat format(char separator) {
    return CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreEmptyLines(true).get();
  }

  /** Texts by file name as tables by file name. */
  public static Map<String, CellRows> all(Map<String, Reader> texts) {
    Map<String, CellRows> tables = new LinkedHashMap<>();
    texts.forEach((name, text) -> tables.put(name, new CsvText(name, text)));
    return tables;
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public void each(Taker taker) {
    RowByRow rows = new RowByRow(text);
    try (CSVParser parser = CSVParser.builder().setReader(rows).setFormat(format).get()) {
      var records = parser.iterator();
      long line = 1;
      boolean more = true;
      while (more && records.hasNext()) {
        CSVRecord record = records.next();
        rows.next();
        if (record.stream().anyMatch(cell -> !cell.isBlank())) {
          more = taker.take(Row.of(line, cells(record, line)));
        }
        line = parser.getCurrentLineNumber() + 1;
      }
    } catch (UncheckedIOException e) {
      throw unreadable(title, e);
    } catch (IOException e) {
      throw unreadable(title, new UncheckedIOException(e));
    }
  }

  private static List<String> cells(CSVRecord record, long line) {
    return record.stream()
        .map(cell -> line == 1 ? cell.replace(BYTE_ORDER_MARK, "").strip() : cell.strip())
        .toList();
  }

  static RuntimeException unreadable(String title, UncheckedIOException e) {
    if (e.getCause() instanceof CharacterCodingException) {
      return new BadInputException(title, "bytes that are not UTF-8", "text saved as CSV UTF-8");
    }
    if (e.getCause() instanceof RowByRow.TooLongException tooLong) {
      return new BadInputException(title, "something longer", tooLong.getMessage());
    }
    if (e.getCause() instanceof CSVException broken) {
      return new BadInputException(
          List.of(
              Problem.of(
                  title,
                  broken.getMessage(),
                  "a cell that begins with a double quote ends with one before the next comma")));
    }
    return new BadInputException(title, "what stands there", "a text file that can be read");
  }
}
