package hosewright.store.order;

import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.ORDER_COUNTER;
import static hosewright.store.db.Tables.PURCHASE_ORDER;
import static hosewright.store.db.Tables.QUOTE;

import hosewright.order.Cancelled;
import hosewright.order.Order;
import hosewright.order.OrderBook;
import hosewright.order.OrderLine;
import hosewright.order.Portion;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.order.SupplierAnswer;
import hosewright.problem.ConflictException;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.Signed;
import hosewright.store.database.Database;
import hosewright.store.database.Series;
import hosewright.store.order.StockRows.Kind;
import hosewright.store.quote.QuoteRows;
import hosewright.store.quote.QuoteSteps;
import hosewright.store.seal.BrokenSeal;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.jooq.Table;

/** Keeps orders and stock in the store; one row is locked by whoever changes either. */
public final class StoredOrders implements OrderBook {
  private final DSLContext context;
  private final OrderNumbers numbers;

  public StoredOrders(Database database) {
    this.context = database.context();
    this.numbers = new OrderNumbers(database.marks());
  }

  @Override
  public Order raise(Quote accepted, Raiser raiser, Actor actor) {
    Order kept =
        locked(
            inside -> {
              stillAccepted(inside, accepted);
              Order order =
                  numbers.number(
                      inside, number -> raiser.raise(number, StockRows.free(inside)), at(actor));
              OrderRows.insert(inside, order);
              for (OrderLine line : order.lines()) {
                StockRows.reserve(inside, line.ware().stockCode(), line.counts().reserved());
              }
              log(inside, order, QuoteLife.Step.ORDER, actor, order.number());
              return order;
            });
    numbers.told(kept);
    return kept;
  }

