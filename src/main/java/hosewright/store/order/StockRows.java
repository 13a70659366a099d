package hosewright.store.order;

import static hosewright.store.db.Tables.ORDER_COUNTER;
import static hosewright.store.db.Tables.STOCK;
import static hosewright.store.db.Tables.STOCK_MOVEMENT;
import static org.jooq.impl.DSL.max;

import hosewright.catalogue.Item;
import hosewright.order.OrderBook.Actor;
import hosewright.order.OrderBook.Change;
import hosewright.order.OrderBook.Counted;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.StockMovementRecord;
import hosewright.store.db.tables.records.StockRecord;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
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
    SHIPPED,
    /** Came back from a customer. */
    RETURNED,
    /** Went back to a supplier. */
    SENT_BACK
  }

  /**
   * A change of a shelf.
   *
   * @param paper the order or purchase order it belongs to; empty for a count
   * @param reason why, in a person's words; may be empty
   */
  record Movement(Kind kind, String paper, String reason) {}

  /**
   * Takes the stock a catalogue file states as a count, where the file states another number than
   * the file before: a file loaded again must not undo what was received and shipped meanwhile.
   * Where fewer are counted than are promised, the newest promises are given up first.
   *
   * @param before what the file before stated, by item number
   * @return each shelf that was counted
   */
  public static List<Counted> counted(
      DSLContext inside, Map<String, Integer> before, List<Item> items, OffsetDateTime at) {
    inside.selectFrom(ORDER_COUNTER).forUpdate().fetchSingle();
    Map<String, Integer> last = lastMovements(inside);
    Map<String, StockRecord> shelves = inside.selectFrom(STOCK).fetchMap(STOCK.STOCK_CODE);
    List<StockRecord> fresh = new ArrayList<>();
    List<StockRecord> changed = new ArrayList<>();
    List<StockMovementRecord> movements = new ArrayList<>();
    List<Counted> counted = new ArrayList<>();
    for (Item item : items) {
      int stated = item.stocking().onHand();
      StockRecord shelf = shelves.get(item.number());
      int onHand = shelf == null ? 0 : shelf.getOnHand();
      if (stated == before.getOrDefault(item.number(), 0) || stated == onHand) {
        continue;
      }
      counted.add(new Counted(item.number(), onHand, stated, List.of(), List.of()));
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
              null,
              null));
    }
    Map<String, List<Change>> shortened = shortened(inside, changed);
    Rows.insert(inside, STOCK, fresh);
    Rows.update(inside, STOCK, changed);
    Rows.insert(inside, STOCK_MOVEMENT, movements);
    Map<String, List<Change>> served = PromiseRows.served(inside, counted);
    return counted.stream()
        .map(
            one ->
                new Counted(
                    one.stockCode(),
                    one.before(),
                    one.after(),
                    shortened.getOrDefault(one.stockCode(), List.of()),
                    served.getOrDefault(one.stockCode(), List.of())))
        .toList();
  }

  /**
   * What a load would count, as {@link #counted} has it.
   *
   * @param before what the file before stated, by item number
   */
  public static List<Counted> wouldCount(
      DSLContext context, Map<String, Integer> before, List<Item> items) {
    Map<String, StockRecord> shelves = context.selectFrom(STOCK).fetchMap(STOCK.STOCK_CODE);
    return items.stream()
        .filter(item -> item.stocking().onHand() != before.getOrDefault(item.number(), 0))
        .map(
            item ->
                new Counted(
                    item.number(),
                    shelves.containsKey(item.number()) ? shelves.get(item.number()).getOnHand() : 0,
                    item.stocking().onHand(),
                    List.of(),
                    List.of()))
        .filter(count -> count.before() != count.after())
        .toList();
  }

  /** Gives up promises that shelves no longer have pieces for, and writes so into the shelves. */
  private static Map<String, List<Change>> shortened(DSLContext inside, List<StockRecord> shelves) {
    Map<String, List<Change>> shortened = new HashMap<>();
    for (StockRecord shelf : shelves) {
      int missing = shelf.getReserved() - shelf.getOnHand();
      if (missing > 0) {
        List<Change> changes = PromiseRows.shorten(inside, shelf.getStockCode(), missing);
        shortened.put(shelf.getStockCode(), changes);
        shelf.setReserved(shelf.getReserved() - changes.stream().mapToInt(Change::pieces).sum());
      }
    }
    return shortened;
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
  static void move(DSLContext inside, String code, int quantity, Movement movement, Actor actor) {
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
            code,
            last == null ? 1 : last + 1,
            quantity,
            movement.kind().name(),
            movement.paper(),
            actor.at().atOffset(ZoneOffset.UTC),
            actor.name(),
            null,
            movement.reason().isEmpty() ? null : movement.reason()));
  }

  /** How many of a shelf are promised. */
  static int reserved(DSLContext inside, String code) {
    return inside
        .selectFrom(STOCK)
        .where(STOCK.STOCK_CODE.eq(code))
        .fetchOptional()
        .map(StockRecord::getReserved)
        .orElse(0);
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
