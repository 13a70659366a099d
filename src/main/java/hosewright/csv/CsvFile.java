package hosewright.csv;

import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of one CSV file with a header line, read whole, each cell knowing where it stands.
 *
 * <p>The header must name exactly the columns asked for, in any order. A file whose header is wrong
 * gives no rows: guessing what its cells mean would bury the one real problem under many.
 */
public final class CsvFile {
  static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
  static final String BYTE_ORDER_MARK = "\uFEFF";

  private final String name;
  private final List<CsvRow> rows;
  private final boolean understood;

  private CsvFile(String name, List<CsvRow> rows, boolean understood) {
    this.name = name;
    this.rows = List.copyOf(rows);
    this.understood = understood;
  }

  /**
   * Text of a file that must be UTF-8; anything else makes {@link #read} say so instead of turning
   * letters into question marks.
   */
  public static Reader utf8(InputStream bytes) {
    return new InputStreamReader(
        bytes,
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT));
  }

  /**
   * Reads a file; whatever is wrong with it is added to {@code problems}.
   *
   * @param files what was given, by file name
   * @param name the file wanted, for example {@code items.csv}
   * @param columns its columns
   */
  public static CsvFile read(
      Map<String, Reader> files, String name, List<String> columns, List<Problem> problems) {
    Reader text = files.get(name);
    if (text == null) {
      problems.add(
          Problem.of(
              name, "", "a file with at least the header line " + String.join(",", columns)));
      return new CsvFile(name, List.of(), false);
    }
    try {
      return parse(name, text, columns, problems);
    } catch (UncheckedIOException e) {
      problems.add(unreadable(name, e));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new CsvFile(name, List.of(), false);
  }

  public String name() {
    return name;
  }

  public List<CsvRow> rows() {
    return rows;
  }

  /**
   * Refuses every row that repeats, in any case of letters, what an earlier row has in a column.
   */
  public void refuseRepeats(String column) {
    Map<String, Long> lines = new HashMap<>();
    for (CsvRow row : rows) {
      Long earlier = lines.putIfAbsent(row.cell(column).toLowerCase(Locale.ROOT), row.line());
      if (earlier != null && !row.empty(column)) {
        row.refuse(column, "each " + column + " stands once, and line " + earlier + " has it");
      }
    }
  }

  /** What stands in a column, without empty cells. */
  public Set<String> values(String column) {
    return rows.stream()
        .map(row -> row.cell(column))
        .filter(cell -> !cell.isEmpty())
        .collect(Collectors.toSet());
  }

  /** False when the file was missing, not text, or its header wrong: its rows say nothing. */
  public boolean understood() {
    return understood;
  }

  private static CsvFile parse(
      String name, Reader text, List<String> columns, List<Problem> problems) throws IOException {
    try (CSVParser parser = CSVParser.builder().setReader(text).setFormat(FORMAT).get()) {
      var records = parser.iterator();
      if (!records.hasNext()) {
        problems.add(Problem.of(name, "", "a header line " + String.join(",", columns)));
        return new CsvFile(name, List.of(), false);
      }
      Map<String, Integer> places = header(name, records.next(), columns, problems);
      if (places.isEmpty()) {
        return new CsvFile(name, List.of(), false);
      }
      List<CsvRow> rows = new ArrayList<>();
      long line = parser.getCurrentLineNumber() + 1;
      while (records.hasNext()) {
        CSVRecord record = records.next();
        if (!blank(record)) {
          row(name, line, record, places, problems, rows);
        }
        line = parser.getCurrentLineNumber() + 1;
      }
      return new CsvFile(name, rows, true);
    }
  }

  private static void row(
      String name,
      long line,
      CSVRecord record,
      Map<String, Integer> places,
      List<Problem> problems,
      List<CsvRow> rows) {
    if (record.size() == places.size()) {
      Map<String, String> cells = new LinkedHashMap<>();
      places.forEach((column, place) -> cells.put(column, record.get(place).strip()));
      rows.add(new CsvRow(name, line, cells, problems));
    } else {
      problems.add(
          Problem.of(
              name + " line " + line,
              record.size() + " cells",
              places.size() + " cells, as in the header; put text with a comma in double quotes"));
    }
  }

  /** Spreadsheets write rows of bare commas below the last used row. */
  static boolean blank(CSVRecord record) {
    return record.stream().allMatch(String::isBlank);
  }

  private static Map<String, Integer> header(
      String name, CSVRecord record, List<String> columns, List<Problem> problems) {
    List<String> given = new ArrayList<>();
    record.forEach(cell -> given.add(cell.replace(BYTE_ORDER_MARK, "").strip()));
    if (given.size() == 1 && columns.size() > 1 && given.get(0).matches(".*[;\t].*")) {
      problems.add(Problem.of(name + " header", given.get(0), "columns are separated by commas"));
      return Map.of();
    }
    int before = problems.size();
    Set<String> seen = new HashSet<>();
    List<String> missing = new ArrayList<>(columns);
    missing.removeAll(given);
    for (String column : given) {
      if (!columns.contains(column)) {
        problems.add(
            new Problem(
                name + " header",
                column,
                "the columns are " + String.join(",", columns),
                Nearest.to(column, missing)));
      } else if (!seen.add(column)) {
        problems.add(Problem.of(name + " header", column, "each column stands once"));
      }
    }
    for (String column : missing) {
      problems.add(Problem.of(name + " column " + column, "", "the header must name it"));
    }
    Map<String, Integer> places = new LinkedHashMap<>();
    if (problems.size() == before) {
      given.forEach(column -> places.put(column, given.indexOf(column)));
    }
    return places;
  }

  static Problem unreadable(String name, UncheckedIOException e) {
    if (e.getCause() instanceof CharacterCodingException) {
      return Problem.of(name, "bytes that are not UTF-8", "text saved as CSV UTF-8");
    }
    if (e.getCause() instanceof CSVException broken) {
      return Problem.of(
          name,
          broken.getMessage(),
          "a cell that begins with a double quote ends with one before the next comma");
    }
    throw e;
  }
}
