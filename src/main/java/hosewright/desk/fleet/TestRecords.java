package hosewright.desk.fleet;

import hosewright.csv.CellRows;
import hosewright.fleet.record.RecordReader;
import hosewright.intake.DealerFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A day's service records as they were handed over, still to be read. */
public final class TestRecords {
  private final Map<String, CellRows> tables;

  private TestRecords(Map<String, CellRows> tables) {
    this.tables = tables;
  }

  /**
   * Records in a file.
   *
   * @param place the folder or workbook it is in
   * @param mapping file that maps columns of other names to ours
   * @throws hosewright.problem.BadInputException when there is no such table
   */
  public static TestRecords in(Path place, Optional<Path> mapping) {
    return new TestRecords(DealerFiles.open(place, mapping, List.of(RecordReader.FORM), List.of()));
  }

  /**
   * Records that somebody answered one by one.
   *
   * @param rows columns as in a records file
   */
  public static TestRecords answered(List<List<String>> rows) {
    return new TestRecords(Map.of(RecordReader.FORM.name(), new Answers(List.copyOf(rows))));
  }

  Map<String, CellRows> tables() {
    return tables;
  }

  private record Answers(List<List<String>> rows) implements CellRows {
    @Override
    public String title() {
      return "what was answered";
    }

    @Override
    public void each(Taker taker) {
      taker.take(Row.of(1, RecordReader.FORM.columns()));
      long line = 1;
      for (List<String> row : rows) {
        line++;
        taker.take(Row.of(line, row));
      }
    }
  }
}
