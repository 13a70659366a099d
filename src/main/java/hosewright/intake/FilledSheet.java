package hosewright.intake;

import hosewright.csv.CellRows;
import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads back a sheet somebody filled in, whether it came as a workbook or as CSV. */
public final class FilledSheet implements CellRows.Taker {
  private static final int MOST_ROWS = 10_000;

  private final Path file;
  private final List<String> columns;
  private final List<Filled> filled = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private List<String> heading = List.of();
  private int rows;

  private FilledSheet(Path file, List<String> columns) {
    this.file = file;
    this.columns = columns;
  }

  /**
   * A row under the heading row.
   *
   * @param place file and row as a person finds it
   * @param cells text by column; every column asked for is there
   */
  public record Filled(String place, Map<String, String> cells) {}

  /**
   * The rows below the first row that names all columns; other columns are passed over.
   *
   * @throws BadInputException when the file cannot be read, has no such row, or has cells in those
   *     columns that may not be kept
   */
  public static List<Filled> read(Path file, List<String> columns) {
    FilledSheet sheet = new FilledSheet(file, columns);
    DealerFiles.anyText(file).orElseGet(() -> new XlsxRows(file, Optional.empty())).each(sheet);
    if (!sheet.problems.isEmpty()) {
      throw new BadInputException(sheet.problems);
    }
    if (sheet.heading.isEmpty()) {
      throw new BadInputException(
          "file", file.toString(), "a sheet with the columns " + String.join(", ", columns));
    }
    return sheet.filled;
  }

  @Override
  public void refuse(Problem problem) {
    problems.add(problem);
  }

  @Override
  public boolean take(CellRows.Row row) {
    if (++rows > MOST_ROWS) {
      problems.add(
          Problem.of("file", file.toString(), "a sheet of at most " + MOST_ROWS + " rows"));
      return false;
    }
    if (!heading.isEmpty()) {
      takeFilled(row);
    } else if (row.cells().containsAll(columns)) {
      heading = row.cells();
    }
    return true;
  }

  private void takeFilled(CellRows.Row row) {
    String place = file.getFileName() + " row " + row.line();
    Map<String, String> cells = new LinkedHashMap<>();
    for (String column : columns) {
      int at = heading.indexOf(column);
      String cell = at < row.cells().size() ? row.cells().get(at) : "";
      PlainText.refusal(place + " column " + column, cell).ifPresent(problems::add);
      cells.put(column, cell);
    }
    if (cells.values().stream().anyMatch(text -> !text.isEmpty())) {
      filled.add(new Filled(place, cells));
    }
  }
}
