package hosewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.order.OrderBook;
import hosewright.problem.ConflictException;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteCodec;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.life.QuoteStore;
import hosewright.quote.life.Signed;
import hosewright.store.order.StoredOrders;
import hosewright.store.quote.SampleQuotes;
import hosewright.store.quote.StoredQuotes;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people with a quote of one server in hand at the same moment, the slower one held back. */
final class QuoteRaceTest {
  private static final Instant NOW = Instant.parse("2026-03-02T10:00:00Z");

  @TempDir Path folder;
  private final CountDownLatch writing = new CountDownLatch(1);
  private final CountDownLatch goOn = new CountDownLatch(1);
  private final ExecutorService pool = Executors.newFixedThreadPool(2);
  private Database ours;
  private Database theirs;
  private StoredQuotes quotes;

  @BeforeEach
  void open() {
    ours = BooksOn.SERVER.open(folder);
    theirs = BooksOn.SERVER.open(folder);
    quotes = new StoredQuotes(ours, SampleQuotes.CODEC, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    goOn.countDown();
    pool.shutdownNow();
    ours.close();
    theirs.close();
  }

  @Test
  void a_quote_is_not_issued_while_somebody_is_keeping_its_next_revision() throws Exception {
    Quote draft =
        quotes.saveNew(number -> SampleQuotes.quote(number, 1, "Quay"), signed(Step.MAKE));
    Future<Quote> revised = revisingSlowly(draft, Step.REVISE);

    Future<Quote> issued =
        pool.submit(() -> quotes.issue(draft, LocalDate.of(2026, 4, 1), 4, signed(Step.ISSUE)));
    oneIsWaiting();
    goOn.countDown();

    assertThat(revised.get().revision()).isEqualTo(2);
    assertThatThrownBy(issued::get).hasRootCauseInstanceOf(ConflictException.class);
    assertThat(quotes.steps(draft.number()))
        .extracting(QuoteStore.Logged::revision)
        .containsExactly(1, 2);
  }

  @Test
  void a_quote_is_not_ordered_from_while_somebody_is_reopening_it() throws Exception {
    Quote accepted = SampleQuotes.accepted(quotes, NOW);
    StoredOrders orders = new StoredOrders(ours);
    Future<Quote> reopened = revisingSlowly(accepted, Step.REOPEN);

    Future<?> ordered =
        pool.submit(
            () ->
                orders.raise(
                    accepted,
                    (number, free) -> {
                      throw new AssertionError("an order of a revision that is not the latest");
                    },
                    new OrderBook.Actor("sam", NOW)));
    oneIsWaiting();
    goOn.countDown();

    assertThat(reopened.get().revision()).isEqualTo(2);
    assertThatThrownBy(ordered::get)
        .hasRootCauseInstanceOf(ConflictException.class)
        .hasMessageContaining("latest");
  }

  /** Somebody else's next revision, which stops in the middle of being written. */
  private Future<Quote> revisingSlowly(Quote seen, Step step) throws InterruptedException {
    StoredQuotes slow = new StoredQuotes(theirs, new Slow(), Clock.systemUTC());
    Quote next = SampleQuotes.quote(seen.number(), seen.revision() + 1, "shorter");
    Future<Quote> revised = pool.submit(() -> slow.saveRevision(seen, next, signed(step)));
    writing.await();
    return revised;
  }

  private void oneIsWaiting() throws InterruptedException {
    String waiting =
        "SELECT 1 FROM pg_stat_activity"
            + " WHERE datname = current_database() AND wait_event_type = 'Lock'";
    while (ours.context().fetch(waiting).isEmpty()) {
      Thread.sleep(20);
    }
  }

  private static Signed signed(Step step) {
    return SampleQuotes.signed(step, NOW);
  }

  private final class Slow implements QuoteCodec {
    @Override
    public String write(Quote quote) {
      writing.countDown();
      try {
        goOn.await();
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
      return SampleQuotes.CODEC.write(quote);
    }

    @Override
    public Quote read(String document) {
      return SampleQuotes.CODEC.read(document);
    }
  }
}
