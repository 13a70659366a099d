package hosewright.csv;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Takes a table's rows apart by its heading. */
final class TableReader implements CellRows.Taker {
  /** A wrong file has a problem in every row: more than this many help nobody and fill memory. */
  static final int MOST_PROBLEMS = 10_000;

  private final CellRows table;
  private final List<String> columns;
  private final List<String> later;
  private final List<Problem> problems;
  private final Consumer<CsvRow> taker;
  private CsvRow.Heading heading;
  private boolean headed;

  TableReader(CellRows table, TableForm form, List<Problem> problems, Consumer<CsvRow> taker) {
    this.table = table;
    this.columns = form.columns();
    this.later = form.later();
    this.problems = problems;
    this.taker = taker;
  }

  /** Reads the table; false when it is no such table, and then its rows say nothing. */
  boolean read() {
    int before = problems.size();
    try {
      table.each(this);
    } catch (BadInputException e) {
      problems.addAll(e.problems());
      return false;
    }
    if (!headed && problems.size() == before) {
      refuse(Problem.of(table.title(), "", "a header line " + String.join(",", columns)));
    }
    return heading != null;
  }

  @Override
  public void refuse(Problem problem) {
    problems.add(problem);
  }

  @Override
  public boolean take(CellRows.Row row) {
    if (!headed) {
      headed = true;
      int before = problems.size();
      Map<String, Integer> places = places(row.cells());
      if (problems.size() == before) {
        heading = new CsvRow.Heading(table.title(), table::columnTitle, places);
      }
      return heading != null;
    }
    if (problems.size() >= MOST_PROBLEMS) {
      refuse(
          Problem.of(
              table.title() + " from line " + row.line() + " on",
              "not read",
              "mend what was found first: there are more than " + MOST_PROBLEMS + " problems"));
      return false;
    }
    if (row.cells().size() == heading.places().size()) {
      CsvRow read = new CsvRow(heading, row, problems);
      read.requirePlainText();
      taker.accept(read);
    } else {
      refuse(
          Problem.of(
              table.title() + " line " + row.line(),
              row.cells().size() + " cells",
              heading.places().size()
                  + " cells, as in the header; put text with a comma in double quotes"));
    }
    return true;
  }

  private Map<String, Integer> places(List<String> given) {
    String where = table.title() + " header";
    if (given.size() == 1 && columns.size() > 1 && given.get(0).matches(".*[;\t].*")) {
      refuse(Problem.of(where, given.get(0), "columns are separated by commas"));
      return Map.of();
    }
    if (given.size() > CsvText.MOST_COLUMNS) {
      refuse(Problem.of(where, given.size() + " columns", "at most " + CsvText.MOST_COLUMNS));
      return Map.of();
    }
    Map<String, Integer> places = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    List<String> missing = new ArrayList<>(columns);
    missing.removeAll(given);
    for (int i = 0; i < given.size(); i++) {
      String column = given.get(i);
      if (!columns.contains(column)) {
        String allowed = "the columns are " + String.join(",", columns);
        refuse(new Problem(where, column, allowed, Nearest.to(column, missing)));
      } else if (!seen.add(column)) {
        refuse(Problem.of(where, column, "each column stands once"));
      }
      places.put(column, i);
    }
    missing.removeAll(later);
    for (String column : missing) {
      refuse(Problem.of(table.title() + " column " + column, "", "the header must name it"));
    }
    return places;
  }
}
