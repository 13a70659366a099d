package hosewright.csv;

import hosewright.problem.BadInputException;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The rows of a CSV file one by one, for files too long to hold. */
public final class CsvStream implements Iterator<CsvStream.Line>, AutoCloseable {
  private final String name;
  private final RowByRow rows;
  private final CSVParser parser;
  private final Iterator<CSVRecord> records;
  private final List<String> header;
  private Line next;

  /**
   * @param number the line the row begins on, 1 for the header's
   * @param cells what stands in it, without the blanks around each
   */
  public record Line(long number, List<String> cells) {}

  /**
   * Reads the header.
   *
   * @param name the file's name, for what is said about it
   * @throws BadInputException when the file is empty or no CSV text
   */
  public CsvStream(String name, Reader text) {
    this.name = name;
    try {
      this.rows = new RowByRow(text);
      this.parser = CSVParser.builder().setReader(rows).setFormat(CsvText.format(',')).get();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    this.records = parser.iterator();
    Line first = read();
    if (first == null) {
      throw new BadInputException(name, "", "a header line, then a row for each job");
    }
    this.header =
        first.cells().stream()
            .map(cell -> cell.replace(CsvText.BYTE_ORDER_MARK, "").strip())
            .toList();
    if (header.size() > CsvText.MOST_COLUMNS) {
      throw new BadInputException(
          name + " header", header.size() + " columns", "at most " + CsvText.MOST_COLUMNS);
    }
    this.next = read();
  }

  public List<String> header() {
    return header;
  }

  @Override
  public boolean hasNext() {
    return next != null;
  }

  /**
   * The next row that is not blank.
   *
   * @throws BadInputException when the file goes on as something else than CSV text
   */
  @Override
  public Line next() {
    if (next == null) {
      throw new NoSuchElementException();
    }
    Line now = next;
    next = read();
    return now;
  }

  private Line read() {
    try {
      while (true) {
        long number = parser.getCurrentLineNumber() + 1;
        if (!records.hasNext()) {
          return null;
        }
        CSVRecord row = records.next();
        rows.next();
        if (row.stream().anyMatch(cell -> !cell.isBlank())) {
          return new Line(number, row.stream().map(String::strip).toList());
        }
      }
    } catch (UncheckedIOException e) {
      throw CsvText.unreadable(name, e);
    }
  }

  @Override
  public void close() {
    try {
      parser.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
