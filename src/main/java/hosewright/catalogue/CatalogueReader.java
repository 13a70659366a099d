package hosewright.catalogue;

import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.OneCurrency;
import hosewright.csv.Periods;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/**
 * Reads a dealer's catalogue from its CSV files, all or nothing.
 *
 * <p>Every file has a header line; the columns may stand in any order. A catalogue with one bad
 * cell is refused whole, with every bad cell named.
 */
public final class CatalogueReader {
  /** The files a catalogue is made of. */
  public static final List<String> FILES =
      List.of("suppliers.csv", "items.csv", "prices.csv", "costs.csv");

  static final Limits LEAD_DAYS = Limits.between(0, 3_650, "days");

  private static final List<String> SUPPLIER_COLUMNS = List.of("code", "name", "lead_days");
  private static final List<String> PRICE_COLUMNS =
      List.of("item", "from", "until", "min_quantity", "unit_price", "currency");
  private static final List<String> COST_COLUMNS =
      List.of("item", "supplier", "from", "until", "unit_cost", "currency");
  private static final Limits MINIMUM_QUANTITY = Limits.between(1, 1_000_000, "");

  private CatalogueReader() {}

  /**
   * The catalogue the files describe.
   *
   * @param files the text of each of {@link #FILES} by name; closed by this method
   * @throws BadInputException with every problem found: a missing or unknown column, a bad cell, a
   *     number that stands twice, a price without its item, overlapping periods, prices in more
   *     than one currency
   */
  public static Catalogue read(Map<String, Reader> files) {
    List<Problem> problems = new ArrayList<>();
    CsvFile supplierFile = CsvFile.read(files, "suppliers.csv", SUPPLIER_COLUMNS, problems);
    CsvFile itemFile = CsvFile.read(files, "items.csv", ItemCells.COLUMNS, problems);
    CsvFile priceFile = CsvFile.read(files, "prices.csv", PRICE_COLUMNS, problems);
    CsvFile costFile = CsvFile.read(files, "costs.csv", COST_COLUMNS, problems);
    if (!problems.isEmpty() && !(supplierFile.understood() && itemFile.understood())) {
      throw new BadInputException(problems);
    }
    OneCurrency currency = new OneCurrency(Optional.empty());
    Map<String, Supplier> suppliers = suppliers(supplierFile);
    List<Item> items = items(itemFile, suppliers);
    Set<String> numbers = itemFile.values("number");
    List<PriceRow> prices = prices(priceFile, numbers, currency);
    List<CostRow> costs = costs(costFile, numbers, supplierFile.values("code"));
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new Catalogue(items, prices, costs, List.copyOf(suppliers.values()));
  }

  private static Map<String, Supplier> suppliers(CsvFile file) {
    file.refuseRepeats("code");
    Map<String, Supplier> suppliers = new LinkedHashMap<>();
    for (CsvRow row : file.rows()) {
      Supplier supplier =
          new Supplier(
              row.text("code", 20), row.text("name", 200), row.wholeNumber("lead_days", LEAD_DAYS));
      suppliers.put(supplier.code(), supplier);
    }
    return suppliers;
  }

  private static List<Item> items(CsvFile file, Map<String, Supplier> suppliers) {
    file.refuseRepeats("number");
    List<Item> items = new ArrayList<>();
    for (CsvRow row : file.rows()) {
      Item item = new ItemCells(row, suppliers).item();
      if (row.sound()) {
        items.add(item);
      }
    }
    return items;
  }

  private static List<PriceRow> prices(CsvFile file, Set<String> numbers, OneCurrency currency) {
    Periods periods = new Periods();
    List<PriceRow> prices = new ArrayList<>();
    for (CsvRow row : file.rows()) {
      LocalDate from = row.date("from");
      PriceRow price =
          new PriceRow(
              row.known("item", numbers, "items.csv"),
              from,
              row.until("until", from),
              row.wholeNumber("min_quantity", MINIMUM_QUANTITY),
              row.money("unit_price", "currency"));
      currency.hold(row, price.unitPrice().getCurrencyUnit());
      if (row.sound()) {
        periods.take(
            row, List.of(price.item(), price.minimumQuantity()), price.from(), price.until());
        prices.add(price);
      }
    }
    return prices;
  }

  private static List<CostRow> costs(CsvFile file, Set<String> numbers, Set<String> suppliers) {
    Periods periods = new Periods();
    List<CostRow> costs = new ArrayList<>();
    for (CsvRow row : file.rows()) {
      LocalDate from = row.date("from");
      Money unitCost = row.money("unit_cost", "currency");
      if (unitCost.isZero() && row.sound()) {
        row.refuse("unit_cost", "a cost above zero; leave the row out when the cost is not known");
      }
      CostRow cost =
          new CostRow(
              row.known("item", numbers, "items.csv"),
              row.known("supplier", suppliers, "suppliers.csv"),
              from,
              row.until("until", from),
              unitCost);
      if (row.sound()) {
        periods.take(row, List.of(cost.item(), cost.supplier()), cost.from(), cost.until());
        costs.add(cost);
      }
    }
    return costs;
  }
}
