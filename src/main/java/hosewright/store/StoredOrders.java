package hosewright.store;

import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.ORDER_COUNTER;
import static hosewright.store.db.Tables.ORDER_LINE;
import static hosewright.store.db.Tables.PURCHASE_LINE;
import static hosewright.store.db.Tables.PURCHASE_ORDER;
import static hosewright.store.db.Tables.QUOTE;
import static org.jooq.impl.DSL.select;

import hosewright.order.Order;
import hosewright.order.OrderBook;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.order.SupplierAnswer;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.Signed;
import hosewright.store.StockRows.Kind;
import hosewright.store.db.tables.records.OrderCounterRecord;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jooq.DSLContext;

/** Keeps orders and stock in the store; one row is locked by whoever changes either. */
public final class StoredOrders implements OrderBook {
  private final DSLContext context;

  public StoredOrders(Database database) {
    this.context = database.context();
  }

  @Override
  public Order raise(Quote accepted, Raiser raiser, Actor actor) {
    return locked(
        inside -> {
          OrderCounterRecord counter = inside.selectFrom(ORDER_COUNTER).fetchSingle();
          stillAccepted(inside, accepted);
          String number = written("O", counter.getLastOrder() + 1);
          Order order =
              numbered(raiser.raise(number, StockRows.free(inside)), counter.getLastPurchase());
          OrderRows.insert(inside, order);
          for (OrderLine line : order.lines()) {
            StockRows.reserve(inside, line.stockCode(), line.reserved());
          }
          inside
              .update(ORDER_COUNTER)
              .set(ORDER_COUNTER.LAST_ORDER, counter.getLastOrder() + 1)
              .set(
                  ORDER_COUNTER.LAST_PURCHASE, counter.getLastPurchase() + order.purchases().size())
              .execute();
          QuoteSteps.log(
              inside,
              accepted.number(),
              accepted.revision(),
              Signed.of(QuoteLife.Step.ORDER, actor.name(), actor.at(), number));
          return order;
        });
  }

  @Override
  public Order receive(String purchaseNumber, Map<Integer, Integer> quantities, Actor actor) {
    return locked(
        inside -> {
          Order order = byPurchase(inside, purchaseNumber).orElseThrow();
          PurchaseOrder purchase =
              order.purchases().stream()
                  .filter(bought -> bought.number().equals(purchaseNumber))
                  .findFirst()
                  .orElseThrow();
          refuse(
              quantities,
              purchase.lines(),
              PurchaseLine::position,
              PurchaseLine::outstanding,
              "still to come");
          for (PurchaseLine line : purchase.lines()) {
            int came = quantities.getOrDefault(line.position(), 0);
            if (came > 0) {
              inside
                  .update(PURCHASE_LINE)
                  .set(PURCHASE_LINE.RECEIVED, PURCHASE_LINE.RECEIVED.plus(came))
                  .where(PURCHASE_LINE.PURCHASE_NUMBER.eq(purchaseNumber))
                  .and(PURCHASE_LINE.POSITION.eq(line.position()))
                  .execute();
              StockRows.move(
                  inside,
                  line.stockCode(),
                  came,
                  Kind.RECEIVED,
                  purchaseNumber,
                  at(actor),
                  actor.name());
            }
          }
          return reserved(inside, order.number());
        });
  }

  @Override
  public Order ship(String number, Map<Integer, Integer> quantities, Actor actor) {
    return locked(
        inside -> {
          Order order = one(inside, number).orElseThrow();
          List<OrderLine> goods = order.lines().stream().filter(OrderLine::isGoods).toList();
          refuse(quantities, goods, OrderLine::position, OrderLine::reserved, "reserved");
          for (OrderLine line : goods) {
            int gone = quantities.getOrDefault(line.position(), 0);
            if (gone > 0) {
              StockRows.reserve(inside, line.stockCode(), -gone);
              StockRows.move(
                  inside, line.stockCode(), -gone, Kind.SHIPPED, number, at(actor), actor.name());
              change(
                  inside, number, line.position(), line.reserved() - gone, line.shipped() + gone);
            }
          }
          shipWorkWithTheLast(inside, number);
          return one(inside, number).orElseThrow();
        });
  }

  @Override
  public Order reserve(String number) {
    return locked(inside -> reserved(inside, number));
  }

  @Override
  public Optional<Order> find(String number) {
    return one(context, number);
  }

  @Override
  public Optional<Order> findByPurchase(String purchaseNumber) {
    return byPurchase(context, purchaseNumber);
  }

  @Override
  public List<Order> list() {
    return OrderRows.fetch(context, CUSTOMER_ORDER.ORDER_NUMBER.isNotNull());
  }

  @Override
  public List<StockLine> stock() {
    return StockReport.of(context);
  }

  @Override
  public List<SupplierAnswer> answers(String quoteNumber) {
    return AnswerRows.of(context, quoteNumber);
  }

  @Override
  public void keepAnswers(String quoteNumber, List<SupplierAnswer> answers, Actor actor) {
    context.transaction(
        nested -> AnswerRows.replace(nested.dsl(), quoteNumber, answers, at(actor), actor.name()));
  }

