package hosewright.store;

import static hosewright.store.db.Tables.CATALOGUE_LOAD;
import static hosewright.store.db.Tables.ITEM;
import static hosewright.store.db.Tables.ITEM_DERATING;
import static hosewright.store.db.Tables.ITEM_END;
import static hosewright.store.db.Tables.ITEM_FLUID;
import static hosewright.store.db.Tables.PRICE;
import static hosewright.store.db.Tables.SUPPLIER;
import static org.jooq.impl.DSL.max;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CostRow;
import hosewright.catalogue.Item;
import hosewright.catalogue.Listing;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Supplier;
import hosewright.store.db.tables.CatalogueLoad;
import hosewright.store.db.tables.records.CatalogueLoadRecord;
import hosewright.store.db.tables.records.ItemRecord;
import hosewright.store.db.tables.records.SupplierRecord;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jooq.DSLContext;

/** Keeps the catalogue, and every price it ever had. */
public final class CatalogueStore {
  private static final int LONGEST_SOURCE = 300;

  private final DSLContext context;

  public CatalogueStore(Database database) {
    this.context = database.context();
  }

  /**
   * One load of a catalogue.
   *
   * @param source what it came from; empty where that was not noted
   */
  public record Load(int number, Instant loadedAt, String source) {}

  /**
   * A list price as it was once loaded.
   *
   * @param broughtBy the load that brought it
   * @param replacedBy the load of a catalogue without it; empty while it is in use
   */
  public record LoadedPrice(PriceRow price, Load broughtBy, Optional<Load> replacedBy) {}

  /**
   * Puts a catalogue in the place of the one kept, whole or, when anything fails, not at all.
   * Prices it no longer has stay readable as {@link #priceHistory}.
   *
   * @param loadedAt the moment to note in the history
   */
  public void replace(Catalogue catalogue, Instant loadedAt) {
    replace(catalogue, loadedAt, "");
  }

  /**
   * The same, noting what it came from.
   *
   * @param source file or folder, at most 300 characters of it are kept
   */
  public void replace(Catalogue catalogue, Instant loadedAt, String source) {
    List<PriceRow> prices = new ArrayList<>();
    List<CostRow> costs = new ArrayList<>();
    for (Item item : catalogue.items()) {
      prices.addAll(catalogue.priceHistory(item.number()));
      costs.addAll(catalogue.costHistory(item.number()));
    }
    context.transaction(
        nested -> {
          DSLContext inside = nested.dsl();
          Turns.take(inside, CATALOGUE_LOAD);
          int load = newLoad(inside, loadedAt, source, catalogue.items().size(), prices.size());
          replaceSuppliers(inside, catalogue.suppliers());
          Map<String, Integer> stated =
              inside
                  .select(ITEM.ITEM_NUMBER, ITEM.ON_HAND)
                  .from(ITEM)
                  .fetchMap(ITEM.ITEM_NUMBER, ITEM.ON_HAND);
          replaceItems(inside, catalogue.items());
          StockRows.counted(inside, stated, catalogue.items(), loadedAt.atOffset(ZoneOffset.UTC));
          PriceRows.replacePrices(inside, prices, load);
          PriceRows.replaceCosts(inside, costs, load);
        });
  }

  /** Waits until nobody else is putting a catalogue here, and keeps others out until it is done. */
  public void takeTurn() {
    Turns.take(context, CATALOGUE_LOAD);
  }

  /**
   * The catalogue kept; one without items before the first is put here. The stock of its items is
   * what is on hand and promised to nobody.
   */
  public Catalogue load() {
    return load(Optional.empty());
  }

  /** The part of the catalogue that is about these items, dropped ones left out. */
  public Catalogue load(Collection<String> numbers) {
    return load(Optional.of(numbers));
  }

  /** The same as {@link #load()}, with what nobody asks who only plans and quotes left unread. */
  public Catalogue loadWithoutCosts() {
    return new Catalogue(
        new ItemQuery(context).items(Optional.empty()),
        PriceRows.prices(context, Optional.empty()),
        List.of(),
        suppliers());
  }

  private Catalogue load(Optional<Collection<String>> only) {
    return new Catalogue(
        new ItemQuery(context).items(only),
        PriceRows.prices(context, only),
        PriceRows.costs(context, only),
        suppliers());
  }

  /** Whether no catalogue is kept. */
  public boolean isEmpty() {
    return !context.fetchExists(ITEM, ITEM.FILE_ORDER.isNotNull());
  }

  /** What is looked at in a search, of every item listed, in the order of the catalogue. */
  public List<Listing> listings() {
    return new ItemQuery(context).listings();
  }

  /** Every number an item ever had, whether still listed or not. */
  public List<String> numbersEver() {
    return context.select(ITEM.ITEM_NUMBER).from(ITEM).fetch(ITEM.ITEM_NUMBER);
  }

  /** The numbers of the items listed. */
  public List<String> numbersListed() {
    return context
        .select(ITEM.ITEM_NUMBER)
        .from(ITEM)
        .where(ITEM.FILE_ORDER.isNotNull())
        .fetch(ITEM.ITEM_NUMBER);
  }

  /** The one currency of every list price in use; empty while nothing is priced. */
  public Optional<CurrencyUnit> currency() {
    return context
        .select(PRICE.CURRENCY)
        .from(PRICE)
        .where(PRICE.REPLACED_BY.isNull())
        .limit(1)
        .fetchOptional(row -> CurrencyUnit.of(row.value1()));
  }

