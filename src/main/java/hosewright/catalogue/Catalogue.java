package hosewright.catalogue;

import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Everything the dealer sells, with prices and costs. Immutable; lookups are by map.
 *
 * <p>Items keep the order of the catalogue file, so that plans are the same on every machine.
 */
public final class Catalogue {
  private final Map<String, Item> items = new LinkedHashMap<>();
  private final Map<ItemKind, List<Item>> byKind;
  private final Map<String, List<PriceRow>> prices;
  private final Map<String, List<CostRow>> costs;
  private final List<Supplier> suppliers;

  public Catalogue(
      List<Item> items, List<PriceRow> prices, List<CostRow> costs, List<Supplier> suppliers) {
    items.forEach(item -> this.items.put(item.number(), item));
    this.byKind = items.stream().collect(Collectors.groupingBy(Item::kind));
    this.prices =
        prices.stream()
            .sorted(
                Comparator.comparing(PriceRow::from).thenComparingInt(PriceRow::minimumQuantity))
            .collect(Collectors.groupingBy(PriceRow::item));
    this.costs =
        costs.stream()
            .sorted(Comparator.comparing(CostRow::from).thenComparing(CostRow::supplier))
            .collect(Collectors.groupingBy(CostRow::item));
    this.suppliers = List.copyOf(suppliers);
  }

  private Catalogue(Catalogue like, List<Item> items) {
    items.forEach(item -> this.items.put(item.number(), item));
    this.byKind = items.stream().collect(Collectors.groupingBy(Item::kind));
    this.prices = like.prices;
    this.costs = like.costs;
    this.suppliers = like.suppliers;
  }

  /** The same with other stock: how many of each item lie on its shelf, from how many lie there. */
  public Catalogue withStock(ToIntFunction<Item> onHand) {
    return new Catalogue(
        this,
        items.values().stream()
            .map(
                item -> {
                  int left = onHand.applyAsInt(item);
                  return left == item.stocking().onHand() ? item : item.withStock(left);
                })
            .toList());
  }

  public List<Item> items() {
    return List.copyOf(items.values());
  }

  public Optional<Item> item(String number) {
    return Optional.ofNullable(items.get(number));
  }

  public List<Item> ofKind(ItemKind kind) {
    return byKind.getOrDefault(kind, List.of());
  }

  public List<Supplier> suppliers() {
    return suppliers;
  }

  /** All list prices of an item, in every period, oldest first. */
  public List<PriceRow> priceHistory(String number) {
    return prices.getOrDefault(number, List.of());
  }

  /** All costs of an item, in every period and of every supplier, oldest first. */
  public List<CostRow> costHistory(String number) {
    return costs.getOrDefault(number, List.of());
  }

  /**
   * The one currency of every price (suppliers may charge in another); empty while nothing is
   * priced.
   */
  public Optional<CurrencyUnit> currency() {
    return prices.values().stream()
        .findAny()
        .map(rows -> rows.get(0).unitPrice().getCurrencyUnit());
  }

  /**
   * The one currency of every price, for what cannot be done without prices.
   *
   * @throws BadInputException while nothing is priced
   */
  public CurrencyUnit currencyNeeded() {
    return currency()
        .orElseThrow(
            () ->
                ConflictException.stateForbids(
                    "catalogue", "", "has no prices", "load one that has, catalogue load FOLDER"));
  }

  /** Quantity breaks in force on a date, smallest quantity first. */
  public List<PriceRow> breaks(String number, LocalDate date) {
    return priceHistory(number).stream()
        .filter(row -> row.inForceOn(date))
        .sorted(Comparator.comparingInt(PriceRow::minimumQuantity))
        .toList();
  }

  /** The list price of one unit at a quantity and date, after the quantity break. */
  public Optional<Money> listPrice(String number, int quantity, LocalDate date) {
    return breaks(number, date).stream()
        .filter(row -> row.minimumQuantity() <= quantity)
        .reduce((smaller, larger) -> larger)
        .map(PriceRow::unitPrice);
  }

  /**
   * The supplier's cost of one unit on a date; empty means unknown, never zero.
   *
   * <p>A supplier may charge in another currency than the dealer's: compare currencies before
   * amounts.
   */
  public Optional<Money> cost(String number, LocalDate date) {
    return costHistory(number).stream()
        .filter(row -> row.inForceOn(date))
        .max(Comparator.comparing(CostRow::from))
        .map(CostRow::unitCost);
  }

  /** Prices of a buyer without terms. */
  public NetPrice listPricesOn(LocalDate date) {
    return new NetPrice() {
      @Override
      public Optional<Money> unitPrice(Item item, int quantity) {
        return listPrice(item.number(), quantity, date);
      }

      @Override
      public List<Integer> breakQuantities(Item item) {
        return breaks(item.number(), date).stream().map(PriceRow::minimumQuantity).toList();
      }
    };
  }
}
