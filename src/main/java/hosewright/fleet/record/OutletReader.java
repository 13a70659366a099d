package hosewright.fleet.record;

import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.TableForm;
import hosewright.problem.Problem;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the register of what hose is coupled to: intakes and discharges, hydrants. */
public final class OutletReader {
  /** The table outlets are kept in. */
  public static final TableForm FORM =
      new TableForm(
          "outlets.csv",
          List.of("id", "kind", "location", "end", "count"),
          List.of("id", "kind", "end"));

  private static final Limits COUNT = Limits.between(1, 1_000, "ends");

  private OutletReader() {}

  /**
   * The outlets.
   *
   * @param problems takes whatever is wrong
   */
  public static List<Outlet> read(Map<String, CellRows> tables, List<Problem> problems) {
    Map<String, Outlet.Kind> kinds = new LinkedHashMap<>();
    for (Outlet.Kind kind : Outlet.Kind.values()) {
      kinds.put(kind.name().toLowerCase(Locale.ROOT), kind);
    }
    List<Outlet> outlets = new ArrayList<>();
    CsvFile.stream(
        tables,
        FORM,
        problems,
        row -> {
          String id = row.text("id", 80);
          Outlet.Kind kind = row.choice("kind", kinds);
          Optional<End> end = end(row);
          int count = row.wholeNumber("count", COUNT, 1);
          String location = row.optionalText("location", 80);
          if (row.sound()) {
            outlets.add(new Outlet(id, kind, location, end.orElseThrow(), count));
          }
        });
    return outlets;
  }

  private static Optional<End> end(CsvRow row) {
    return row.parsed("end", row.cell("end"), End::parse);
  }
}
