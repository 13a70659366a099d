package hosewright.quote.terms;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.OneCurrency;
import hosewright.csv.Periods;
import hosewright.csv.TableForm;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads buyers and their contract prices from CSV files, all or nothing. */
public final class CustomerReader {
  private static final TableForm CUSTOMERS =
      new TableForm(
          "customers.csv",
          List.of(
              "id",
              "name",
              "address",
              "class",
              "discount",
              "tax_name",
              "tax_rate",
              "exemption_certificate",
              "exemption_date",
              "freight_terms"),
          List.of("id", "name", "class", "discount", "tax_rate"));
  private static final TableForm CONTRACT_PRICES =
      new TableForm(
          "contract-prices.csv",
          List.of("customer", "item", "from", "until", "unit_price", "currency"),
          List.of("customer", "item", "from", "unit_price", "currency"));

  /** The tables buyers are kept in. */
  public static final List<TableForm> FORMS = List.of(CUSTOMERS, CONTRACT_PRICES);

  /** The files buyers are kept in. */
  public static final List<String> FILES = FORMS.stream().map(TableForm::name).toList();

  private static final Limits FRACTION =
      new Limits(0, 0.999999, "a fraction from 0 up to but not including 1, such as 0.15 for 15 %");

  private CustomerReader() {}

  /**
   * The buyers in tables however they are kept, each under its name in {@link #FILES}.
   *
   * @param catalogue what contract prices may be about, and their currency
   * @param floors the classes a customer may be of; any where there are none
   * @throws BadInputException with every problem found
   */
  public static Customers readTables(
      Map<String, CellRows> tables, Catalogue catalogue, MarginFloors floors) {
    List<Problem> problems = new ArrayList<>();
    CsvFile customerFile = CsvFile.of(tables, CUSTOMERS, problems);
    CsvFile contractFile = CsvFile.of(tables, CONTRACT_PRICES, problems);
    List<Customer> customers = customers(customerFile, Set.copyOf(floors.classes()));
    List<ContractPrice> prices =
        customerFile.understood()
            ? contractPrices(contractFile, customerFile.values("id"), catalogue)
            : List.of();
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new Customers(customers, prices);
  }

  private static List<Customer> customers(CsvFile file, Set<String> classes) {
    file.refuseRepeats("id");
    List<Customer> customers = new ArrayList<>();
    for (CsvRow row : file.rows()) {
      Customer customer =
          new Customer(
              row.text("id", 40),
              row.text("name", 200),
              row.optionalText("address", 500),
              new Customer.Pricing(
                  classes.isEmpty() || row.empty("class")
                      ? row.text("class", 40)
                      : row.known("class", classes, "classes.csv"),
                  row.decimal("discount", FRACTION),
                  Map.of()),
              new Customer.Taxation(
                  row.optionalText("tax_name", 80),
                  row.decimal("tax_rate", FRACTION),
                  exemption(row)),
              row.optionalText("freight_terms", 200));
      if (row.sound()) {
        customers.add(customer);
      }
    }
    return customers;
  }

  private static Optional<Customer.Exemption> exemption(CsvRow row) {
    if (row.empty("exemption_certificate") && row.empty("exemption_date")) {
      return Optional.empty();
    }
    if (row.empty("exemption_date")) {
      row.refuse("exemption_date", "the date of the certificate: an exemption needs both");
      return Optional.empty();
    }
    return Optional.of(
        new Customer.Exemption(row.text("exemption_certificate", 80), row.date("exemption_date")));
  }

  private static List<ContractPrice> contractPrices(
      CsvFile file, Set<String> customers, Catalogue catalogue) {
    Set<String> numbers = catalogue.items().stream().map(Item::number).collect(Collectors.toSet());
    OneCurrency currency = new OneCurrency(catalogue.currency());
    Periods periods = new Periods();
    List<ContractPrice> prices = new ArrayList<>();
    for (CsvRow row : file.rows()) {
      LocalDate from = row.date("from");
      ContractPrice price =
          new ContractPrice(
              row.known("customer", customers, "customers.csv"),
              row.known("item", numbers, "the catalogue"),
              from,
              row.until("until", from),
              row.money("unit_price", "currency"));
      currency.hold(row, price.unitPrice().getCurrencyUnit());
      if (row.sound()) {
        periods.take(row, List.of(price.customer(), price.item()), price.from(), price.until());
        prices.add(price);
      }
    }
    return prices;
  }
}
