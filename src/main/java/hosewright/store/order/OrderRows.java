package hosewright.store.order;

import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.ORDER_LINE;
import static hosewright.store.db.Tables.PURCHASE_LINE;
import static hosewright.store.db.Tables.PURCHASE_ORDER;
import static org.jooq.impl.DSL.select;

import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.store.database.Amounts;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.CustomerOrderRecord;
import hosewright.store.db.tables.records.OrderLineRecord;
import hosewright.store.db.tables.records.PurchaseLineRecord;
import hosewright.store.db.tables.records.PurchaseOrderRecord;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.jooq.Condition;
import org.jooq.DSLContext;

/** An order as rows, and back. */
final class OrderRows {
  private OrderRows() {}

  static void insert(DSLContext inside, Order order) {
    Rows.insert(
        inside,
        new CustomerOrderRecord(
            order.number(),
            order.sold().quoteNumber(),
            order.sold().quoteRevision(),
            order.sold().customer(),
            order.sold().title(),
            order.timing().raisedOn(),
            order.timing().shipOn().orElse(order.timing().raisedOn()),
            order.timing().raisedAt().atOffset(ZoneOffset.UTC),
            order.timing().raisedBy(),
            null,
            null,
            null,
            null,
            order.timing().shipOn().isEmpty() ? true : null));
    Rows.insert(inside, ORDER_LINE, order.lines().stream().map(line -> row(order, line)).toList());
    insert(inside, order.number(), order.purchases());
  }

  /** Writes purchase orders made for an order. */
  static void insert(DSLContext inside, String order, List<PurchaseOrder> purchases) {
    for (PurchaseOrder purchase : purchases) {
      Rows.insert(
          inside,
          new PurchaseOrderRecord(
              purchase.number(),
              order,
              purchase.supplier(),
              purchase.supplierName(),
              purchase.expectedOn(),
              purchase.remark(),
              null,
              purchase.freight().map(Money::getAmount).orElse(null),
              purchase.freight().map(Amounts::code).orElse(null)));
      Rows.insert(
          inside,
          PURCHASE_LINE,
          purchase.lines().stream().map(line -> row(purchase, line)).toList());
    }
  }

  /** The orders of a condition on their row, newest first. */
  static List<Order> fetch(DSLContext context, Condition which) {
    return context
        .selectFrom(CUSTOMER_ORDER)
        .where(which)
        .orderBy(CUSTOMER_ORDER.ORDER_NUMBER.desc())
        .fetch(row -> order(context, row));
  }

  static Optional<Order> one(DSLContext context, String number) {
    return fetch(context, CUSTOMER_ORDER.ORDER_NUMBER.eq(number)).stream().findFirst();
  }

  static Optional<Order> byPurchase(DSLContext context, String purchaseNumber) {
    return fetch(
            context,
            CUSTOMER_ORDER.ORDER_NUMBER.in(
                select(PURCHASE_ORDER.ORDER_NUMBER)
                    .from(PURCHASE_ORDER)
                    .where(PURCHASE_ORDER.PURCHASE_NUMBER.eq(purchaseNumber))))
        .stream()
        .findFirst();
  }

  /** Writes where a line's pieces are now. */
  static void moved(DSLContext inside, String number, OrderLine line) {
    Rows.change(
        inside,
        ORDER_LINE,
        ORDER_LINE.ORDER_NUMBER.eq(number).and(ORDER_LINE.POSITION.eq(line.position())),
        row -> {
          row.setReserved(line.counts().reserved());
          row.setShipped(line.counts().shipped());
          row.setCancelled(line.counts().cancelled());
          row.setReturned(some(line.counts().returned()));
        });
  }

  /** None is empty, as in rows kept before there were any. */
  private static Integer some(int pieces) {
    return pieces == 0 ? null : pieces;
  }

  private static int pieces(Integer some) {
    return some == null ? 0 : some;
  }

  /** Writes that so many more of a purchase order's line came, and how many beyond those bought. */
  static void received(
      DSLContext inside, String purchaseNumber, int position, int came, int beyond) {
    Rows.change(
        inside,
        PURCHASE_LINE,
        line(purchaseNumber, position),
        row -> {
          row.setReceived(row.getReceived() + came);
          row.setOverTaken(some(pieces(row.getOverTaken()) + beyond));
        });
  }

