package hosewright.store.order;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.CatalogueFiles;
import hosewright.order.Order;
import hosewright.order.OrderBook;
import hosewright.order.OrderLine;
import hosewright.problem.ConflictException;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteHeading;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.Signed;
import hosewright.store.catalogue.CatalogueStore;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import hosewright.store.database.Series;
import hosewright.store.quote.SampleQuotes;
import hosewright.store.quote.StoredQuotes;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Thirty-two people quote, revise and order from one database at once, each over connections of
 * their own.
 */
final class CompanyLoadTest {
  private static final long SEED = 20261107;
  private static final int PEOPLE = 32;
  private static final String ITEM = "B15";
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  @TempDir Path folder;
  private int shelf;

  /** What one person was told. */
  private final Map<String, Integer> latest = new ConcurrentHashMap<>();

  private final Queue<String> made = new ConcurrentLinkedQueue<>();
  private final Queue<Order> orders = new ConcurrentLinkedQueue<>();
  private final Queue<Long> nanos = new ConcurrentLinkedQueue<>();
  private final Queue<String> turnedAway = new ConcurrentLinkedQueue<>();

  @BeforeEach
  void fill_one_shelf() {
    try (Database database = BooksOn.SERVER.open(folder)) {
      new CatalogueStore(database).replace(new CatalogueFiles().read(), Instant.EPOCH, "");
      database
          .context()
          .transaction(
              inside -> {
                StockRows.move(
                    inside.dsl(),
                    ITEM,
                    100,
                    new StockRows.Movement(StockRows.Kind.RECEIVED, "P-0", ""),
                    new OrderBook.Actor("us", Instant.EPOCH));
                shelf = StockRows.free(inside.dsl()).get(ITEM);
              });
    }
  }

  @Test
  void no_number_revision_or_piece_is_lost_or_given_twice() throws Exception {
    load(6, Duration.ofMinutes(5));
  }

  @Test
  @Tag("long")
  void minutes_of_it() throws Exception {
    load(Integer.MAX_VALUE, Duration.ofMinutes(3));
  }

  private void load(int turns, Duration longest) throws Exception {
    Instant begun = Instant.now();
    Instant end = begun.plus(longest);
    ExecutorService pool = Executors.newFixedThreadPool(PEOPLE);
    List<Future<?>> people = new ArrayList<>();
    for (int i = 0; i < PEOPLE; i++) {
      SplittableRandom random = new SplittableRandom(SEED + i);
      people.add(pool.submit(() -> work(turns, end, random)));
    }
    for (Future<?> person : people) {
      person.get();
    }
    pool.shutdown();
    everythingHolds();
    say(Duration.between(begun, Instant.now()));
  }

  private void work(int turns, Instant end, SplittableRandom random) {
    try (Database database = BooksOn.SERVER.open(folder)) {
      StoredQuotes quotes = new StoredQuotes(database, SampleQuotes.CODEC, Clock.systemUTC());
      StoredOrders book = new StoredOrders(database);
      for (int turn = 0; turn < turns && Instant.now().isBefore(end); turn++) {
        long before = System.nanoTime();
        try {
          step(quotes, book, random);
        } catch (ConflictException e) {
          // Told that somebody else was quicker; anything else is a fault.
          turnedAway.add(e.getMessage());
        }
        nanos.add(System.nanoTime() - before);
      }
    }
  }

  private void step(StoredQuotes quotes, StoredOrders book, SplittableRandom random) {
    int what = random.nextInt(10);
    String some = latest.isEmpty() ? null : any(random);
    if (what < 4 || some == null) {
      Quote kept =
          quotes.saveNew(
              number -> SampleQuotes.quote(number, 1, "new"), signed(QuoteLife.Step.MAKE));
      made.add(kept.number());
      latest.merge(kept.number(), 1, Math::max);
    } else if (what < 7) {
      Quote seen = quotes.find(some).orElseThrow();
      Quote next = SampleQuotes.quote(some, seen.revision() + 1, "revised");
      quotes.saveRevision(seen, next, signed(QuoteLife.Step.REVISE));
      made.add(some + "-r" + next.revision());
      latest.merge(some, next.revision(), Math::max);
    } else {
      order(quotes, book, some, 1 + random.nextInt(3));
    }
  }

