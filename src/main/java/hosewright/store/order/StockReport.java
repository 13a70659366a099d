package hosewright.store.order;

import static hosewright.store.db.Tables.ORDER_LINE;
import static hosewright.store.db.Tables.PURCHASE_LINE;
import static hosewright.store.db.Tables.STOCK;
import static hosewright.store.db.Tables.STOCK_MOVEMENT;
import static org.jooq.impl.DSL.sum;

import hosewright.order.OrderBook.StockLine;
import hosewright.store.db.tables.records.StockRecord;
import hosewright.store.order.StockRows.Kind;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jooq.DSLContext;
import org.jooq.Field;

/** Holds every shelf against its ledger. */
final class StockReport {
  private StockReport() {}

  static List<StockLine> of(DSLContext context) {
    Field<Integer> outstanding =
        PURCHASE_LINE.QUANTITY.minus(PURCHASE_LINE.RECEIVED).minus(PURCHASE_LINE.CANCELLED);
    Map<String, Integer> onOrder = new HashMap<>();
    context
        .select(PURCHASE_LINE.STOCK_CODE, sum(outstanding))
        .from(PURCHASE_LINE)
        .groupBy(PURCHASE_LINE.STOCK_CODE)
        .forEach(row -> onOrder.put(row.value1(), row.value2().intValueExact()));
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
                        -moved.get(Kind.SHIPPED).getOrDefault(code, 0)),
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
        .select(ORDER_LINE.STOCK_CODE, sum(ORDER_LINE.RESERVED))
        .from(ORDER_LINE)
        .where(ORDER_LINE.RESERVED.gt(0))
        .groupBy(ORDER_LINE.STOCK_CODE)
        .forEach(row -> held.put(row.value1(), row.value2().intValueExact()));
    return held;
  }

  private static Map<Kind, Map<String, Integer>> moved(DSLContext context) {
    Map<Kind, Map<String, Integer>> moved = new HashMap<>();
    for (Kind kind : Kind.values()) {
      moved.put(kind, new HashMap<>());
    }
    context
        .select(STOCK_MOVEMENT.KIND, STOCK_MOVEMENT.STOCK_CODE, sum(STOCK_MOVEMENT.QUANTITY))
        .from(STOCK_MOVEMENT)
        .groupBy(STOCK_MOVEMENT.KIND, STOCK_MOVEMENT.STOCK_CODE)
        .forEach(
            row ->
                moved
                    .get(Kind.valueOf(row.value1()))
                    .put(row.value2(), ((BigDecimal) row.value3()).intValueExact()));
    return moved;
  }
}
