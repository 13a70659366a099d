package hosewright.csv;

import hosewright.problem.Problem;
import java.util.List;

/**
 * A table as rows of cells, the heading first, however it is kept. It is read once, row by row, so
 * that a large one never stands in memory whole.
 */
public interface CellRows {

  /** What the user knows the table by, for example {@code items.csv}; problems begin with it. */
  String title();

  /**
   * Hands out every row that is not blank, in order, until the taker has enough.
   *
   * @throws hosewright.problem.BadInputException when the file is none of its kind
   */
  void each(Taker taker);

  /** What the user knows one of our columns by. */
  default String columnTitle(String column) {
    return column;
  }

  /** Who takes the rows. */
  interface Taker {

    /** Takes one row; false when no more are wanted. */
    boolean take(Row row);

    /** Takes a reason why a row could not be handed out. */
    void refuse(Problem problem);
  }

  /**
   * One row.
   *
   * @param line where it begins, 1 for the first of the file
   * @param cells the cells as they are to be read
   * @param written the same as they stand in the file, to be shown in a problem
   */
  record Row(long line, List<String> cells, List<String> written) {
    public static Row of(long line, List<String> cells) {
      return new Row(line, cells, cells);
    }
  }
}