  private <T> T locked(Function<DSLContext, T> work) {
    return context.transactionResult(
        nested -> {
          DSLContext inside = nested.dsl();
          inside.selectFrom(ORDER_COUNTER).forUpdate().fetchSingle();
          return work.apply(inside);
        });
  }

  private static void stillAccepted(DSLContext inside, Quote quote) {
    boolean accepted =
        inside
            .select(QUOTE.STATUS)
            .from(QUOTE)
            .where(QUOTE.QUOTE_NUMBER.eq(quote.number()))
            .and(QUOTE.REVISION.eq(quote.revision()))
            .forUpdate()
            .fetchOptional(QUOTE.STATUS)
            .filter(Quote.Status.ACCEPTED.name()::equals)
            .isPresent();
    if (!accepted) {
      throw new BadInputException(
          "quote", quote.number() + "-r" + quote.revision(), "a quote that is accepted");
    }
    List<Order> there = OrderRows.fetch(inside, CUSTOMER_ORDER.QUOTE_NUMBER.eq(quote.number()));
    if (!there.isEmpty()) {
      throw new BadInputException(
          "quote", quote.number(), "a quote without an order: it has " + there.get(0).number());
    }
  }

  private static Order numbered(Order order, int lastPurchase) {
    List<PurchaseOrder> purchases = new ArrayList<>();
    for (PurchaseOrder purchase : order.purchases()) {
      purchases.add(
          new PurchaseOrder(
              written("P", lastPurchase + purchases.size() + 1),
              purchase.orderNumber(),
              purchase.supplier(),
              purchase.supplierName(),
              purchase.expectedOn(),
              purchase.remark(),
              purchase.lines()));
    }
    return new Order(
        order.number(),
        order.quoteNumber(),
        order.quoteRevision(),
        order.customer(),
        order.title(),
        order.raisedOn(),
        order.shipOn(),
        order.raisedAt(),
        order.raisedBy(),
        order.lines(),
        purchases);
  }

  /** Reserves for the short lines of an order what is free. */
  private static Order reserved(DSLContext inside, String number) {
    Map<String, Integer> free = StockRows.free(inside);
    for (OrderLine line : one(inside, number).orElseThrow().lines()) {
      int more = Math.min(line.shortage(), Math.max(0, free.getOrDefault(line.stockCode(), 0)));
      if (more > 0) {
        free.merge(line.stockCode(), -more, Integer::sum);
        StockRows.reserve(inside, line.stockCode(), more);
        change(inside, number, line.position(), line.reserved() + more, line.shipped());
      }
    }
    return one(inside, number).orElseThrow();
  }

  private static void shipWorkWithTheLast(DSLContext inside, String number) {
    List<OrderLine> lines = one(inside, number).orElseThrow().lines();
    boolean allGone =
        lines.stream()
            .filter(OrderLine::isGoods)
            .allMatch(line -> line.shipped() == line.quantity());
    if (allGone) {
      lines.stream()
          .filter(line -> !line.isGoods())
          .forEach(line -> change(inside, number, line.position(), 0, line.quantity()));
    }
  }

  private static void change(
      DSLContext inside, String number, int position, int reserved, int shipped) {
    inside
        .update(ORDER_LINE)
        .set(ORDER_LINE.RESERVED, reserved)
        .set(ORDER_LINE.SHIPPED, shipped)
        .where(ORDER_LINE.ORDER_NUMBER.eq(number))
        .and(ORDER_LINE.POSITION.eq(position))
        .execute();
  }

  /** Refuses quantities of lines there are none of, or beyond what each line has. */
  private static <T> void refuse(
      Map<Integer, Integer> quantities,
      List<T> lines,
      Function<T, Integer> position,
      Function<T, Integer> most,
      String what) {
    List<Problem> problems = new ArrayList<>();
    quantities.forEach(
        (line, quantity) -> {
          int limit =
              lines.stream()
                  .filter(one -> position.apply(one).equals(line))
                  .mapToInt(most::apply)
                  .findFirst()
                  .orElse(0);
          if (quantity < 1 || quantity > limit) {
            problems.add(
                Problem.of(
                    "line",
                    line + "=" + quantity,
                    limit == 0
                        ? "nothing of line " + line + " is " + what
                        : "1 to " + limit + ", which is " + what));
          }
        });
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  private static Optional<Order> one(DSLContext context, String number) {
    return OrderRows.fetch(context, CUSTOMER_ORDER.ORDER_NUMBER.eq(number)).stream().findFirst();
  }

  private static Optional<Order> byPurchase(DSLContext context, String purchaseNumber) {
    return OrderRows.fetch(
            context,
            CUSTOMER_ORDER.ORDER_NUMBER.in(
                select(PURCHASE_ORDER.ORDER_NUMBER)
                    .from(PURCHASE_ORDER)
                    .where(PURCHASE_ORDER.PURCHASE_NUMBER.eq(purchaseNumber))))
        .stream()
        .findFirst();
  }

  private static OffsetDateTime at(Actor actor) {
    return actor.at().atOffset(ZoneOffset.UTC);
  }

  private static String written(String letter, int number) {
    return String.format(Locale.ROOT, "%s-%06d", letter, number);
  }
}