  /** Writes an order as it stands when cancelled. */
  static void cancel(DSLContext inside, Order order) {
    Order.Cancellation cancellation = order.cancellation().orElseThrow();
    Rows.change(
        inside,
        CUSTOMER_ORDER,
        CUSTOMER_ORDER.ORDER_NUMBER.eq(order.number()),
        row -> {
          row.setCancelledAt(cancellation.at().atOffset(ZoneOffset.UTC));
          row.setCancelledBy(cancellation.by());
          row.setCancelReason(cancellation.reason());
        });
    order.lines().forEach(line -> moved(inside, order.number(), line));
    for (PurchaseOrder purchase : order.purchases()) {
      for (PurchaseLine line : purchase.lines()) {
        Rows.change(
            inside,
            PURCHASE_LINE,
            line(purchase.number(), line.position()),
            row -> row.setCancelled(line.cancelled()));
      }
    }
  }

  private static Condition line(String purchaseNumber, int position) {
    return PURCHASE_LINE
        .PURCHASE_NUMBER
        .eq(purchaseNumber)
        .and(PURCHASE_LINE.POSITION.eq(position));
  }

  private static OrderLineRecord row(Order order, OrderLine line) {
    return new OrderLineRecord(
        order.number(),
        line.position(),
        line.quotePosition(),
        line.ware().stockCode(),
        line.ware().item(),
        line.ware().description(),
        line.ware().unit(),
        line.counts().quantity(),
        line.counts().reserved(),
        line.counts().shipped(),
        line.counts().cancelled(),
        null,
        some(line.counts().returned()));
  }

  private static PurchaseLineRecord row(PurchaseOrder purchase, PurchaseLine line) {
    return new PurchaseLineRecord(
        purchase.number(),
        line.position(),
        line.ware().stockCode(),
        line.ware().description(),
        line.ware().unit(),
        line.needed(),
        line.quantity(),
        line.received(),
        line.unitCost().map(Money::getAmount).orElse(null),
        line.unitCost().map(Amounts::code).orElse(null),
        line.cancelled(),
        null,
        some(line.counts().overTaken()));
  }

  private static Order order(DSLContext context, CustomerOrderRecord row) {
    String number = row.getOrderNumber();
    return new Order(
        number,
        new Order.Sold(
            row.getQuoteNumber(), row.getQuoteRevision(), row.getCustomerName(), row.getTitle()),
        new Order.Timing(
            row.getRaisedOn(),
            Optional.of(row.getShipOn()).filter(day -> !Boolean.TRUE.equals(row.getShipOpen())),
            row.getRaisedAt().toInstant(),
            row.getRaisedBy()),
        Optional.ofNullable(row.getCancelledAt())
            .map(
                at ->
                    new Order.Cancellation(
                        row.getCancelledBy(), at.toInstant(), row.getCancelReason())),
        context
            .selectFrom(ORDER_LINE)
            .where(ORDER_LINE.ORDER_NUMBER.eq(number))
            .orderBy(ORDER_LINE.POSITION)
            .fetch(OrderRows::line),
        context
            .selectFrom(PURCHASE_ORDER)
            .where(PURCHASE_ORDER.ORDER_NUMBER.eq(number))
            .orderBy(PURCHASE_ORDER.PURCHASE_NUMBER)
            .fetch(purchase -> purchase(context, purchase)));
  }

  private static OrderLine line(OrderLineRecord row) {
    return new OrderLine(
        row.getPosition(),
        row.getQuotePosition(),
        new OrderLine.Ware(row.getStockCode(), row.getItem(), row.getDescription(), row.getUnit()),
        new OrderLine.Counts(
            row.getQuantity(),
            row.getReserved(),
            row.getShipped(),
            row.getCancelled(),
            pieces(row.getReturned())));
  }

  private static PurchaseOrder purchase(DSLContext context, PurchaseOrderRecord row) {
    return new PurchaseOrder(
        row.getPurchaseNumber(),
        row.getOrderNumber(),
        row.getSupplierCode(),
        row.getSupplierName(),
        new PurchaseOrder.Terms(
            row.getExpectedOn(),
            row.getRemark(),
            Optional.ofNullable(row.getFreight())
                .map(freight -> Amounts.money(freight, row.getFreightCurrency()))),
        context
            .selectFrom(PURCHASE_LINE)
            .where(PURCHASE_LINE.PURCHASE_NUMBER.eq(row.getPurchaseNumber()))
            .orderBy(PURCHASE_LINE.POSITION)
            .fetch(OrderRows::line));
  }

  private static PurchaseLine line(PurchaseLineRecord row) {
    return new PurchaseLine(
        row.getPosition(),
        new PurchaseLine.Ware(row.getStockCode(), row.getDescription(), row.getUnit()),
        new PurchaseLine.Counts(
            row.getNeeded(),
            row.getQuantity(),
            row.getReceived(),
            row.getCancelled(),
            pieces(row.getOverTaken())),
        Optional.ofNullable(row.getUnitCost()).map(cost -> Amounts.money(cost, row.getCurrency())));
  }
}
