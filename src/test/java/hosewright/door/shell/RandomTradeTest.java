package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.Database;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * Steps of quoting, ordering and keeping stock in any order, with values each command takes: what
 * cannot be done is refused in words, and no rule of the store is what refuses it.
 */
final class RandomTradeTest {
  private static final List<String> ITEMS =
      List.of("H175-DJ-50-15NH", "A-25NHF-15NHM", "A-35NHFS-25NHM", "W-HYD", "SVC-FLUSH");
  private static final List<String> BUYERS = List.of("COUNTER", "HARLOW-FD", "CALLOWAY-MILL");

  /** Beyond what anybody sells, at what the commands take as a number of pieces. */
  private static final List<Integer> PIECES = List.of(0, 1, 2, 3, 5, 9, 15, 40, 400, 999_999);

  @TempDir private Path folder;
  private TradingDesk desk;
  private SplittableRandom random;
  private int quotes;
  private int orders;
  private final Map<String, Integer> done = new TreeMap<>();

  @Test
  void a_hundred_sequences_end_in_words_or_in_books_that_balance() throws IOException {
    sequences(100, 6);
  }

  @Test
  @Tag("long")
  void ten_thousand_sequences_do_too() throws IOException {
    sequences(10_000, 12);
    assertThat(done.keySet())
        .contains("accept", "buy", "cancel", "copy", "count", "decline", "discard", "issue")
        .contains("raise", "receive", "reopen", "reserve", "return", "revise", "ship");
  }

  private void sequences(int count, int steps) throws IOException {
    List<String> constraints = StoreRules.names();
    // Fresh books from time to time: what everybody was promised never runs out of old orders.
    for (int first = 1; first <= count; first += 100) {
      begin(first);
      try (Database held = desk.open()) {
        for (int seed = first; seed < first + 100; seed++) {
          sequence(seed, steps, constraints);
        }
      }
    }
    assertThat(done.values().stream().mapToInt(Integer::intValue).sum())
        .as(done.toString())
        .isGreaterThan(count * steps / 4);
  }

  private void sequence(int seed, int steps, List<String> constraints) {
    random = new SplittableRandom(seed);
    List<String> typed = new ArrayList<>();
    for (int step = 0; step < steps; step++) {
      List<String> words = words();
      typed.add(String.join(" ", words));
      Ended ended = desk.run(words.toArray(String[]::new));
      String said = ended.out() + ended.err();
      assertThat(ended.exitCode()).as("seed " + seed + ": " + typed + "\n" + said).isIn(0, 2, 3);
      assertThat(constraints).as(typed + "\n" + said).noneMatch(said::contains);
      if (ended.exitCode() == 0) {
        done.merge(words.get(1), 1, Integer::sum);
        quotes += words.get(1).equals("copy") ? 1 : 0;
        orders += words.get(1).equals("raise") ? 1 : 0;
      }
    }
    balances(seed, typed);
  }

  private void begin(int seed) {
    desk = new TradingDesk(folder.resolve("from" + seed), "2026-03-02");
    desk.quote("COUNTER");
    quotes = 1;
    orders = 0;
  }

  private void balances(int seed, List<String> typed) {
    JsonNode stock = desk.done("order", "stock");
    assertThat(stock.get("balanced").asBoolean()).as("seed " + seed + ": " + typed).isTrue();
    for (JsonNode shelf : stock.get("shelves")) {
      for (String number : List.of("onHand", "reserved", "free", "onOrder", "shipped")) {
        assertThat(shelf.get(number).asInt())
            .as("seed " + seed + " " + number + " " + shelf + typed)
            .isNotNegative();
      }
    }
  }

  private List<String> words() {
    desk.clock.set(LocalDate.of(2026, 3, 2).plusDays(random.nextInt(40)).toString());
    String quote = "" + (1 + random.nextInt(quotes));
    String order = "" + (1 + random.nextInt(Math.max(1, orders)));
    String purchase = "P-" + (1 + random.nextInt(Math.max(1, 2 * orders)));
    return switch (random.nextInt(26)) {
      case 0, 1 -> words("quote copy " + quote, maybe("--customer", one(BUYERS)));
      case 2, 3, 4 -> words("quote revise " + quote + " --reason asked", change());
      case 5, 6, 7 ->
          words(
              "quote issue " + quote + " --allow-below-floor",
              maybe("--unknown-margin-by", "olga"),
              until());
      case 8, 9 ->
          words("quote accept " + quote, maybe("--revision", "" + (1 + random.nextInt(4))));
      case 10 -> words("quote decline " + quote + " --reason dear");
      case 11 -> words("quote discard " + quote + " --reason typo");
      case 12 -> words("quote reopen " + quote + " --reason again");
      case 13 -> words("quote update-prices " + quote + " --reason today");
      case 14, 15, 16 -> words("order raise " + quote, maybe("--no-top-up"));
      case 17, 18 ->
          words(
              "order receive " + purchase,
              maybe("--line", "1=" + pieces()),
              maybe("--over", one(List.of("take", "send-back"))));
      case 19 -> words("order ship " + order, maybe("--line", "1=" + pieces()));
      case 20 ->
          words(
              "order cancel " + order + " --reason over",
              random.nextBoolean()
                  ? List.of("--line", (1 + random.nextInt(3)) + "=" + pieces())
                  : maybe("--purchases", one(List.of("close", "keep"))));
      case 21 ->
          words("order return " + order + " --reason wrong", maybe("--line", "1=" + pieces()));
      case 22, 23 -> words("order count " + one(ITEMS) + " " + pieces() + " --reason counted");
      case 24 ->
          words("order buy " + order, maybe("--from", "WEAVE"), maybe("--lead-days", "3650"));
      default -> words("order reserve " + order);
    };
  }

  private List<String> change() {
    return switch (random.nextInt(8)) {
      case 0, 1, 2 -> List.of("--quantity", (1 + random.nextInt(3)) + "=" + pieces());
      case 3 -> List.of("--add", pieces() + " x " + one(ITEMS));
      case 4 -> List.of("--add", pieces() + " x Crating @ 999999999.99");
      case 5 -> List.of("--drop", "" + (1 + random.nextInt(6)));
      case 6 -> List.of("--discount", "1=99.99%", "--discount-reason", "old stock");
      default -> List.of("--freight", one(List.of("0", "999999999.99", "terms")));
    };
  }

  private List<String> until() {
    return switch (random.nextInt(4)) {
      case 0 -> List.of("--valid-days", one(List.of("0", "3650")));
      case 1 -> List.of("--lead-days", one(List.of("0", "3650")));
      default -> List.of();
    };
  }

  private int pieces() {
    return one(PIECES);
  }

  private List<String> maybe(String... words) {
    return random.nextInt(3) == 0 ? List.of(words) : List.of();
  }

  private <T> T one(List<T> among) {
    return among.get(random.nextInt(among.size()));
  }

  @SafeVarargs
  private static List<String> words(String begin, List<String>... more) {
    List<String> words = new ArrayList<>(List.of(begin.split(" ")));
    Stream.of(more).forEach(words::addAll);
    return words;
  }
}
