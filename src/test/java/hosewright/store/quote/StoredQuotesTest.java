package hosewright.store.quote;

import static hosewright.store.db.Tables.QUOTE_VOID;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.ConflictException;
import hosewright.problem.NoSuchThingException;
import hosewright.problem.TroubleException;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteHeading;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteStore;
import hosewright.quote.life.Signed;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import hosewright.store.database.Series;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(BooksOn.class)
final class StoredQuotesTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-02T10:00:00Z"), ZoneOffset.UTC);

  private static final Signed MADE = signed(QuoteLife.Step.MAKE);
  private static final Signed REVISED = signed(QuoteLife.Step.REVISE);
  private static final Signed ISSUED = signed(QuoteLife.Step.ISSUE);

  @Parameter BooksOn books;
  @TempDir Path folder;
  private Database database;
  private StoredQuotes quotes;

  @BeforeEach
  void open() {
    database = books.open(folder);
    quotes = new StoredQuotes(database, SampleQuotes.CODEC, CLOCK);
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void a_quote_comes_back_from_a_reopened_store() {
    Quote kept = saveNew("Quay line");
    close();
    open();

    assertThat(kept.number()).isEqualTo("Q-000001");
    assertThat(quotes.find("Q-000001")).contains(kept);
    assertThat(quotes.list())
        .containsExactly(
            new QuoteHeading(
                new Quote.Name("Q-000001", 1),
                Quote.Status.DRAFT,
                new QuoteHeading.Buyer("PHFD", "Port Harlow Fire District"),
                new QuoteHeading.Days(
                    kept.validity().date(), kept.validity().validUntil(), kept.validity().madeAt()),
                "Quay line",
                kept.total()));
  }

  @Test
  void eight_writers_at_once_leave_no_gap_and_no_double_though_some_fail() throws Exception {
    int writers = 8;
    int each = 12;
    CountDownLatch start = new CountDownLatch(1);
    ExecutorService pool = Executors.newFixedThreadPool(writers);
    List<Future<List<String>>> told = new ArrayList<>();
    for (int writer = 0; writer < writers; writer++) {
      told.add(
          pool.submit(
              () -> {
                start.await();
                return writeSome(each);
              }));
    }
    start.countDown();
    List<String> numbers = new ArrayList<>();
    for (Future<List<String>> one : told) {
      numbers.addAll(one.get());
    }
    pool.shutdown();

    // A third of the attempts threw, and gave their numbers back.
    String[] expected =
        IntStream.rangeClosed(1, writers * each * 2 / 3)
            .mapToObj(Series.QUOTE::written)
            .toArray(String[]::new);
    assertThat(numbers).containsExactlyInAnyOrder(expected);
    assertThat(quotes.list()).extracting(QuoteHeading::number).containsExactlyInAnyOrder(expected);
  }

  private List<String> writeSome(int attempts) {
    List<String> numbers = new ArrayList<>();
    for (int attempt = 0; attempt < attempts; attempt++) {
      if (attempt % 3 == 2) {
        assertThatThrownBy(
                () ->
                    quotes.saveNew(
                        number -> {
                          throw new IllegalStateException("changed my mind");
                        },
                        MADE))
            .hasMessage("changed my mind");
      } else {
        numbers.add(saveNew("Quay line").number());
      }
    }
    return numbers;
  }

  @Test
  void a_quote_that_the_store_refuses_gives_its_number_back() {
    saveNew("first");
    assertThatThrownBy(() -> quotes.saveNew(number -> SampleQuotes.quote(number, 1, null), MADE))
        .isInstanceOf(DataAccessException.class);

    assertThat(saveNew("second").number()).isEqualTo("Q-000002");
    assertThat(voidNumbers()).isEmpty();
  }

  @Test
  void a_new_quote_under_another_number_is_a_mistake() {
    assertThatThrownBy(() -> quotes.saveNew(number -> SampleQuotes.quote("Q-000077", 1, "x"), MADE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_revision_stands_beside_the_one_before() {
    Quote first = saveNew("as asked");
    Quote second =
        quotes.saveRevision(first, SampleQuotes.quote(first.number(), 2, "shorter"), REVISED);

    assertThat(quotes.find(first.number())).contains(second);
    assertThat(quotes.find(first.number(), 1)).contains(first);
    assertThat(quotes.find(first.number(), 3)).isEmpty();
    assertThat(quotes.list()).extracting(QuoteHeading::title).containsExactly("shorter");
  }

  @Test
  void of_two_people_revising_the_same_quote_the_second_is_told() {
    Quote first = saveNew("as asked");
    String number = first.number();
    Quote mine = SampleQuotes.quote(number, 2, "mine");
    quotes.saveRevision(first, mine, REVISED);

    assertThatThrownBy(
            () -> quotes.saveRevision(first, SampleQuotes.quote(number, 2, "theirs"), REVISED))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("Q-000001 revision 2")
        .hasMessageContaining("look at it again");
    assertThat(quotes.find(number)).contains(mine);
  }

  @Test
  void a_revision_of_a_quote_not_on_file_is_refused() {
    Quote never = SampleQuotes.quote("Q-000009", 1, "x");
    assertThatThrownBy(
            () -> quotes.saveRevision(never, SampleQuotes.quote("Q-000009", 2, "x"), REVISED))
        .isInstanceOf(NoSuchThingException.class)
        .hasMessageContaining("There is no quote Q-000009");
  }

  @Test
  void a_status_moves_once_from_what_the_caller_has_seen() {
    Quote draft = saveNew("Quay line");

    Quote issued = quotes.changeStatus(draft, Quote.Status.ISSUED, ISSUED);

    assertThat(quotes.find(draft.number())).contains(issued);
    assertThat(issued).isEqualTo(draft.withStatus(Quote.Status.ISSUED));
    assertThatThrownBy(() -> quotes.changeStatus(draft, Quote.Status.DECLINED, ISSUED))
        .isInstanceOf(ConflictException.class);
    assertThat(quotes.find(draft.number())).contains(issued);
  }

  @Test
  void the_status_of_a_revised_quote_stays() {
    Quote first = saveNew("as asked");
    quotes.saveRevision(first, SampleQuotes.quote(first.number(), 2, "shorter"), REVISED);

    assertThatThrownBy(() -> quotes.changeStatus(first, Quote.Status.ISSUED, ISSUED))
        .isInstanceOf(ConflictException.class);
  }

  @Test
  void an_older_store_put_back_never_gives_a_number_out_again() {
    saveNew("first");
    close();
    books.backUp(folder);
    open();
    saveNew("second");
    saveNew("third");
    close();
    books.putBack(folder);
    open();

    assertThat(saveNew("fourth").number()).isEqualTo("Q-000004");
    assertThat(voidNumbers()).containsExactly("Q-000002", "Q-000003");
    assertThat(saveNew("fifth").number()).isEqualTo("Q-000005");
  }

  @Test
  void a_mark_that_cannot_be_this_stores_is_refused_and_no_number_is_used() throws IOException {
    Path mark = database.marks().of(Series.QUOTE).file();
    for (String text : List.of("900000000", "many", "")) {
      Files.writeString(mark, text);

      assertThatThrownBy(() -> saveNew("x"))
          .isInstanceOf(TroubleException.class)
          .hasMessageContaining("highest-quote-number");
    }
    Files.delete(mark);

    assertThat(saveNew("first").number()).isEqualTo("Q-000001");
  }

  @Test
  void a_quote_that_is_not_on_file_is_not_found() {
    assertThat(quotes.find("Q-000001")).isEmpty();
    assertThat(quotes.find("Q-000001", 1)).isEmpty();
    assertThat(quotes.list()).isEmpty();
  }

  private Quote saveNew(String title) {
    return quotes.saveNew(number -> SampleQuotes.quote(number, 1, title), MADE);
  }

  @Test
  void an_issued_quote_past_its_last_day_expires_for_good_and_says_so_in_its_log() {
    Quote first = saveNew("Quay line");
    LocalDate last = LocalDate.of(2026, 3, 20);
    Quote issued = quotes.issue(first, last, 4, ISSUED);
    assertThat(issued.validity().validUntil()).isEqualTo(last);
    assertThat(issued.validity().leadDays()).isEqualTo(4);

    assertThat(quotes.expireBefore(last)).isZero();
    assertThat(quotes.find(first.number())).contains(issued);
    assertThat(quotes.expireBefore(last.plusDays(1))).isEqualTo(1);
    // The clock is set back.
    assertThat(quotes.expireBefore(last.minusDays(5))).isZero();

    assertThat(quotes.find(first.number())).contains(issued.withStatus(Quote.Status.EXPIRED));
    assertThat(quotes.steps(first.number()))
        .extracting(logged -> logged.step().step())
        .containsExactly(QuoteLife.Step.MAKE, QuoteLife.Step.ISSUE, QuoteLife.Step.EXPIRE);
    assertThatThrownBy(
            () -> quotes.changeStatus(issued, Quote.Status.ACCEPTED, signed(QuoteLife.Step.ACCEPT)))
        .isInstanceOf(ConflictException.class);
  }

  @Test
  void a_step_is_logged_with_who_and_when_and_a_step_that_fails_is_not() {
    Quote first = saveNew("Quay line");
    quotes.saveRevision(first, SampleQuotes.quote(first.number(), 2, "shorter"), REVISED);
    assertThatThrownBy(() -> quotes.changeStatus(first, Quote.Status.ISSUED, ISSUED))
        .isInstanceOf(ConflictException.class);

    assertThat(quotes.steps(first.number()))
        .containsExactly(
            new QuoteStore.Logged(first.number(), 1, MADE),
            new QuoteStore.Logged(first.number(), 2, REVISED));
  }

  @Test
  void nobody_revises_a_quote_that_was_accepted_meanwhile() {
    Quote issued = quotes.issue(saveNew("Quay line"), LocalDate.of(2026, 4, 1), 4, ISSUED);
    quotes.changeStatus(issued, Quote.Status.ACCEPTED, signed(QuoteLife.Step.ACCEPT));

    assertThatThrownBy(
            () ->
                quotes.saveRevision(
                    issued, SampleQuotes.quote(issued.number(), 2, "late"), REVISED))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("no longer issued");
  }

  private static Signed signed(QuoteLife.Step step) {
    return Signed.of(step, "ines", Instant.parse("2026-03-02T10:00:00Z"), "");
  }

  private List<String> voidNumbers() {
    return database
        .context()
        .select(QUOTE_VOID.QUOTE_NUMBER)
        .from(QUOTE_VOID)
        .orderBy(QUOTE_VOID.QUOTE_NUMBER)
        .fetch(QUOTE_VOID.QUOTE_NUMBER);
  }
}
