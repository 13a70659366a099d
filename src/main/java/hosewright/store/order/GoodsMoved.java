package hosewright.store.order;

import static hosewright.store.db.Tables.STOCK;

import hosewright.order.Order;
import hosewright.order.OrderBook.Actor;
import hosewright.order.OrderBook.Change;
import hosewright.order.OrderBook.Counted;
import hosewright.order.OrderBook.Over;
import hosewright.order.OrderBook.Received;
import hosewright.order.OrderLine;
import hosewright.order.Portion;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.problem.Given;
import hosewright.store.order.StockRows.Kind;
import hosewright.store.order.StockRows.Movement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jooq.DSLContext;

/** What comes, goes and is counted, inside a transaction that holds the row of the counter. */
final class GoodsMoved {
  private static final int MOST_ON_A_SHELF = 99_999_999;

  private final DSLContext inside;
  private final Actor actor;

  GoodsMoved(DSLContext inside, Actor actor) {
    this.inside = inside;
    this.actor = actor;
  }

  Received receive(String purchaseNumber, Map<Integer, Integer> quantities, Over over) {
    Order order = OrderRows.byPurchase(inside, purchaseNumber).orElseThrow();
    PurchaseOrder purchase =
        order.purchases().stream()
            .filter(bought -> bought.number().equals(purchaseNumber))
            .findFirst()
            .orElseThrow();
    boolean more = over != Over.REFUSED;
    Portion.check(
        quantities,
        purchase.lines(),
        PurchaseLine::position,
        line -> more ? MOST_ON_A_SHELF : line.outstanding(),
        more ? "bought" : "still to come; " + Given.as("over") + " says what becomes of more");
    List<String> codes = new ArrayList<>();
    for (PurchaseLine line : purchase.lines()) {
      int came = quantities.getOrDefault(line.position(), 0);
      if (came > 0) {
        codes.add(line.ware().stockCode());
        receive(purchaseNumber, line, came, over);
      }
    }
    List<Change> served = PromiseRows.serve(inside, codes);
    return new Received(OrderRows.one(inside, order.number()).orElseThrow(), served);
  }

  private void receive(String purchase, PurchaseLine line, int came, Over over) {
    int awaited = Math.min(came, line.outstanding());
    int beyond = came - awaited;
    String code = line.ware().stockCode();
    OrderRows.received(inside, purchase, line.position(), awaited, over == Over.TAKEN ? beyond : 0);
    move(code, came, Kind.RECEIVED, purchase, "");
    if (over == Over.SENT_BACK && beyond > 0) {
      move(code, -beyond, Kind.SENT_BACK, purchase, "more than was bought");
    }
  }

  Order ship(String number, Map<Integer, Integer> quantities) {
    Order order = OrderRows.one(inside, number).orElseThrow();
    List<OrderLine> goods = order.lines().stream().filter(OrderLine::isGoods).toList();
    Portion.check(
        quantities, goods, OrderLine::position, line -> line.counts().reserved(), "reserved");
    for (OrderLine line : goods) {
      int gone = quantities.getOrDefault(line.position(), 0);
      if (gone > 0) {
        ship(number, line, gone);
      }
    }
    boolean onlyWork = goods.stream().allMatch(OrderLine::allCancelled);
    return finished(number, onlyWork);
  }

  private void ship(String number, OrderLine line, int gone) {
    String code = line.ware().stockCode();
    int onHand = onHand(code);
    if (onHand < gone) {
      // Books that an older version kept may promise what no shelf has.
      throw ConflictException.stateForbids(
          "shelf",
          code,
          "has " + onHand + " and more is promised of it",
          "count it with 'order count'");
    }
    StockRows.reserve(inside, code, -gone);
    move(code, -gone, Kind.SHIPPED, number, "");
    OrderRows.moved(inside, number, line.shipping(gone));
  }

  Order takeBack(String number, Map<Integer, Integer> quantities, String reason) {
    Order order = OrderRows.one(inside, number).orElseThrow();
    List<OrderLine> goods = order.lines().stream().filter(OrderLine::isGoods).toList();
    Portion.check(
        quantities,
        goods,
        OrderLine::position,
        line -> line.counts().shipped() - line.counts().returned(),
        "with the customer");
    List<String> codes = new ArrayList<>();
    for (OrderLine line : goods) {
      int back = quantities.getOrDefault(line.position(), 0);
      if (back > 0) {
        codes.add(line.ware().stockCode());
        move(line.ware().stockCode(), back, Kind.RETURNED, number, reason);
        OrderRows.moved(inside, number, line.returning(back));
      }
    }
    PromiseRows.serve(inside, codes);
    return OrderRows.one(inside, number).orElseThrow();
  }

  Counted count(String code, int pieces, String reason) {
    if (pieces < 0 || pieces > MOST_ON_A_SHELF) {
      throw new BadInputException("count", "" + pieces, "0 to " + MOST_ON_A_SHELF);
    }
    int before = onHand(code);
    List<Change> shortened = List.of();
    if (pieces != before) {
      int missing = Math.max(0, StockRows.reserved(inside, code) - pieces);
      shortened = PromiseRows.shorten(inside, code, missing);
      move(code, pieces - before, Kind.COUNTED, "", reason);
    }
    return new Counted(code, before, pieces, shortened, PromiseRows.serve(inside, List.of(code)));
  }

  Order cancelLines(String number, Map<Integer, Integer> quantities) {
    Order order = OrderRows.one(inside, number).orElseThrow();
    Portion.check(quantities, order.lines(), OrderLine::position, OrderLine::open, "still to go");
    List<OrderLine> after =
        order.lines().stream()
            .map(line -> line.cancelling(quantities.getOrDefault(line.position(), 0)))
            .toList();
    if (after.stream().allMatch(line -> line.open() == 0 && line.counts().shipped() == 0)) {
      throw ConflictException.stateForbids(
          "order",
          number,
          "would have nothing left",
          "cancel it whole, without " + Given.as("line"));
    }
    for (OrderLine line : order.lines()) {
      OrderLine now = after.get(line.position() - 1);
      if (!now.equals(line)) {
        StockRows.reserve(
            inside, line.ware().stockCode(), now.counts().reserved() - line.counts().reserved());
        OrderRows.moved(inside, number, now);
      }
    }
    return finished(number, false);
  }

  /**
   * The order; its work counts as shipped with the last of its goods.
   *
   * @param workGoes whether work alone is being shipped
   */
  private Order finished(String number, boolean workGoes) {
    List<OrderLine> lines = OrderRows.one(inside, number).orElseThrow().lines();
    boolean started =
        lines.stream().anyMatch(line -> line.isGoods() && line.counts().shipped() > 0);
    boolean allGone = lines.stream().filter(OrderLine::isGoods).allMatch(line -> line.open() == 0);
    if (allGone && (started || workGoes)) {
      lines.stream()
          .filter(line -> !line.isGoods() && line.open() > 0)
          .forEach(line -> OrderRows.moved(inside, number, line.done()));
    }
    return OrderRows.one(inside, number).orElseThrow();
  }

  private int onHand(String code) {
    return inside
        .selectFrom(STOCK)
        .where(STOCK.STOCK_CODE.eq(code))
        .fetchOptional()
        .map(row -> row.getOnHand())
        .orElse(0);
  }

  private void move(String code, int quantity, Kind kind, String paper, String reason) {
    StockRows.move(inside, code, quantity, new Movement(kind, paper, reason), actor);
  }
}