  /** The first numbers that begin so, in any case of letters. */
  public List<String> numbersBeginning(String typed, int most) {
    return context
        .select(ITEM.ITEM_NUMBER)
        .from(ITEM)
        .where(ITEM.FILE_ORDER.isNotNull())
        .and(ITEM.ITEM_NUMBER.startsWithIgnoreCase(typed))
        .orderBy(ITEM.ITEM_NUMBER)
        .limit(most)
        .fetch(ITEM.ITEM_NUMBER);
  }

  /** Number of the load that brought the catalogue kept; 0 before the first. */
  public int loadNumber() {
    Integer last =
        context.select(max(CATALOGUE_LOAD.LOAD_NUMBER)).from(CATALOGUE_LOAD).fetchSingle().value1();
    return last == null ? 0 : last;
  }

  /** Every list price an item ever had, whether still listed or not: oldest load first. */
  public List<LoadedPrice> priceHistory(String number) {
    CatalogueLoad added = CATALOGUE_LOAD.as("ADDED");
    CatalogueLoad replaced = CATALOGUE_LOAD.as("REPLACED");
    return context
        .select(PRICE, added, replaced)
        .from(PRICE)
        .join(added)
        .on(PRICE.ADDED_BY.eq(added.LOAD_NUMBER))
        .leftJoin(replaced)
        .on(PRICE.REPLACED_BY.eq(replaced.LOAD_NUMBER))
        .where(PRICE.ITEM_NUMBER.eq(number))
        .orderBy(PRICE.ADDED_BY, PRICE.VALID_FROM, PRICE.MINIMUM_QUANTITY)
        .fetch(
            row ->
                new LoadedPrice(
                    PriceRows.price(row.value1()),
                    load(row.value2()),
                    Optional.ofNullable(row.value3())
                        .filter(load -> load.getLoadNumber() != null)
                        .map(CatalogueStore::load)));
  }

  private static Load load(CatalogueLoadRecord row) {
    return new Load(row.getLoadNumber(), row.getLoadedAt().toInstant(), row.getSource());
  }

  private static int newLoad(
      DSLContext inside, Instant loadedAt, String source, int items, int prices) {
    Integer last =
        inside.select(max(CATALOGUE_LOAD.LOAD_NUMBER)).from(CATALOGUE_LOAD).fetchSingle().value1();
    int number = last == null ? 1 : last + 1;
    inside
        .insertInto(CATALOGUE_LOAD)
        .set(CATALOGUE_LOAD.LOAD_NUMBER, number)
        .set(CATALOGUE_LOAD.LOADED_AT, loadedAt.atOffset(ZoneOffset.UTC))
        .set(CATALOGUE_LOAD.SOURCE, source.substring(0, Math.min(source.length(), LONGEST_SOURCE)))
        .set(CATALOGUE_LOAD.ITEM_COUNT, items)
        .set(CATALOGUE_LOAD.PRICE_COUNT, prices)
        .execute();
    return number;
  }

  private static void replaceSuppliers(DSLContext inside, List<Supplier> suppliers) {
    List<SupplierRecord> rows = new ArrayList<>();
    for (Supplier supplier : suppliers) {
      rows.add(
          new SupplierRecord(
              supplier.code(),
              supplier.name(),
              supplier.leadDays(),
              rows.size() + 1,
              supplier.minimumOrder().map(Money::getAmount).orElse(null),
              supplier.minimumOrder().map(Amounts::code).orElse(null)));
    }
    inside.update(SUPPLIER).setNull(SUPPLIER.FILE_ORDER).execute();
    inside.batchMerge(rows).execute();
  }

  /** Rewrites only what changed: most of a catalogue stays as it is from one file to the next. */
  private static void replaceItems(DSLContext inside, List<Item> items) {
    Map<String, ItemRecord> kept = inside.selectFrom(ITEM).fetchMap(ITEM.ITEM_NUMBER);
    List<ItemRecord> added = new ArrayList<>();
    List<ItemRecord> changed = new ArrayList<>();
    int fileOrder = 0;
    for (Item item : items) {
      fileOrder++;
      ItemRecord wanted = ItemRows.main(item, fileOrder);
      ItemRecord known = kept.remove(item.number());
      if (known == null) {
        added.add(wanted);
      } else if (!known.equals(wanted)) {
        changed.add(wanted);
      }
    }
    for (ItemRecord dropped : kept.values()) {
      dropped.setFileOrder(null);
      changed.add(dropped);
    }
    inside.batchUpdate(changed).execute();
    Rows.insert(inside, ITEM, added);
    replaceParts(inside, items);
  }

  private static void replaceParts(DSLContext inside, List<Item> items) {
    inside.deleteFrom(ITEM_END).execute();
    inside.deleteFrom(ITEM_DERATING).execute();
    inside.deleteFrom(ITEM_FLUID).execute();
    Rows.insert(
        inside, ITEM_END, items.stream().flatMap(item -> ItemRows.ends(item).stream()).toList());
    Rows.insert(
        inside,
        ITEM_DERATING,
        items.stream().flatMap(item -> ItemRows.deratings(item).stream()).toList());
    Rows.insert(
        inside,
        ITEM_FLUID,
        items.stream().flatMap(item -> ItemRows.fluids(item).stream()).toList());
  }

  /** Who supplies the dealer, in the order of the catalogue. */
  public List<Supplier> suppliers() {
    return context
        .selectFrom(SUPPLIER)
        .where(SUPPLIER.FILE_ORDER.isNotNull())
        .orderBy(SUPPLIER.FILE_ORDER)
        .fetch(
            row ->
                new Supplier(
                    row.getCode(),
                    row.getName(),
                    row.getLeadDays(),
                    Optional.ofNullable(row.getMinimumOrder())
                        .map(least -> Amounts.money(least, row.getMinimumCurrency()))));
  }
}
