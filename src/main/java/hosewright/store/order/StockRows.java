package hosewright.store.order;

import static hosewright.store.db.Tables.ORDER_COUNTER;
import static hosewright.store.db.Tables.STOCK;
import static hosewright.store.db.Tables.STOCK_MOVEMENT;
import static org.jooq.impl.DSL.max;

import hosewright.catalogue.Item;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.StockMovementRecord;
import hosewright.store.db.tables.records.StockRecord;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jooq.DSLContext;

/**
 * The shelves and their ledger: every change of what is on hand writes its row. Whoever changes
 * them holds the row of the order counter.
 */
public final class StockRows {
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
  public static void counted(
      DSLContext inside, Map<String, Integer> before, List<Item> items, OffsetDateTime at) {
    inside.selectFrom(ORDER_COUNTER).forUpdate().fetchSingle();
    Map<String, Integer> last = lastMovements(inside);
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
        fresh.add(new StockRecord(item.number(), stated, 0, null));
      } else {
        shelf.setOnHand(stated);
        changed.add(shelf);
      }
      movements.add(
          new StockMovementRecord(
              item.number(),
              last.getOrDefault(item.number(), 0) + 1,
              stated - onHand,
              Kind.COUNTED.name(),
              "",
              at,
              LOAD,
              null));
    }
    Rows.insert(inside, STOCK, fresh);
    Rows.update(inside, STOCK, changed);
    Rows.insert(inside, STOCK_MOVEMENT, movements);
  }

  /** What is free of every item that has a shelf. */
  public static Map<String, Integer> free(DSLContext context) {
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
        Rows.change(
            inside,
            STOCK,
            STOCK.STOCK_CODE.eq(code),
            shelf -> shelf.setOnHand(shelf.getOnHand() + quantity));
    if (changed == 0) {
      Rows.insert(inside, new StockRecord(code, quantity, 0, null));
    }
    Integer last =
        inside
            .select(max(STOCK_MOVEMENT.MOVEMENT_ORDER))
            .from(STOCK_MOVEMENT)
            .where(STOCK_MOVEMENT.STOCK_CODE.eq(code))
            .fetchSingle()
            .value1();
    Rows.insert(
        inside,
        new StockMovementRecord(
            code, last == null ? 1 : last + 1, quantity, kind.name(), paper, at, by, null));
  }

  /** Promises so many more of a shelf, or takes back a promise when negative. */
  static void reserve(DSLContext inside, String code, int quantity) {
    if (quantity == 0) {
      return;
    }
    int changed =
        Rows.change(
            inside,
            STOCK,
            STOCK.STOCK_CODE.eq(code),
            shelf -> shelf.setReserved(shelf.getReserved() + quantity));
    if (changed != 1) {
      throw new IllegalStateException("no shelf " + code);
    }
  }

  private static Map<String, Integer> lastMovements(DSLContext inside) {
    return inside
        .select(STOCK_MOVEMENT.STOCK_CODE, max(STOCK_MOVEMENT.MOVEMENT_ORDER))
        .from(STOCK_MOVEMENT)
        .groupBy(STOCK_MOVEMENT.STOCK_CODE)
        .fetchMap(STOCK_MOVEMENT.STOCK_CODE, max(STOCK_MOVEMENT.MOVEMENT_ORDER));
  }
}
