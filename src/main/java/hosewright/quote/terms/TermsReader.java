package hosewright.quote.terms;

import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.OneCurrency;
import hosewright.csv.TableForm;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Reads the dealer's freight table and settings from CSV files, all or nothing. */
public final class TermsReader {
  private static final TableForm FREIGHT =
      new TableForm(
          "freight.csv",
          List.of("up_to_lb", "charge", "currency"),
          List.of("up_to_lb", "charge", "currency"));
  private static final TableForm DEALER =
      new TableForm("dealer.csv", List.of("key", "value"), List.of("key"));

  /** The tables terms are kept in. */
  public static final List<TableForm> FORMS = List.of(FREIGHT, DEALER);

  /** The files terms are kept in. */
  public static final List<String> FILES = FORMS.stream().map(TableForm::name).toList();

  private static final Limits WEIGHT = Limits.between(0.01, 1_000_000, "lb");

  private static final int LONGEST_DAYS = 3650;

  private TermsReader() {}

  /**
   * The terms in tables however they are kept, each under its name in {@link #FILES}.
   *
   * @param currency the catalogue's currency, which freight must share; empty while it has none
   * @throws BadInputException with every problem found
   */
  public static DealerTerms readTables(
      Map<String, CellRows> tables, Optional<CurrencyUnit> currency) {
    List<Problem> problems = new ArrayList<>();
    CsvFile freightFile = CsvFile.of(tables, FREIGHT, problems);
    CsvFile dealerFile = CsvFile.of(tables, DEALER, problems);
    List<FreightBand> freight = freight(freightFile, new OneCurrency(currency));
    Map<String, String> settings = settings(dealerFile);
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new DealerTerms(freight, settings);
  }

  private static List<FreightBand> freight(CsvFile file, OneCurrency currency) {
    List<FreightBand> bands = new ArrayList<>();
    double heaviestLb = 0;
    for (CsvRow row : file.rows()) {
      FreightBand band =
          new FreightBand(row.number("up_to_lb", WEIGHT), row.money("charge", "currency"));
      currency.hold(row, band.charge().getCurrencyUnit());
      if (row.sound() && band.upToLb() <= heaviestLb) {
        row.refuse("up_to_lb", "bands stand lightest first, so more than " + heaviestLb + " lb");
      }
      if (row.sound()) {
        heaviestLb = band.upToLb();
        bands.add(band);
      }
    }
    return bands;
  }

  private static Map<String, String> settings(CsvFile file) {
    file.refuseRepeats("key");
    Map<String, String> settings = new LinkedHashMap<>();
    for (CsvRow row : file.rows()) {
      String key = row.text("key", 80);
      String value = row.optionalText("value", 1000);
      if (key.equals("validity_days") && !isDays(value)) {
        row.refuse("value", "a whole number of days from 0 to " + LONGEST_DAYS);
      }
      if (key.equals("tax_on_freight") && !value.equals("yes") && !value.equals("no")) {
        row.refuse("value", "yes or no");
      }
      settings.put(key, value);
    }
    return settings;
  }

  private static boolean isDays(String value) {
    return value.matches("\\d{1,4}") && Integer.parseInt(value) <= LONGEST_DAYS;
  }
}
