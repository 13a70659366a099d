package hosewright.desk;

import hosewright.csv.CellRows;
import hosewright.problem.Problem;
import java.util.Locale;
import java.util.function.Consumer;

/** Rows that tell how many were read, where there are many. */
record CountedRows(CellRows rows, Consumer<String> progress) implements CellRows {
  private static final int STEP = 25_000;

  @Override
  public String title() {
    return rows.title();
  }

  @Override
  public String columnTitle(String column) {
    return rows.columnTitle(column);
  }

  @Override
  public void each(Taker taker) {
    rows.each(
        new Taker() {
          private int count;

          @Override
          public boolean take(Row row) {
            count++;
            if (count % STEP == 0) {
              progress.accept(String.format(Locale.ROOT, "%s: %,d rows read", title(), count));
            }
            return taker.take(row);
          }

          @Override
          public void refuse(Problem problem) {
            taker.refuse(problem);
          }
        });
  }
}
