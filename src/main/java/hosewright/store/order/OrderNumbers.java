package hosewright.store.order;

import static hosewright.store.db.Tables.ORDER_COUNTER;
import static hosewright.store.db.Tables.ORDER_VOID;

import hosewright.order.Order;
import hosewright.order.PurchaseOrder;
import hosewright.store.database.HighWaterMarks;
import hosewright.store.database.Rows;
import hosewright.store.database.Series;
import hosewright.store.db.tables.records.OrderCounterRecord;
import hosewright.store.db.tables.records.OrderVoidRecord;
import hosewright.store.quote.QuoteNumbers;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jooq.DSLContext;

/**
 * Hands out the numbers of orders and of their purchase orders, inside the transaction that keeps
 * them and while the counter is locked.
 */
record OrderNumbers(HighWaterMarks marks) {

  /**
   * An order with all its numbers.
   *
   * @param withNumber makes the order, its purchase orders not numbered yet
   * @param now noted beside numbers that turn out to be lost
   */
  Order number(DSLContext inside, Function<String, Order> withNumber, OffsetDateTime now) {
    OrderCounterRecord counter = inside.selectFrom(ORDER_COUNTER).forUpdate().fetchSingle();
    int order = lastUsed(inside, Series.ORDER, counter.getLastOrder(), now) + 1;
    int purchase = lastUsed(inside, Series.PURCHASE, counter.getLastPurchase(), now);
    Order made = withNumber.apply(Series.ORDER.written(order));
    List<PurchaseOrder> purchases = new ArrayList<>();
    for (PurchaseOrder bought : made.purchases()) {
      purchase++;
      purchases.add(bought.numbered(Series.PURCHASE.written(purchase)));
    }
    counter.setLastOrder(order);
    counter.setLastPurchase(purchase);
    Rows.update(inside, ORDER_COUNTER, List.of(counter));
    return made.with(purchases);
  }

  /** Further purchase orders with their numbers. */
  List<PurchaseOrder> number(DSLContext inside, List<PurchaseOrder> made, OffsetDateTime now) {
    OrderCounterRecord counter = inside.selectFrom(ORDER_COUNTER).forUpdate().fetchSingle();
    int purchase = lastUsed(inside, Series.PURCHASE, counter.getLastPurchase(), now);
    List<PurchaseOrder> numbered = new ArrayList<>();
    for (PurchaseOrder bought : made) {
      purchase++;
      numbered.add(bought.numbered(Series.PURCHASE.written(purchase)));
    }
    counter.setLastPurchase(purchase);
    Rows.update(inside, ORDER_COUNTER, List.of(counter));
    return numbered;
  }

  /**
   * Remembers that somebody is about to see an order's numbers. Call when it is kept: a process
   * that dies between the two has told nobody, and the numbers stand in the store.
   */
  void told(Order order) {
    marks.of(Series.ORDER).raise(Series.number(order.number()));
    order.purchases().stream()
        .mapToInt(purchase -> Series.number(purchase.number()))
        .max()
        .ifPresent(highest -> marks.of(Series.PURCHASE).raise(highest));
  }

  /** Whether a paper of a series was given a number that no restored backup made void. */
  boolean isUsed(DSLContext context, Series series, String written) {
    OrderCounterRecord counter = context.selectFrom(ORDER_COUNTER).fetchSingle();
    return series.isUpTo(
            written, series == Series.ORDER ? counter.getLastOrder() : counter.getLastPurchase())
        && !context.fetchExists(ORDER_VOID, ORDER_VOID.PAPER_NUMBER.eq(written));
  }

  private int lastUsed(DSLContext inside, Series series, int stored, OffsetDateTime now) {
    int highest = marks.of(series).above(stored);
    List<OrderVoidRecord> lost =
        series
            .between(stored, highest)
            .map(number -> new OrderVoidRecord(number, QuoteNumbers.LOST, now, null))
            .toList();
    Rows.insert(inside, ORDER_VOID, lost);
    return highest;
  }
}