  private void order(StoredQuotes quotes, StoredOrders book, String number, int wanted) {
    Quote seen = quotes.find(number).orElseThrow();
    if (seen.status() == Quote.Status.DRAFT) {
      seen = quotes.changeStatus(seen, Quote.Status.ISSUED, signed(QuoteLife.Step.ISSUE));
    }
    if (seen.status() == Quote.Status.ISSUED) {
      seen = quotes.changeStatus(seen, Quote.Status.ACCEPTED, signed(QuoteLife.Step.ACCEPT));
    }
    Quote accepted = seen;
    orders.add(
        book.raise(
            accepted,
            (orderNumber, shelves) ->
                one(
                    orderNumber,
                    accepted,
                    wanted,
                    Math.min(wanted, shelves.free().getOrDefault(ITEM, 0))),
            new OrderBook.Actor("clerk", Instant.now())));
  }

  private static Order one(String number, Quote quote, int wanted, int reserved) {
    return new Order(
        number,
        new Order.Sold(quote.number(), quote.revision(), "Port Harlow", "load"),
        new Order.Timing(DAY, DAY, Instant.now(), "clerk"),
        Optional.empty(),
        List.of(
            new OrderLine(
                1,
                1,
                new OrderLine.Ware(ITEM, ITEM, "bend", "each"),
                new OrderLine.Counts(wanted, reserved, 0, 0))),
        List.of());
  }

  private void everythingHolds() {
    try (Database database = BooksOn.SERVER.open(folder)) {
      StoredQuotes quotes = new StoredQuotes(database, SampleQuotes.CODEC, Clock.systemUTC());
      List<String> kept = new ArrayList<>();
      for (QuoteHeading quote : quotes.list()) {
        List<Integer> revisions = IntStream.rangeClosed(1, quote.revision()).boxed().toList();
        assertThat(revisions)
            .as(quote.number())
            .allMatch(revision -> quotes.find(quote.number(), revision).isPresent());
        kept.add(quote.number());
        revisions.stream().skip(1).forEach(r -> kept.add(quote.number() + "-r" + r));
      }
      assertThat(kept).containsExactlyInAnyOrderElementsOf(made);
      assertThat(latest.keySet())
          .containsExactlyInAnyOrderElementsOf(
              IntStream.rangeClosed(1, latest.size()).mapToObj(Series.QUOTE::written).toList());
      assertThat(new StoredOrders(database).list())
          .extracting(Order::number)
          .containsExactlyInAnyOrderElementsOf(orders.stream().map(Order::number).toList());
      int wanted =
          orders.stream().mapToInt(order -> order.lines().get(0).counts().quantity()).sum();
      int promised =
          orders.stream().mapToInt(order -> order.lines().get(0).counts().reserved()).sum();
      assertThat(promised).isEqualTo(Math.min(wanted, shelf));
      OrderBook.StockLine line =
          new StoredOrders(database)
              .stock().stream()
                  .filter(one -> one.stockCode().equals(ITEM))
                  .findFirst()
                  .orElseThrow();
      assertThat(line.reserved()).isEqualTo(promised);
    }
  }

  /** The figures of the long run are written down in src/docs/measurements.md. */
  private void say(Duration took) {
    List<Long> sorted = new ArrayList<>(nanos);
    Collections.sort(sorted);
    System.out.printf(
        "%d people, %d steps in %.1f s: %.0f a second, p50 %.1f ms, p99 %.1f ms; %d quotes and"
            + " revisions, %d orders, %d told that somebody was quicker%n",
        PEOPLE,
        sorted.size(),
        took.toMillis() / 1e3,
        sorted.size() * 1e3 / took.toMillis(),
        sorted.get(sorted.size() / 2) / 1e6,
        sorted.get(sorted.size() * 99 / 100) / 1e6,
        made.size(),
        orders.size(),
        turnedAway.size());
  }

  private String any(SplittableRandom random) {
    return Series.QUOTE.written(1 + random.nextInt(latest.size()));
  }

  private static Signed signed(QuoteLife.Step step) {
    return Signed.of(step, "clerk", Instant.now(), "");
  }
}
