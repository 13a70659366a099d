package hosewright.quote.terms;

import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.TableForm;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the least margin wanted of each class of customers. */
public final class MarginFloorReader {
  /** The table they are kept in. */
  public static final TableForm FORM =
      new TableForm(
          "classes.csv", List.of("class", "margin_floor"), List.of("class", "margin_floor"));

  private static final Limits FRACTION =
      new Limits(0, 0.9999, "a fraction from 0 up to but not including 1, such as 0.25 for 25 %");

  private MarginFloorReader() {}

  /**
   * The floors the table states.
   *
   * @throws BadInputException with every problem found
   */
  public static MarginFloors read(Map<String, CellRows> tables) {
    List<Problem> problems = new ArrayList<>();
    CsvFile file = CsvFile.of(tables, FORM, problems);
    file.refuseRepeats("class");
    Map<String, BigDecimal> floors = new LinkedHashMap<>();
    for (CsvRow row : file.rows()) {
      floors.put(row.text("class", 40), row.decimal("margin_floor", FRACTION));
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new MarginFloors(floors);
  }
}