  @Override
  public Order receive(String purchaseNumber, Map<Integer, Integer> quantities, Actor actor) {
    return locked(
        inside -> {
          Order order = OrderRows.byPurchase(inside, purchaseNumber).orElseThrow();
          PurchaseOrder purchase =
              order.purchases().stream()
                  .filter(bought -> bought.number().equals(purchaseNumber))
                  .findFirst()
                  .orElseThrow();
          Portion.check(
              quantities,
              purchase.lines(),
              PurchaseLine::position,
              PurchaseLine::outstanding,
              "still to come");
          for (PurchaseLine line : purchase.lines()) {
            int came = quantities.getOrDefault(line.position(), 0);
            if (came > 0) {
              OrderRows.received(inside, purchaseNumber, line.position(), came);
              StockRows.move(
                  inside,
                  line.ware().stockCode(),
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
          Order order = OrderRows.one(inside, number).orElseThrow();
          List<OrderLine> goods = order.lines().stream().filter(OrderLine::isGoods).toList();
          Portion.check(
              quantities, goods, OrderLine::position, line -> line.counts().reserved(), "reserved");
          for (OrderLine line : goods) {
            int gone = quantities.getOrDefault(line.position(), 0);
            if (gone > 0) {
              StockRows.reserve(inside, line.ware().stockCode(), -gone);
              StockRows.move(
                  inside,
                  line.ware().stockCode(),
                  -gone,
                  Kind.SHIPPED,
                  number,
                  at(actor),
                  actor.name());
              OrderRows.moved(inside, number, line.shipping(gone));
            }
          }
          shipWorkWithTheLast(inside, number);
          return OrderRows.one(inside, number).orElseThrow();
        });
  }

  @Override
  public Cancelled cancel(String number, Cancelled.Bought bought, Actor actor, String reason) {
    return locked(
        inside -> {
          Order order = OrderRows.one(inside, number).orElseThrow();
          QuoteRows.hold(inside, order.sold().quoteNumber());
          Cancelled cancelled =
              Cancelled.of(order, bought, new Order.Cancellation(actor.name(), actor.at(), reason));
          for (OrderLine line : order.lines()) {
            StockRows.reserve(inside, line.ware().stockCode(), -line.counts().reserved());
          }
          OrderRows.cancel(inside, cancelled.after());
          log(inside, order, QuoteLife.Step.CANCEL_ORDER, actor, number + ": " + reason);
          return cancelled;
        });
  }

  @Override
  public Order reserve(String number) {
    return locked(inside -> reserved(inside, number));
  }

  @Override
  public Optional<Order> find(String number) {
    return found(Series.ORDER, CUSTOMER_ORDER, number, () -> OrderRows.one(context, number));
  }

  @Override
  public Optional<Order> findByPurchase(String purchaseNumber) {
    return found(
        Series.PURCHASE,
        PURCHASE_ORDER,
        purchaseNumber,
        () -> OrderRows.byPurchase(context, purchaseNumber));
  }

  /** What has a number on paper and is not found was lost from an index; looked for once more. */
  private Optional<Order> found(
      Series series, Table<?> table, String number, Supplier<Optional<Order>> look) {
    Optional<Order> found = look.get();
    if (found.isEmpty() && numbers.isUsed(context, series, number)) {
      found = look.get();
      if (found.isEmpty()) {
        throw BrokenSeal.ofRows(table, number);
      }
    }
    return found;
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
    if (quote.status() != Quote.Status.ACCEPTED) {
      throw ConflictException.stateForbids(
          "quote",
          quote.number() + "-r" + quote.revision(),
          "is " + QuoteLife.word(quote.status()),
          "only an accepted quote is ordered from");
    }
    QuoteRows.hold(inside, quote.number());
    boolean accepted =
        inside.fetchExists(
            QUOTE,
            QuoteRows.as(quote, Quote.Status.ACCEPTED)
                .and(QUOTE.REVISION.eq(QuoteRows.latestOf(quote.number()))));
    if (!accepted) {
      throw ConflictException.somebodyWasFirst(
          "quote",
          quote.number() + "-r" + quote.revision(),
          "is no longer the latest revision, or no longer accepted");
    }
    List<Order> there = OrderRows.fetch(inside, QuoteRows.ordered(quote.number()));
    if (!there.isEmpty()) {
      throw ConflictException.stateForbids(
          "quote",
          quote.number(),
          "has order " + there.get(0).number() + " already",
          "cancel that one first, or copy the quote");
    }
  }

  /** Reserves for the short lines of an order what is free. */
  private static Order reserved(DSLContext inside, String number) {
    Map<String, Integer> free = StockRows.free(inside);
    for (OrderLine line : OrderRows.one(inside, number).orElseThrow().lines()) {
      int more =
          Math.min(line.shortage(), Math.max(0, free.getOrDefault(line.ware().stockCode(), 0)));
      if (more > 0) {
        free.merge(line.ware().stockCode(), -more, Integer::sum);
        StockRows.reserve(inside, line.ware().stockCode(), more);
        OrderRows.moved(inside, number, line.reserving(more));
      }
    }
    return OrderRows.one(inside, number).orElseThrow();
  }

  private static void shipWorkWithTheLast(DSLContext inside, String number) {
    List<OrderLine> lines = OrderRows.one(inside, number).orElseThrow().lines();
    boolean allGone =
        lines.stream()
            .filter(OrderLine::isGoods)
            .allMatch(line -> line.counts().shipped() == line.counts().quantity());
    if (allGone) {
      lines.stream()
          .filter(line -> !line.isGoods())
          .forEach(line -> OrderRows.moved(inside, number, line.done()));
    }
  }

  private static void log(
      DSLContext inside, Order order, QuoteLife.Step step, Actor actor, String note) {
    QuoteSteps.log(
        inside,
        order.sold().quoteNumber(),
        order.sold().quoteRevision(),
        Signed.of(step, actor.name(), actor.at(), note));
  }

  private static OffsetDateTime at(Actor actor) {
    return actor.at().atOffset(ZoneOffset.UTC);
  }
}
