package hosewright.store.catalogue;

import static hosewright.store.db.Tables.COST;
import static hosewright.store.db.Tables.PRICE;

import hosewright.catalogue.CostRow;
import hosewright.catalogue.PriceRow;
import hosewright.store.database.Amounts;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.CostRecord;
import hosewright.store.db.tables.records.PriceRecord;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.Cursor;
import org.jooq.DSLContext;

/**
 * Prices and costs as rows that are never rewritten: a load adds rows that are new and closes rows
 * it no longer finds.
 */
final class PriceRows {
  private PriceRows() {}

  /**
   * The prices in use, row by row: a large catalogue has hundreds of thousands.
   *
   * @param only the items wanted; all when empty
   */
  static List<PriceRow> prices(DSLContext context, Optional<Collection<String>> only) {
    List<PriceRow> prices = new ArrayList<>();
    try (Cursor<PriceRecord> rows =
        context
            .selectFrom(PRICE)
            .where(PRICE.REPLACED_BY.isNull())
            .and(ItemQuery.about(PRICE.ITEM_NUMBER, only))
            .orderBy(PRICE.ITEM_NUMBER, PRICE.VALID_FROM, PRICE.MINIMUM_QUANTITY)
            .fetchLazy()) {
      rows.forEach(row -> prices.add(price(row)));
    }
    return prices;
  }

  /** The costs in use, as {@link #prices}. */
  static List<CostRow> costs(DSLContext context, Optional<Collection<String>> only) {
    List<CostRow> costs = new ArrayList<>();
    try (Cursor<CostRecord> rows =
        context
            .selectFrom(COST)
            .where(COST.REPLACED_BY.isNull())
            .and(ItemQuery.about(COST.ITEM_NUMBER, only))
            .orderBy(COST.ITEM_NUMBER, COST.VALID_FROM, COST.SUPPLIER_CODE)
            .fetchLazy()) {
      rows.forEach(row -> costs.add(cost(row)));
    }
    return costs;
  }

  private static Map<PriceRow, PriceRecord> pricesInUse(DSLContext context) {
    Map<PriceRow, PriceRecord> inUse = new LinkedHashMap<>();
    context
        .selectFrom(PRICE)
        .where(PRICE.REPLACED_BY.isNull())
        .forEach(row -> inUse.put(price(row), row));
    return inUse;
  }

  private static Map<CostRow, CostRecord> costsInUse(DSLContext context) {
    Map<CostRow, CostRecord> inUse = new LinkedHashMap<>();
    context
        .selectFrom(COST)
        .where(COST.REPLACED_BY.isNull())
        .forEach(row -> inUse.put(cost(row), row));
    return inUse;
  }

  static void replacePrices(DSLContext context, List<PriceRow> wanted, int load) {
    Map<PriceRow, PriceRecord> dropped = pricesInUse(context);
    List<PriceRecord> added = new ArrayList<>();
    for (PriceRow price : wanted) {
      if (dropped.remove(price) == null) {
        added.add(record(price, load));
      }
    }
    dropped.values().forEach(row -> row.setReplacedBy(load));
    Rows.update(context, PRICE, dropped.values());
    Rows.insert(context, PRICE, added);
  }

  static void replaceCosts(DSLContext context, List<CostRow> wanted, int load) {
    Map<CostRow, CostRecord> dropped = costsInUse(context);
    List<CostRecord> added = new ArrayList<>();
    for (CostRow cost : wanted) {
      if (dropped.remove(cost) == null) {
        added.add(record(cost, load));
      }
    }
    dropped.values().forEach(row -> row.setReplacedBy(load));
    Rows.update(context, COST, dropped.values());
    Rows.insert(context, COST, added);
  }

  static PriceRow price(PriceRecord row) {
    return new PriceRow(
        row.getItemNumber(),
        row.getValidFrom(),
        Optional.ofNullable(row.getValidUntil()),
        row.getMinimumQuantity(),
        Amounts.money(row.getUnitPrice(), row.getCurrency()));
  }

  private static CostRow cost(CostRecord row) {
    return new CostRow(
        row.getItemNumber(),
        row.getSupplierCode(),
        row.getValidFrom(),
        Optional.ofNullable(row.getValidUntil()),
        Amounts.money(row.getUnitCost(), row.getCurrency()));
  }

  private static PriceRecord record(PriceRow price, int load) {
    return new PriceRecord(
        price.item(),
        price.minimumQuantity(),
        price.from(),
        price.until().orElse(null),
        price.unitPrice().getAmount(),
        Amounts.code(price.unitPrice()),
        load,
        null,
        null);
  }

  private static CostRecord record(CostRow cost, int load) {
    return new CostRecord(
        cost.item(),
        cost.supplier(),
        cost.from(),
        cost.until().orElse(null),
        cost.unitCost().getAmount(),
        Amounts.code(cost.unitCost()),
        load,
        null,
        null);
  }
}
