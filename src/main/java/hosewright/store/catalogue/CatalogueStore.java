package hosewright.store.catalogue;

import static hosewright.store.db.Tables.CATALOGUE_LOAD;
import static hosewright.store.db.Tables.COST;
import static hosewright.store.db.Tables.ITEM;
import static hosewright.store.db.Tables.ITEM_DERATING;
import static hosewright.store.db.Tables.ITEM_END;
import static hosewright.store.db.Tables.ITEM_FLUID;
import static hosewright.store.db.Tables.PRICE;
import static hosewright.store.db.Tables.SUPPLIER;
import static org.jooq.impl.DSL.max;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CostRow;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Supplier;
import hosewright.catalogue.find.Listing;
import hosewright.order.OrderBook.Counted;
import hosewright.store.database.Amounts;
import hosewright.store.database.Database;
import hosewright.store.database.Turns;
import hosewright.store.db.tables.CatalogueLoad;
import hosewright.store.db.tables.records.CatalogueLoadRecord;
import hosewright.store.order.StockRows;
import hosewright.store.seal.CatalogueSeals;
import hosewright.store.seal.SealCheck;
import hosewright.store.seal.Tally;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.jooq.DSLContext;

/** Keeps the catalogue, and every price it ever had. */
public final class CatalogueStore {
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
   * Puts a catalogue in the place of the one kept and notes what it came from.
   *
   * @param source file or folder, at most 300 characters of it are kept
   * @return each shelf that its stock column counts
   */
  public List<Counted> replace(Catalogue catalogue, Instant loadedAt, String source) {
    return context.transactionResult(
        nested -> {
          DSLContext inside = nested.dsl();
          Turns.take(inside, CATALOGUE_LOAD);
          return new CatalogueWriter(inside, lastLoad(inside) + 1, loadedAt)
              .replace(catalogue, source);
        });
  }

  /** Each shelf that a catalogue put here would count. */
  public List<Counted> wouldCount(Catalogue catalogue) {
    Map<String, Integer> stated = new HashMap<>();
    context.selectFrom(ITEM).forEach(item -> stated.put(item.getItemNumber(), item.getOnHand()));
    return StockRows.wouldCount(context, stated, catalogue.items());
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
    Tally tally = new Tally(context);
    DSLContext counting = tally.counting();
    Catalogue whole = load(counting, PriceRows.costs(counting, Optional.empty()), Optional.empty());
    tally.whole(SUPPLIER, ITEM, ITEM_END, ITEM_DERATING, ITEM_FLUID, PRICE, COST);
    return whole;
  }

  /** The part of the catalogue that is about these items, dropped ones left out. */
  public Catalogue load(Collection<String> numbers) {
    Optional<Collection<String>> only = Optional.of(numbers);
    return load(context, PriceRows.costs(context, only), only);
  }

  /**
   * What tells a catalogue kept from every other: one read under a like mark reads the same.
   *
   * @param digests over all rows in use, by the names of tables
   * @param free what is on hand and promised to nobody, by item number
   */
  public record Mark(int load, Map<String, String> digests, Map<String, Integer> free) {}

  /** The mark of the catalogue kept; empty where its load left no digests. */
  public Optional<Mark> mark() {
    Map<String, String> digests = CatalogueSeals.digests(context);
    return digests.isEmpty()
        ? Optional.empty()
        : Optional.of(new Mark(loadNumber(), digests, StockRows.free(context)));
  }

  /** The catalogue kept, without what nobody asks who only plans and quotes. */
  public Catalogue loadWithoutCosts() {
    Tally tally = new Tally(context);
    Catalogue whole = load(tally.counting(), List.of(), Optional.empty());
    tally.whole(SUPPLIER, ITEM, ITEM_END, ITEM_DERATING, ITEM_FLUID, PRICE);
    return whole;
  }

  private static Catalogue load(
      DSLContext context, List<CostRow> costs, Optional<Collection<String>> only) {
    return new Catalogue(
        new ItemQuery(context).items(only),
        PriceRows.prices(context, only),
        costs,
        suppliers(context));
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
        .selectFrom(PRICE)
        .where(PRICE.REPLACED_BY.isNull())
        .limit(1)
        .fetchOptional(row -> CurrencyUnit.of(row.getCurrency()));
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
    return lastLoad(context);
  }

  private static int lastLoad(DSLContext context) {
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
            row -> {
              SealCheck.check(row.value1(), PRICE);
              return new LoadedPrice(
                  PriceRows.price(row.value1()),
                  load(row.value2()),
                  Optional.ofNullable(row.value3())
                      .filter(load -> load.getLoadNumber() != null)
                      .map(CatalogueStore::load));
            });
  }

  private static Load load(CatalogueLoadRecord row) {
    return new Load(row.getLoadNumber(), row.getLoadedAt().toInstant(), row.getSource());
  }

  /** Who supplies the dealer, in the order of the catalogue. */
  public List<Supplier> suppliers() {
    return suppliers(context);
  }

  private static List<Supplier> suppliers(DSLContext context) {
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
