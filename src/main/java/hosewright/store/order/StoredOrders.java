package hosewright.store.order;

import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.ORDER_COUNTER;
import static hosewright.store.db.Tables.PURCHASE_ORDER;
import static hosewright.store.db.Tables.QUOTE;

import hosewright.order.Cancelled;
import hosewright.order.Coming;
import hosewright.order.Order;
import hosewright.order.OrderBook;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.order.SupplierAnswer;
import hosewright.problem.ConflictException;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.Signed;
import hosewright.store.database.Database;
import hosewright.store.database.Series;
import hosewright.store.quote.QuoteRows;
import hosewright.store.quote.QuoteSteps;
import hosewright.store.seal.BrokenSeal;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
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
                      inside, number -> raiser.raise(number, new Locked(inside)), at(actor));
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

  /** What is free while the counter is held. */
  private record Locked(DSLContext inside) implements Shelves {
    @Override
    public Map<String, Integer> free() {
      return StockRows.free(inside);
    }

    @Override
    public Coming coming(Collection<String> stockCodes) {
      return PromiseRows.coming(inside, stockCodes);
    }
  }

  @Override
  public Received receive(
      String purchaseNumber, Map<Integer, Integer> quantities, Over over, Actor actor) {
    return locked(
        inside -> new GoodsMoved(inside, actor).receive(purchaseNumber, quantities, over));
  }

  @Override
  public Order ship(String number, Map<Integer, Integer> quantities, Actor actor) {
    return locked(inside -> new GoodsMoved(inside, actor).ship(number, quantities));
  }

  @Override
  public Counted count(String stockCode, int pieces, Actor actor, String reason) {
    return locked(inside -> new GoodsMoved(inside, actor).count(stockCode, pieces, reason));
  }

  @Override
  public Order takeBack(
      String number, Map<Integer, Integer> quantities, Actor actor, String reason) {
    return locked(inside -> new GoodsMoved(inside, actor).takeBack(number, quantities, reason));
  }

  @Override
  public Order cancelLines(
      String number, Map<Integer, Integer> quantities, Actor actor, String reason) {
    return locked(
        inside -> {
          Order after = new GoodsMoved(inside, actor).cancelLines(number, quantities);
          log(
              inside,
              after,
              QuoteLife.Step.CANCEL_LINES,
              actor,
              number + ", " + pieces(quantities) + ": " + reason);
          return after;
        });
  }

  private static String pieces(Map<Integer, Integer> quantities) {
    return quantities.entrySet().stream()
        .map(entry -> entry.getValue() + " of line " + entry.getKey())
        .collect(Collectors.joining(", "));
  }

  @Override
  public Order buy(String number, Buyer buyer, Actor actor) {
    Order kept =
        locked(
            inside -> {
              Order order = OrderRows.one(inside, number).orElseThrow();
              List<PurchaseOrder> bought =
                  numbers.number(inside, buyer.buy(order, coming(inside, order)), at(actor));
              OrderRows.insert(inside, number, bought);
              return OrderRows.one(inside, number).orElseThrow();
            });
    numbers.told(kept);
    return kept;
  }

  @Override
  public Coming coming(Order order) {
    return coming(context, order);
  }

  private static Coming coming(DSLContext context, Order order) {
    Set<String> codes = new TreeSet<>();
    order.lines().forEach(line -> codes.add(line.ware().stockCode()));
    order.purchases().stream()
        .flatMap(purchase -> purchase.lines().stream())
        .forEach(line -> codes.add(line.ware().stockCode()));
    return PromiseRows.coming(context, codes);
  }

  @Override
  public Cancelled cancel(String number, Cancelled.Bought bought, Actor actor, String reason) {
    return locked(
        inside -> {
          Order order = OrderRows.one(inside, number).orElseThrow();
          QuoteRows.hold(inside, order.sold().quoteNumber());
          Cancelled cancelled =
              Cancelled.of(
                  order,
                  bought,
                  coming(inside, order),
                  new Order.Cancellation(actor.name(), actor.at(), reason));
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
