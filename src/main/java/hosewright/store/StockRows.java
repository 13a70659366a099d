package hosewright.store;

import static hosewright.store.db.Tables.STOCK;

import hosewright.catalogue.Item;
import hosewright.store.db.tables.records.StockMovementRecord;
import hosewright.store.db.tables.records.StockRecord;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jooq.DSLContext;

/** The shelves and their ledger: every change of what is on hand writes its row. */
final class StockRows {
  private static final String LOAD = "catalogue load";

  private StockRows() {}

  /** Why something came or went. */
  enum Kind {
    COUNTED,
    RECEIVED,
    SHIPPED
  }

  /**
   * Takes the stock a catalogue file states as a count, where the file states another number than
   * the file before: a file loaded again must not undo what was received and shipped meanwhile.
   *
   * @param before what the file before stated, by item number
   */
  static void counted(
      DSLContext inside, Map<String, Integer> before, List<Item> items, OffsetDateTime at) {
    Map<String, StockRecord> shelves = inside.selectFrom(STOCK).fetchMap(STOCK.STOCK_CODE);
    List<StockRecord> fresh = new ArrayList<>();
    List<StockRecord> changed = new ArrayList<>();
    List<StockMovementRecord> movements = new ArrayList<>();
    for (Item item : items) {
      int stated = item.stocking().onHand();
      StockRecord shelf = shelves.get(item.number());
      int onHand = shelf == null ? 0 : shelf.getOnHand();
      if (stated == before.getOrDefault(item.number(), 0) || stated == onHand) {
        continue;
      }
      if (shelf == null) {
        fresh.add(new StockRecord(item.number(), stated, 0));
      } else {
        shelf.setOnHand(stated);
        changed.add(shelf);
      }
      movements.add(movement(item.number(), stated - onHand, Kind.COUNTED, "", at, LOAD));
    }
    Rows.insert(inside, STOCK, fresh);
    inside.batchUpdate(changed).execute();
    inside.batchInsert(movements).execute();
  }

  /** What is free of every item that has a shelf. */
  static Map<String, Integer> free(DSLContext context) {
    Map<String, Integer> free = new HashMap<>();
    context
        .selectFrom(STOCK)
        .forEach(row -> free.put(row.getStockCode(), row.getOnHand() - row.getReserved()));
    return free;
  }

  /** Puts so many more on a shelf, or takes them off when negative. */
  static void move(
      DSLContext inside,
      String code,
      int quantity,
      Kind kind,
      String paper,
      OffsetDateTime at,
      String by) {
    int changed =
        inside
            .update(STOCK)
            .set(STOCK.ON_HAND, STOCK.ON_HAND.plus(quantity))
            .where(STOCK.STOCK_CODE.eq(code))
            .execute();
    if (changed == 0) {
      inside.executeInsert(new StockRecord(code, quantity, 0));
    }
    inside.batchInsert(movement(code, quantity, kind, paper, at, by)).execute();
  }

  /** Promises so many more of a shelf, or takes back a promise when negative. */
  static void reserve(DSLContext inside, String code, int quantity) {
    if (quantity == 0) {
      return;
    }
    int changed =
        inside
            .update(STOCK)
            .set(STOCK.RESERVED, STOCK.RESERVED.plus(quantity))
            .where(STOCK.STOCK_CODE.eq(code))
            .execute();
    if (changed != 1) {
      throw new IllegalStateException("no shelf " + code);
    }
  }

  private static StockMovementRecord movement(
      String code, int quantity, Kind kind, String paper, OffsetDateTime at, String by) {
    StockMovementRecord row = new StockMovementRecord();
    row.setStockCode(code);
    row.setQuantity(quantity);
    row.setKind(kind.name());
    row.setPaper(paper);
    row.setMovedAt(at);
    row.setMovedBy(by);
    return row;
  }
}
