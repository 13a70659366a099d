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
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Supplier;
import hosewright.store.db.tables.CatalogueLoad;
import hosewright.store.db.tables.records.ItemDeratingRecord;
import hosewright.store.db.tables.records.ItemEndRecord;
import hosewright.store.db.tables.records.ItemFluidRecord;
import hosewright.store.db.tables.records.ItemRecord;
import hosewright.store.db.tables.records.SupplierRecord;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;

/** Keeps the catalogue, and every price it ever had. */
public final class CatalogueStore {
  private final DSLContext context;

  public CatalogueStore(Database database) {
    this.context = database.context();
  }

  /**
   * A list price as it was once loaded.
   *
   * @param loadedAt when the catalogue that brought it was loaded
   * @param replacedAt when a catalogue without it was loaded; empty while it is in use
   */
  public record LoadedPrice(PriceRow price, Instant loadedAt, Optional<Instant> replacedAt) {}

  /**
   * Puts a catalogue in the place of the one kept, whole or, when anything fails, not at all.
   * Prices it no longer has stay readable as {@link #priceHistory}.
   *
   * @param loadedAt the moment to note in the history
   */
  public void replace(Catalogue catalogue, Instant loadedAt) {
    List<PriceRow> prices = new ArrayList<>();
    List<CostRow> costs = new ArrayList<>();
    for (Item item : catalogue.items()) {
      prices.addAll(catalogue.priceHistory(item.number()));
      costs.addAll(catalogue.costHistory(item.number()));
    }
    context.transaction(
        nested -> {
          DSLContext inside = nested.dsl();
          int load = newLoad(inside, loadedAt, catalogue.items().size(), prices.size());
          replaceSuppliers(inside, catalogue.suppliers());
          replaceItems(inside, catalogue.items());
          PriceRows.replacePrices(inside, prices, load);
          PriceRows.replaceCosts(inside, costs, load);
        });
  }

  /** The catalogue kept; one without items before the first is put here. */
  public Catalogue load() {
    return new Catalogue(
        items(),
        List.copyOf(PriceRows.pricesInUse(context).keySet()),
        List.copyOf(PriceRows.costsInUse(context).keySet()),
        suppliers());
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
        .select(PRICE, added.LOADED_AT, replaced.LOADED_AT)
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
                    row.value2().toInstant(),
                    Optional.ofNullable(row.value3()).map(OffsetDateTime::toInstant)));
  }

  private static int newLoad(DSLContext inside, Instant loadedAt, int items, int prices) {
    Integer last =
        inside.select(max(CATALOGUE_LOAD.LOAD_NUMBER)).from(CATALOGUE_LOAD).fetchSingle().value1();
    int number = last == null ? 1 : last + 1;
    inside
        .insertInto(CATALOGUE_LOAD)
        .set(CATALOGUE_LOAD.LOAD_NUMBER, number)
        .set(CATALOGUE_LOAD.LOADED_AT, loadedAt.atOffset(ZoneOffset.UTC))
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
              supplier.code(), supplier.name(), supplier.leadDays(), rows.size() + 1));
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

  /** Four queries, whatever the number of items. */
  private List<Item> items() {
    Map<String, ? extends List<ItemEndRecord>> ends =
        context
            .selectFrom(ITEM_END)
            .orderBy(ITEM_END.ITEM_NUMBER, ITEM_END.END_ORDER)
            .fetchGroups(ITEM_END.ITEM_NUMBER);
    Map<String, ? extends List<ItemDeratingRecord>> deratings =
        context
            .selectFrom(ITEM_DERATING)
            .orderBy(ITEM_DERATING.ITEM_NUMBER, ITEM_DERATING.TEMPERATURE_F)
            .fetchGroups(ITEM_DERATING.ITEM_NUMBER);
    Map<String, ? extends List<ItemFluidRecord>> fluids =
        context.selectFrom(ITEM_FLUID).fetchGroups(ITEM_FLUID.ITEM_NUMBER);
    List<Item> items = new ArrayList<>();
    for (ItemRecord row :
        context.selectFrom(ITEM).where(ITEM.FILE_ORDER.isNotNull()).orderBy(ITEM.FILE_ORDER)) {
      String number = row.getItemNumber();
      items.add(
          ItemRows.item(
              row,
              ends.containsKey(number) ? ends.get(number) : List.of(),
              deratings.containsKey(number) ? deratings.get(number) : List.of(),
              fluids.containsKey(number) ? fluids.get(number) : List.of()));
    }
    return items;
  }

  private List<Supplier> suppliers() {
    return context
        .selectFrom(SUPPLIER)
        .where(SUPPLIER.FILE_ORDER.isNotNull())
        .orderBy(SUPPLIER.FILE_ORDER)
        .fetch(row -> new Supplier(row.getCode(), row.getName(), row.getLeadDays()));
  }
}
