package hosewright.store.order;

import static hosewright.store.db.Tables.ORDER_LINE;
import static hosewright.store.db.Tables.PURCHASE_LINE;
import static hosewright.store.db.Tables.PURCHASE_ORDER;
import static hosewright.store.db.Tables.STOCK;
import static org.jooq.impl.DSL.select;

import hosewright.order.Coming;
import hosewright.order.Coming.Load;
import hosewright.order.Coming.Waiting;
import hosewright.order.OrderBook.Change;
import hosewright.order.OrderBook.Counted;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.OrderLineRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.Condition;
import org.jooq.DSLContext;

/**
 * Who was promised pieces of a shelf and who waits for them. The oldest promise is kept first and
 * given up last; an older order has the lower number.
 */
final class PromiseRows {
  private static final Comparator<OrderLineRecord> OLDEST_FIRST =
      Comparator.<OrderLineRecord>comparingInt(row -> row.getOrderNumber().length())
          .thenComparing(OrderLineRecord::getOrderNumber)
          .thenComparing(OrderLineRecord::getPosition);

  private PromiseRows() {}

  /** What comes of some stock codes, and who waits for it. */
  static Coming coming(DSLContext context, Collection<String> stockCodes) {
    Set<String> codes = shelves(stockCodes);
    if (codes.isEmpty()) {
      return Coming.of(List.of(), List.of());
    }
    Condition awaited =
        PURCHASE_LINE
            .STOCK_CODE
            .in(codes)
            .and(
                PURCHASE_LINE
                    .RECEIVED
                    .plus(PURCHASE_LINE.CANCELLED)
                    .lessThan(PURCHASE_LINE.QUANTITY));
    Map<String, LocalDate> expected =
        context
            .selectFrom(PURCHASE_ORDER)
            .where(
                PURCHASE_ORDER.PURCHASE_NUMBER.in(
                    select(PURCHASE_LINE.PURCHASE_NUMBER).from(PURCHASE_LINE).where(awaited)))
            .fetchMap(PURCHASE_ORDER.PURCHASE_NUMBER, PURCHASE_ORDER.EXPECTED_ON);
    List<Load> loads =
        context
            .selectFrom(PURCHASE_LINE)
            .where(awaited)
            .fetch(
                row ->
                    new Load(
                        row.getPurchaseNumber(),
                        row.getStockCode(),
                        expected.get(row.getPurchaseNumber()),
                        row.getQuantity() - row.getReceived() - row.getCancelled()));
    List<Waiting> waiting =
        waiting(context, codes).stream()
            .map(
                row ->
                    new Waiting(
                        row.getOrderNumber(), row.getPosition(), row.getStockCode(), lacks(row)))
            .toList();
    return Coming.of(waiting, loads);
  }

  /** Gives what is free of some shelves to lines that wait for it, the oldest promise first. */
  static List<Change> serve(DSLContext inside, Collection<String> stockCodes) {
    Set<String> codes = shelves(stockCodes);
    List<Change> served = new ArrayList<>();
    if (codes.isEmpty()) {
      return served;
    }
    Map<String, Integer> free =
        inside
            .selectFrom(STOCK)
            .where(STOCK.STOCK_CODE.in(codes))
            .fetchMap(row -> row.getStockCode(), row -> row.getOnHand() - row.getReserved());
    for (OrderLineRecord row : waiting(inside, codes)) {
      int more = Math.min(lacks(row), Math.max(0, free.getOrDefault(row.getStockCode(), 0)));
      if (more > 0) {
        free.merge(row.getStockCode(), -more, Integer::sum);
        served.add(changed(inside, row, more));
      }
    }
    return served;
  }

  /** Gives what counts found to lines that wait for it; by stock code. */
  static Map<String, List<Change>> served(DSLContext inside, List<Counted> counts) {
    Set<String> more = new TreeSet<>();
    counts.stream()
        .filter(count -> count.after() > count.before())
        .forEach(count -> more.add(count.stockCode()));
    // A first load counts every item there is, and few of them are waited for.
    more.retainAll(
        inside
            .selectDistinct(ORDER_LINE.STOCK_CODE)
            .from(ORDER_LINE)
            .where(isShort())
            .fetchSet(ORDER_LINE.STOCK_CODE));
    Map<String, List<Change>> served = new HashMap<>();
    more.forEach(code -> served.put(code, serve(inside, List.of(code))));
    return served;
  }

  /** Takes from lines what a shelf no longer has for them, the newest promise first. */
  static List<Change> shorten(DSLContext inside, String stockCode, int missing) {
    List<OrderLineRecord> holding =
        new ArrayList<>(
            inside
                .selectFrom(ORDER_LINE)
                .where(ORDER_LINE.STOCK_CODE.eq(stockCode))
                .and(ORDER_LINE.RESERVED.greaterThan(0))
                .fetch());
    holding.sort(OLDEST_FIRST.reversed());
    List<Change> shortened = new ArrayList<>();
    int left = missing;
    for (OrderLineRecord row : holding) {
      int fewer = Math.min(left, row.getReserved());
      if (fewer > 0) {
        left -= fewer;
        shortened.add(changed(inside, row, -fewer));
      }
    }
    Collections.reverse(shortened);
    return shortened.stream()
        .map(change -> new Change(change.order(), change.line(), change.item(), -change.pieces()))
        .toList();
  }

  private static Change changed(DSLContext inside, OrderLineRecord row, int more) {
    row.setReserved(row.getReserved() + more);
    Rows.update(inside, ORDER_LINE, List.of(row));
    StockRows.reserve(inside, row.getStockCode(), more);
    return new Change(row.getOrderNumber(), row.getPosition(), row.getItem(), more);
  }

  private static List<OrderLineRecord> waiting(DSLContext context, Set<String> codes) {
    List<OrderLineRecord> lines =
        new ArrayList<>(
            context
                .selectFrom(ORDER_LINE)
                .where(ORDER_LINE.STOCK_CODE.in(codes))
                .and(isShort())
                .fetch());
    lines.sort(OLDEST_FIRST);
    return lines;
  }

  private static Condition isShort() {
    return ORDER_LINE
        .RESERVED
        .plus(ORDER_LINE.SHIPPED)
        .plus(ORDER_LINE.CANCELLED)
        .lessThan(ORDER_LINE.QUANTITY);
  }

  private static int lacks(OrderLineRecord row) {
    return row.getQuantity() - row.getReserved() - row.getShipped() - row.getCancelled();
  }

  /** Work and free text have no shelf. */
  private static Set<String> shelves(Collection<String> codes) {
    Set<String> shelves = new TreeSet<>(codes);
    shelves.remove("");
    return shelves;
  }
}
