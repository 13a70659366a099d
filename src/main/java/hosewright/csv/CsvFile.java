package hosewright.csv;

import hosewright.problem.Problem;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * The rows of one table with a header line, each cell knowing where it stands.
 *
 * <p>The header must name exactly the columns asked for, in any order. A file whose header is wrong
 * gives no rows: guessing what its cells mean would bury the one real problem under many.
 */
public final class CsvFile {
  private final List<CsvRow> rows;
  private final boolean understood;

  private CsvFile(List<CsvRow> rows, boolean understood) {
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
    return of(CsvText.all(files), new TableForm(name, columns, List.of()), problems);
  }

  /** Reads a table however it is kept; whatever is wrong with it is added to {@code problems}. */
  public static CsvFile of(Map<String, CellRows> tables, TableForm form, List<Problem> problems) {
    List<CsvRow> rows = new ArrayList<>();
    boolean understood = stream(tables, form, problems, rows::add);
    return new CsvFile(understood ? rows : List.of(), understood);
  }

  /**
   * Hands out the rows of a table one by one and keeps none; whatever is wrong with it is added to
   * {@code problems}.
   *
   * @return false when the file was missing, not text, or its header wrong
   */
  public static boolean stream(
      Map<String, CellRows> tables,
      TableForm form,
      List<Problem> problems,
      Consumer<CsvRow> taker) {
    CellRows table = tables.get(form.name());
    if (table == null) {
      problems.add(
          Problem.of(
              form.name(),
              "",
              "a file with at least the header line " + String.join(",", form.columns())));
      return false;
    }
    return new TableReader(table, form, problems, taker).read();
  }

  public List<CsvRow> rows() {
    return rows;
  }

  /**
   * Refuses every row that repeats, in any case of letters, what an earlier row has in a column.
   */
  public void refuseRepeats(String column) {
    Repeats repeats = new Repeats(column);
    rows.forEach(repeats::hold);
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
}
