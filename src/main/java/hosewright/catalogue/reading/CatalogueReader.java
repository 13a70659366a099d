package hosewright.catalogue.reading;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CostRow;
import hosewright.catalogue.Item;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Supplier;
import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.Limits;
import hosewright.csv.OneCurrency;
import hosewright.csv.Periods;
import hosewright.csv.Repeats;
import hosewright.csv.TableForm;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Reads a dealer's catalogue from its CSV files, all or nothing.
 *
 * <p>Every file has a header line; the columns may stand in any order. A catalogue with one bad
 * cell is refused whole, with every bad cell named.
 */
public final class CatalogueReader {
  private static final TableForm SUPPLIERS =
      new TableForm(
          "suppliers.csv",
          List.of("code", "name", "lead_days", "minimum_order", "currency"),
          List.of("code", "name", "lead_days"));
  private static final TableForm ITEMS =
      new TableForm(
          "items.csv",
          Stream.concat(ItemCells.COLUMNS.stream(), ItemCells.LATER_COLUMNS.stream()).toList(),
          List.of("number", "kind", "description", "unit", "weight_lb"),
          ItemCells.LATER_COLUMNS);
  private static final TableForm PRICES =
      new TableForm(
          "prices.csv",
          List.of("item", "from", "until", "min_quantity", "unit_price", "currency"),
          List.of("item", "from", "min_quantity", "unit_price", "currency"));
  private static final TableForm COSTS =
      new TableForm(
          "costs.csv",
          List.of("item", "supplier", "from", "until", "unit_cost", "currency"),
          List.of("item", "supplier", "from", "unit_cost", "currency"));

  /** The tables a catalogue is made of. */
  public static final List<TableForm> FORMS = List.of(SUPPLIERS, ITEMS, PRICES, COSTS);

  /** The files a catalogue is made of. */
  public static final List<String> FILES = FORMS.stream().map(TableForm::name).toList();

  static final Limits LEAD_DAYS = Limits.between(0, 3_650, "days");

  private static final Limits MINIMUM_QUANTITY = Limits.between(1, 1_000_000, "");

  private final Map<String, CellRows> tables;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Supplier> suppliers = new LinkedHashMap<>();
  private final Set<String> supplierCodes = new HashSet<>();
  private final List<Item> items = new ArrayList<>();
  private final Set<String> numbers = new HashSet<>();
  private final List<PriceRow> prices = new ArrayList<>();
  private final List<CostRow> costs = new ArrayList<>();

  private CatalogueReader(Map<String, CellRows> tables) {
    this.tables = tables;
  }

  /**
   * The catalogue in tables however they are kept, each under its name in {@link #FILES}.
   *
   * @throws BadInputException with every problem found: a missing or unknown column, a bad cell, a
   *     number that stands twice, a price without its item, overlapping periods, prices in more
   *     than one currency
   */
  public static Catalogue readTables(Map<String, CellRows> tables) {
    return new CatalogueReader(tables).catalogue();
  }

  private Catalogue catalogue() {
    boolean understood = suppliers() & items();
    if (understood) {
      prices();
      costs();
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new Catalogue(items, prices, costs, List.copyOf(suppliers.values()));
  }

  private boolean suppliers() {
    Repeats repeats = new Repeats("code");
    return CsvFile.stream(
        tables,
        SUPPLIERS,
        problems,
        row -> {
          repeats.hold(row);
          Supplier supplier =
              new Supplier(
                  row.text("code", 20),
                  row.text("name", 200),
                  row.wholeNumber("lead_days", LEAD_DAYS),
                  row.empty("minimum_order")
                      ? Optional.empty()
                      : Optional.of(row.money("minimum_order", "currency")));
          suppliers.put(supplier.code(), supplier);
          supplierCodes.add(supplier.code());
        });
  }

  private boolean items() {
    Repeats repeats = new Repeats("number");
    return CsvFile.stream(
        tables,
        ITEMS,
        problems,
        row -> {
          repeats.hold(row);
          Item item = new ItemCells(row, suppliers).item();
          numbers.add(item.number());
          if (row.sound()) {
            items.add(item);
          }
        });
  }

  private void prices() {
    OneCurrency currency = new OneCurrency(Optional.empty());
    Periods periods = new Periods();
    CsvFile.stream(
        tables,
        PRICES,
        problems,
        row -> {
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
        });
  }

  private void costs() {
    Periods periods = new Periods();
    CsvFile.stream(
        tables,
        COSTS,
        problems,
        row -> {
          LocalDate from = row.date("from");
          Money unitCost = row.money("unit_cost", "currency");
          if (unitCost.isZero() && row.sound()) {
            row.refuse(
                "unit_cost", "a cost above zero; leave the row out when the cost is not known");
          }
          CostRow cost =
              new CostRow(
                  row.known("item", numbers, "items.csv"),
                  row.known("supplier", supplierCodes, "suppliers.csv"),
                  from,
                  row.until("until", from),
                  unitCost);
          if (row.sound()) {
            periods.take(row, List.of(cost.item(), cost.supplier()), cost.from(), cost.until());
            costs.add(cost);
          }
        });
  }
}
