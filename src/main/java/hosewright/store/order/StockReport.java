package hosewright.store.order;

import static hosewright.store.db.Tables.ORDER_LINE;
import static hosewright.store.db.Tables.PURCHASE_LINE;
import static hosewright.store.db.Tables.STOCK;
import static hosewright.store.db.Tables.STOCK_MOVEMENT;

import hosewright.order.OrderBook.StockLine;
import hosewright.store.db.tables.records.StockMovementRecord;
import hosewright.store.db.tables.records.StockRecord;
import hosewright.store.order.StockRows.Kind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jooq.Cursor;
import org.jooq.DSLContext;

/** Holds every shelf against its ledger; every row is read, so that every seal is checked. */
final class StockReport {
  private StockReport() {}

  static List<StockLine> of(DSLContext context) {
    Map<String, Integer> onOrder = new HashMap<>();
    context
        .selectFrom(PURCHASE_LINE)
        .forEach(
            row ->
                onOrder.merge(
                    row.getStockCode(),
                    row.getQuantity() - row.getReceived() - row.getCancelled(),
                    Integer::sum));
    Map<String, Integer> held = held(context);
    Map<Kind, Map<String, Integer>> moved = moved(context);
    Map<String, StockRecord> shelves = context.selectFrom(STOCK).fetchMap(STOCK.STOCK_CODE);
    TreeSet<String> codes = new TreeSet<>(shelves.keySet());
    codes.addAll(onOrder.keySet());
    codes.addAll(held.keySet());
    return codes.stream()
        .map(
            code ->
                new StockLine(
                    code,
                    new StockLine.Moved(
                        moved.get(Kind.COUNTED).getOrDefault(code, 0),
                        moved.get(Kind.RECEIVED).getOrDefault(code, 0),
                        -moved.get(Kind.SHIPPED).getOrDefault(code, 0),
                        moved.get(Kind.RETURNED).getOrDefault(code, 0),
                        -moved.get(Kind.SENT_BACK).getOrDefault(code, 0)),
                    shelves.containsKey(code) ? shelves.get(code).getOnHand() : 0,
                    shelves.containsKey(code) ? shelves.get(code).getReserved() : 0,
                    held.getOrDefault(code, 0),
                    onOrder.getOrDefault(code, 0)))
        .toList();
  }

  /** What the lines of orders hold of each shelf. */
  private static Map<String, Integer> held(DSLContext context) {
    Map<String, Integer> held = new HashMap<>();
    context
        .selectFrom(ORDER_LINE)
        .where(ORDER_LINE.RESERVED.gt(0))
        .forEach(row -> held.merge(row.getStockCode(), row.getReserved(), Integer::sum));
    return held;
  }

  private static Map<Kind, Map<String, Integer>> moved(DSLContext context) {
    Map<Kind, Map<String, Integer>> moved = new HashMap<>();
    for (Kind kind : Kind.values()) {
      moved.put(kind, new HashMap<>());
    }
    try (Cursor<StockMovementRecord> rows = context.selectFrom(STOCK_MOVEMENT).fetchLazy()) {
      rows.forEach(
          row ->
              moved
                  .get(Kind.valueOf(row.getKind()))
                  .merge(row.getStockCode(), row.getQuantity(), Integer::sum));
    }
    return moved;
  }
}
