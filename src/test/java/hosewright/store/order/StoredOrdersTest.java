package hosewright.store.order;

import static hosewright.store.db.Tables.ORDER_VOID;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.order.Cancelled;
import hosewright.order.Cancelled.Bought;
import hosewright.order.Order;
import hosewright.order.OrderBook.Actor;
import hosewright.order.OrderBook.Over;
import hosewright.order.OrderBook.StockLine;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import hosewright.store.quote.SampleQuotes;
import hosewright.store.quote.StoredQuotes;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(BooksOn.class)
final class StoredOrdersTest {
  private static final Instant NOW = Instant.parse("2026-03-02T10:00:00Z");
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final Actor SAM = new Actor("sam", NOW);
  private static final String HOSE = "H-1";

  @Parameter BooksOn books;
  @TempDir Path folder;
  private Database database;
  private StoredQuotes quotes;
  private StoredOrders orders;

  @BeforeEach
  void open() {
    database = books.open(folder);
    quotes = new StoredQuotes(database, SampleQuotes.CODEC, Clock.fixed(NOW, ZoneOffset.UTC));
    orders = new StoredOrders(database);
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void eight_who_order_at_once_never_promise_the_same_piece_and_number_without_a_gap()
      throws Exception {
    stock(50);
    List<Callable<Order>> raisers =
        IntStream.range(0, 8).mapToObj(i -> raiser(SampleQuotes.accepted(quotes, NOW), 9)).toList();
    ExecutorService pool = Executors.newFixedThreadPool(8);
    List<Order> raised = new ArrayList<>();
    for (Future<Order> one : pool.invokeAll(raisers)) {
      raised.add(one.get());
    }
    pool.shutdown();

    // 8 x 9 = 72 are wanted of 50.
    assertThat(raised.stream().mapToInt(order -> order.lines().get(0).counts().reserved()).sum())
        .isEqualTo(50);
    assertThat(raised.stream().mapToInt(order -> order.lines().get(0).shortage()).sum())
        .isEqualTo(22);
    assertThat(raised)
        .extracting(Order::number)
        .containsExactlyInAnyOrderElementsOf(
            IntStream.rangeClosed(1, 8).mapToObj(i -> "O-00000" + i).toList());
    StockLine shelf = shelf();
    assertThat(shelf.onHand()).isEqualTo(50);
    assertThat(shelf.reserved()).isEqualTo(50);
    List<String> bought =
        raised.stream().flatMap(o -> o.purchases().stream()).map(PurchaseOrder::number).toList();
    assertThat(bought)
        .containsExactlyInAnyOrderElementsOf(
            IntStream.rangeClosed(1, bought.size()).mapToObj(i -> "P-00000" + i).toList());
  }

  @Test
  void goods_come_in_parts_go_to_their_order_and_leave_in_parts_and_the_books_balance()
      throws Exception {
    stock(4);
    Order order = raiser(SampleQuotes.accepted(quotes, NOW), 9).call();
    assertThat(order.state()).isEqualTo(Order.State.WAITING);

    // Bought in packs of 6: 5 are short, 6 come.
    order = orders.receive("P-000001", Map.of(1, 2), Over.REFUSED, SAM).order();
    assertThat(order.lines().get(0).counts().reserved()).isEqualTo(6);
    order = orders.ship(order.number(), Map.of(1, 5), SAM);
    assertThat(order.state()).isEqualTo(Order.State.PART_SHIPPED);
    order = orders.receive("P-000001", Map.of(1, 4), Over.REFUSED, SAM).order();
    assertThat(order.lines().get(0).counts().reserved()).isEqualTo(4);
    assertThat(shelf().free()).isEqualTo(1);
    order = orders.ship(order.number(), Map.of(1, 4), SAM);

    assertThat(order.state()).isEqualTo(Order.State.SHIPPED);
    // The work line went with the last of the goods.
    assertThat(order.lines().get(1).counts().shipped()).isEqualTo(1);
    assertThat(shelf())
        .isEqualTo(new StockLine(HOSE, new StockLine.Moved(4, 6, 9, 0, 0), 1, 0, 0, 0));
    assertThat(shelf().balances()).isTrue();
  }

  @Test
  void more_than_was_bought_or_is_reserved_is_refused_and_moves_nothing() throws Exception {
    stock(4);
    Order order = raiser(SampleQuotes.accepted(quotes, NOW), 9).call();

    assertThatThrownBy(() -> orders.receive("P-000001", Map.of(1, 7), Over.REFUSED, SAM).order())
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("1 to 6");
    assertThatThrownBy(() -> orders.ship(order.number(), Map.of(1, 5, 2, 1), SAM))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("1 to 4")
        .hasMessageContaining("nothing of line 2");
    assertThat(shelf())
        .isEqualTo(new StockLine(HOSE, new StockLine.Moved(4, 0, 0, 0, 0), 4, 4, 4, 6));
  }

  @Test
  void a_quote_has_one_order_and_cannot_be_reopened_behind_its_back() throws Exception {
    stock(9);
    Quote quote = SampleQuotes.accepted(quotes, NOW);
    raiser(quote, 2).call();

    assertThatThrownBy(() -> raiser(quote, 2).call())
        .hasMessageContaining("has order O-000001 already");
    assertThatThrownBy(
            () ->
                quotes.saveRevision(
                    quote,
                    SampleQuotes.quote(quote.number(), 2, "again"),
                    SampleQuotes.signed(Step.REOPEN, NOW)))
        .hasMessageContaining("has an order: copy it");
    assertThat(shelf().reserved()).isEqualTo(2);
  }

  @Test
  void a_quote_not_accepted_is_not_ordered_from() {
    Quote draft =
        quotes.saveNew(
            number -> SampleQuotes.quote(number, 1, "Quay"), SampleQuotes.signed(Step.MAKE, NOW));

    assertThatThrownBy(() -> raiser(draft, 1).call())
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("is draft: only an accepted quote is ordered from");
  }

  @Test
  void a_cancelled_order_frees_what_it_held_closes_what_has_not_come_and_its_quote_may_order_again()
      throws Exception {
    stock(4);
    Quote quote = SampleQuotes.accepted(quotes, NOW);
    Order order = raiser(quote, 9).call();

    Cancelled done = cancel(order, Bought.UNDECIDED);

    assertThat(done.freed()).isEqualTo(Map.of(HOSE, 4));
    assertThat(done.closed()).extracting(PurchaseOrder::number).containsExactly("P-000001");
    assertThat(orders.find(order.number())).contains(done.after());
    assertThat(done.after().state()).isEqualTo(Order.State.CANCELLED);
    assertThat(done.after().cancellation())
        .contains(new Order.Cancellation("sam", NOW, "sold the yard"));
    assertThat(shelf())
        .isEqualTo(new StockLine(HOSE, new StockLine.Moved(4, 0, 0, 0, 0), 4, 0, 0, 0));
    assertThat(quotes.steps(quote.number()).get(4).step().note())
        .isEqualTo("O-000001: sold the yard");
    assertThatThrownBy(() -> cancel(order, Bought.CLOSE))
        .hasMessageContaining("sam cancelled it: sold the yard");
    assertThatThrownBy(() -> orders.receive("P-000001", Map.of(1, 1), Over.REFUSED, SAM).order())
        .hasMessageContaining("nothing of line 1 is still to come");
    assertThat(orders.reserve(order.number())).isEqualTo(done.after());

    assertThat(raiser(quote, 2).call().number()).isEqualTo("O-000002");
    assertThat(shelf().reserved()).isEqualTo(2);
  }

  @Test
  void an_order_bought_for_in_part_is_cancelled_once_somebody_says_what_becomes_of_the_rest()
      throws Exception {
    stock(4);
    Order first = raiser(SampleQuotes.accepted(quotes, NOW), 9).call();
    Order second = raiser(SampleQuotes.accepted(quotes, NOW), 6).call();
    orders.receive("P-000001", Map.of(1, 2), Over.REFUSED, SAM).order();
    orders.receive("P-000002", Map.of(1, 1), Over.REFUSED, SAM).order();

    assertThatThrownBy(() -> cancel(first, Bought.UNDECIDED))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("P-000001, come in part");
    assertThat(shelf())
        .isEqualTo(new StockLine(HOSE, new StockLine.Moved(4, 3, 0, 0, 0), 7, 7, 7, 9));

    Cancelled kept = cancel(first, Bought.KEEP);
    assertThat(kept.stillComing()).hasSize(1);
    assertThat(shelf())
        .isEqualTo(new StockLine(HOSE, new StockLine.Moved(4, 3, 0, 0, 0), 7, 0, 0, 9));
    orders.receive("P-000001", Map.of(1, 4), Over.REFUSED, SAM).order();
    // The second order waited for 6.
    assertThat(shelf().free()).isEqualTo(5);

    assertThat(cancel(second, Bought.CLOSE).closed()).hasSize(1);
    assertThat(shelf())
        .isEqualTo(new StockLine(HOSE, new StockLine.Moved(4, 7, 0, 0, 0), 11, 0, 0, 0));
  }

  @Test
  void what_has_shipped_cannot_be_cancelled() throws Exception {
    stock(4);
    Order order = raiser(SampleQuotes.accepted(quotes, NOW), 9).call();
    orders.ship(order.number(), Map.of(1, 1), SAM);

    assertThatThrownBy(() -> cancel(order, Bought.CLOSE))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("has shipped in part or whole");
    assertThat(shelf())
        .isEqualTo(new StockLine(HOSE, new StockLine.Moved(4, 0, 1, 0, 0), 3, 3, 3, 6));
  }

  @Test
  void an_older_store_put_back_never_gives_the_number_of_an_order_or_a_purchase_out_again()
      throws Exception {
    stock(4);
    Quote early = SampleQuotes.accepted(quotes, NOW);
    Quote late = SampleQuotes.accepted(quotes, NOW);
    raiser(early, 9).call();
    close();
    books.backUp(folder);
    open();
    raiser(late, 9).call();
    close();
    books.putBack(folder);
    open();

    Order again = raiser(late, 9).call();

    assertThat(again.number()).isEqualTo("O-000003");
    assertThat(again.purchases().get(0).number()).isEqualTo("P-000003");
    assertThat(database.context().selectFrom(ORDER_VOID).fetch(ORDER_VOID.PAPER_NUMBER))
        .containsExactlyInAnyOrder("O-000002", "P-000002");
  }

  private Cancelled cancel(Order order, Bought bought) {
    return orders.cancel(order.number(), bought, SAM, "sold the yard");
  }

  private Callable<Order> raiser(Quote quote, int quantity) {
    return () ->
        orders.raise(
            quote,
            (number, shelves) -> {
              int reserved = Math.min(quantity, shelves.free().getOrDefault(HOSE, 0));
              return order(number, quote, quantity, reserved);
            },
            SAM);
  }

  private static Order order(String number, Quote quote, int quantity, int reserved) {
    int missing = quantity - reserved;
    PurchaseLine bought =
        new PurchaseLine(
            1,
            new PurchaseLine.Ware(HOSE, "hose", "each"),
            missing,
            (missing + 5) / 6 * 6,
            0,
            0,
            Optional.empty());
    List<PurchaseOrder> purchases =
        missing == 0
            ? List.of()
            : List.of(new PurchaseOrder("", number, "WEAVE", "Weaving", DAY, "", List.of(bought)));
    return new Order(
        number,
        new Order.Sold(quote.number(), 1, "Port Harlow", "Quay"),
        new Order.Timing(DAY, DAY, NOW, "sam"),
        Optional.empty(),
        List.of(
            new OrderLine(
                1,
                1,
                new OrderLine.Ware(HOSE, HOSE, "hose", "each"),
                new OrderLine.Counts(quantity, reserved, 0, 0)),
            new OrderLine(
                2,
                2,
                new OrderLine.Ware("", "WORK", "labour", "each"),
                new OrderLine.Counts(1, 0, 0, 0))),
        purchases);
  }

  private void stock(int pieces) {
    database
        .context()
        .transaction(
            nested ->
                StockRows.move(
                    nested.dsl(),
                    HOSE,
                    pieces,
                    new StockRows.Movement(StockRows.Kind.COUNTED, "", ""),
                    SAM));
  }

  private StockLine shelf() {
    return orders.stock().stream()
        .filter(line -> line.stockCode().equals(HOSE))
        .findFirst()
        .orElseThrow();
  }
}
