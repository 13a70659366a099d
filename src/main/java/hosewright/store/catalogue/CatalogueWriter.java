package hosewright.store.catalogue;

import static hosewright.store.db.Tables.ITEM;
import static hosewright.store.db.Tables.ITEM_DERATING;
import static hosewright.store.db.Tables.ITEM_END;
import static hosewright.store.db.Tables.ITEM_FLUID;
import static hosewright.store.db.Tables.SUPPLIER;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CostRow;
import hosewright.catalogue.Item;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Supplier;
import hosewright.order.OrderBook.Counted;
import hosewright.store.database.Amounts;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.CatalogueLoadRecord;
import hosewright.store.db.tables.records.ItemRecord;
import hosewright.store.db.tables.records.SupplierRecord;
import hosewright.store.order.StockRows;
import hosewright.store.seal.CatalogueSeals;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Writes a catalogue over the one kept, inside the transaction of one load. */
final class CatalogueWriter {
  private static final int LONGEST_SOURCE = 300;

  private final DSLContext inside;
  private final int load;
  private final OffsetDateTime loadedAt;

  /**
   * @param load number of the load, one more than the last
   */
  CatalogueWriter(DSLContext inside, int load, Instant loadedAt) {
    this.inside = inside;
    this.load = load;
    this.loadedAt = loadedAt.atOffset(ZoneOffset.UTC);
  }

  /** Gives each shelf that the catalogue counts. */
  List<Counted> replace(Catalogue catalogue, String source) {
    List<PriceRow> prices = new ArrayList<>();
    List<CostRow> costs = new ArrayList<>();
    for (Item item : catalogue.items()) {
      prices.addAll(catalogue.priceHistory(item.number()));
      costs.addAll(catalogue.costHistory(item.number()));
    }
    note(source, catalogue.items().size(), prices.size());
    replaceSuppliers(catalogue.suppliers());
    Map<String, ItemRecord> kept = inside.selectFrom(ITEM).fetchMap(ITEM.ITEM_NUMBER);
    Map<String, Integer> stated = new HashMap<>();
    kept.forEach((number, item) -> stated.put(number, item.getOnHand()));
    replaceItems(catalogue.items(), kept);
    List<Counted> counted = StockRows.counted(inside, stated, catalogue.items(), loadedAt);
    PriceRows.replacePrices(inside, prices, load);
    PriceRows.replaceCosts(inside, costs, load);
    CatalogueSeals.write(inside);
    return counted;
  }

  private void note(String source, int items, int prices) {
    CatalogueLoadRecord row = new CatalogueLoadRecord();
    row.setLoadNumber(load);
    row.setLoadedAt(loadedAt);
    row.setSource(source.substring(0, Math.min(source.length(), LONGEST_SOURCE)));
    row.setItemCount(items);
    row.setPriceCount(prices);
    Rows.insert(inside, row);
  }

  private void replaceSuppliers(List<Supplier> suppliers) {
    List<SupplierRecord> rows = new ArrayList<>();
    for (Supplier supplier : suppliers) {
      rows.add(
          new SupplierRecord(
              supplier.code(),
              supplier.name(),
              supplier.leadDays(),
              rows.size() + 1,
              supplier.minimumOrder().map(Money::getAmount).orElse(null),
              supplier.minimumOrder().map(Amounts::code).orElse(null),
              null));
    }
    Rows.change(inside, SUPPLIER, DSL.noCondition(), row -> row.setFileOrder(null));
    Rows.merge(inside, SUPPLIER, rows);
  }

  /**
   * Rewrites only what changed: most of a catalogue stays as it is from one file to the next.
   *
   * @param kept the rows there are, by number; those that are listed are taken out of it
   */
  private void replaceItems(List<Item> items, Map<String, ItemRecord> kept) {
    List<ItemRecord> added = new ArrayList<>();
    List<ItemRecord> changed = new ArrayList<>();
    int fileOrder = 0;
    for (Item item : items) {
      fileOrder++;
      ItemRecord wanted = ItemRows.main(item, fileOrder);
      ItemRecord known = kept.remove(item.number());
      if (known == null) {
        added.add(wanted);
        continue;
      }
      // The kept row's seal was checked when it was read: equal values would have the same.
      wanted.setSeal(known.getSeal());
      if (!known.equals(wanted)) {
        changed.add(wanted);
      }
    }
    for (ItemRecord dropped : kept.values()) {
      dropped.setFileOrder(null);
      changed.add(dropped);
    }
    Rows.update(inside, ITEM, changed);
    Rows.insert(inside, ITEM, added);
    replaceParts(items);
  }

  private void replaceParts(List<Item> items) {
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
}
