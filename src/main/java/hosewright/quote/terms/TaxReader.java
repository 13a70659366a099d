package hosewright.quote.terms;

import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.Periods;
import hosewright.csv.TableForm;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.quote.terms.TaxTable.Charge;
import hosewright.quote.terms.TaxTable.TaxRow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads what tax is charged where goods are shipped to. */
public final class TaxReader {
  /** The table it is kept in. */
  public static final TableForm FORM =
      new TableForm(
          "taxes.csv",
          List.of("place", "from", "until", "tax_name", "rate", "on_freight", "untaxed"),
          List.of("place", "from", "tax_name", "rate"));

  private static final Limits FRACTION =
      new Limits(0, 0.999999, "a fraction from 0 up to but not including 1, such as 0.0625");

  private TaxReader() {}

  /**
   * The table.
   *
   * @throws BadInputException with every problem found
   */
  public static TaxTable read(Map<String, CellRows> tables) {
    List<Problem> problems = new ArrayList<>();
    CsvFile file = CsvFile.of(tables, FORM, problems);
    Periods periods = new Periods();
    List<TaxRow> rows = new ArrayList<>();
    for (CsvRow row : file.rows()) {
      LocalDate from = row.date("from");
      TaxRow tax =
          new TaxRow(
              row.text("place", 80),
              from,
              row.until("until", from),
              new Charge(
                  row.text("tax_name", 80),
                  row.decimal("rate", FRACTION),
                  row.yes("on_freight"),
                  untaxed(row.optionalText("untaxed", 1000))));
      if (row.sound()) {
        periods.take(row, List.of(tax.place().toLowerCase(Locale.ROOT)), tax.from(), tax.until());
        rows.add(tax);
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new TaxTable(rows);
  }

  /** Items and kinds, parted by semicolons. */
  public static Set<String> untaxed(String text) {
    return Arrays.stream(text.split(";"))
        .map(one -> one.strip().toLowerCase(Locale.ROOT))
        .filter(one -> !one.isEmpty())
        .collect(Collectors.toUnmodifiableSet());
  }
}
