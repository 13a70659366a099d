package hosewright.fleet.record;

import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.TableForm;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Reads what the agency has decided: one limit a row. */
public final class LimitReader {
  /** The table limits are kept in. */
  public static final TableForm FORM =
      new TableForm("limits.csv", List.of("key", "value"), List.of("key", "value"));

  private static final List<String> KEYS =
      List.of("age_years", "repairs", "failure_streak", "edition");
  private static final Limits AGE = Limits.between(1, 60, "years");
  private static final Limits COUNT = Limits.between(0, 100, "repairs");
  private static final Limits STREAK = Limits.between(1, 100, "failed tests");

  private OptionalInt age = OptionalInt.empty();
  private OptionalInt repairs = OptionalInt.empty();
  private OptionalInt streak = OptionalInt.empty();
  private String edition = TestRule.USUAL_EDITION;

  private LimitReader() {}

  /**
   * The limits; those without a row are not set.
   *
   * @param problems takes whatever is wrong
   */
  public static AgencyLimits read(Map<String, CellRows> tables, List<Problem> problems) {
    LimitReader reader = new LimitReader();
    CsvFile.stream(tables, FORM, problems, reader::take);
    return new AgencyLimits(reader.age, reader.repairs, reader.streak, reader.edition);
  }

  private void take(CsvRow row) {
    switch (row.cell("key")) {
      case "age_years" -> age = OptionalInt.of(row.wholeNumber("value", AGE));
      case "repairs" -> repairs = OptionalInt.of(row.wholeNumber("value", COUNT));
      case "failure_streak" -> streak = OptionalInt.of(row.wholeNumber("value", STREAK));
      case "edition" -> edition(row);
      default ->
          row.refuse("key", "one of " + String.join(", ", KEYS), Nearest.to(row.cell("key"), KEYS));
    }
  }

  private void edition(CsvRow row) {
    List<String> known = TestRule.editions();
    edition = row.cell("value");
    if (!known.contains(edition)) {
      row.refuse("value", "an edition whose hold time is known: " + String.join(", ", known), "");
      edition = TestRule.USUAL_EDITION;
    }
  }
}
