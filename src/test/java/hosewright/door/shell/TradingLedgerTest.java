package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.TradeLedger.Bought;
import hosewright.door.shell.TradeLedger.Line;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import hosewright.store.database.PostgresCluster;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * A year of trade on one machine and in a team, beside a ledger and sums kept by hand: every day
 * every shelf, every line of an order and every total is what the ledger says, in both.
 */
final class TradingLedgerTest {
  private static final long SEED = 20261201;
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final String HOSE = "H175-DJ-50-15NH";

  /** Costs in another currency than the prices. */
  private static final String IMPORTED = "W-HYD-RATCHET";

  private static final List<String> BUYERS =
      List.of("COUNTER", "HARLOW-FD", "DUNMERE-CON", "CALLOWAY-MILL");

  @TempDir private Path folder;
  private final TradeLedger ledger = new TradeLedger();
  private final SplittableRandom random = new SplittableRandom(SEED);
  private final WallClock clock = new WallClock(FIRST.toString());
  private final Map<String, Integer> planned = new LinkedHashMap<>();
  private FitOut fitOut;
  private List<CommandTrial> desks;
  private PaperAndPencil pencil;
  private BigDecimal rate;

  @Test
  void a_few_days_are_what_the_ledger_says() throws IOException {
    trade(4);
  }

  @Test
  @Tag("long")
  void a_year_is_what_the_ledger_says() throws IOException {
    trade(250);
  }

  private void trade(int days) throws IOException {
    begin();
    // Had open as a second window would: to open it anew takes longer than most commands.
    try (Database held = Database.open(folder.resolve("alone"))) {
      days(days);
    }
  }

  private void days(int days) {
    for (int day = 0; day < days; day++) {
      clock.set(FIRST.plusDays(day).toString());
      if (day % 10 == 0) {
        rate = new BigDecimal("0.7" + random.nextInt(10));
        both("rate", "set", "CAD", rate.toPlainString(), "--source", "the bank");
      }
      sell();
      sell();
      if (day % 25 == 1) {
        sellFitOut();
      }
      for (int step = 0; step < 4; step++) {
        move();
      }
      balances("day " + day);
    }
    both("quote", "list");
    JsonNode orders = both("order", "list").get("orders");
    orders.forEach(order -> linesAgree(order.get("number").asString()));
  }

  private void begin() throws IOException {
    Path catalogue = importing();
    pencil = new PaperAndPencil(catalogue);
    Path team = Files.createDirectories(folder.resolve("team"));
    desks =
        List.of(
            desk(folder.resolve("alone"), Map.of()),
            desk(team, PostgresCluster.shared().environment(BooksOn.database(team))));
    both("catalogue", "load", catalogue.toString());
    JsonNode first = both("quote", "make", "--job", TradingDesk.JOB, "--customer", "COUNTER");
    first
        .get("lines")
        .forEach(line -> planned.put(line.get("item").asString(), line.get("quantity").asInt()));
    String file = FitOut.file(folder).toString();
    fitOut = FitOut.of(both("quote", "make", "--package", file, "--customer", "COUNTER"));
    assertThat(fitOut.lines()).hasSizeGreaterThanOrEqualTo(30);
    Stream.of(planned.keySet().stream(), fitOut.pieces().keySet().stream(), Stream.of(IMPORTED))
        .flatMap(items -> items)
        .forEach(item -> ledger.onHand.put(item, pencil.onHand(item)));
  }

  private CommandTrial desk(Path data, Map<String, String> environment) {
    return CommandTrial.of(data, environment, trial -> AllCommands.of(trial, clock));
  }

  /** The demo catalogue with one cost in Canadian dollars. */
  private Path importing() throws IOException {
    Path catalogue = Files.createDirectories(folder.resolve("catalogue"));
    try (Stream<Path> files = Files.list(Path.of("catalogue"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.writeString(
            catalogue.resolve(file.getFileName()),
            Files.readString(file)
                .replace(
                    IMPORTED + ",SAFE,2026-01-01,,54.56,USD",
                    IMPORTED + ",SAFE,2026-01-01,,74.20,CAD"));
      }
    }
    return catalogue;
  }

  private void sell() {
    String buyer = BUYERS.get(random.nextInt(BUYERS.size()));
    String number = both("quote", "copy", "1", "--customer", buyer).get("number").asString();
    Map<String, Integer> wanted = new LinkedHashMap<>(planned);
    wanted.put(HOSE, 1 + random.nextInt(45));
    List<String> revise =
        new ArrayList<>(List.of("quote", "revise", number, "--reason", "so many", "--quantity"));
    revise.add("1=" + wanted.get(HOSE));
    if (random.nextBoolean()) {
      wanted.put(IMPORTED, 1 + random.nextInt(12));
      revise.addAll(List.of("--add", wanted.get(IMPORTED) + " x " + IMPORTED));
    }
    both(revise.toArray(String[]::new));
    sumsAgree(number, buyer, wanted);
    both("quote", "issue", number, "--allow-below-floor");
    if (random.nextInt(4) == 0) {
      both("quote", "decline", number, "--reason", "too dear");
    } else {
      both("quote", "accept", number);
      raise(both("order", "raise", number), List.copyOf(wanted.entrySet()));
    }
  }

  /** The whole purchase, of which a group is shipped and another given up. */
  private void sellFitOut() {
    String buyer = BUYERS.get(random.nextInt(BUYERS.size()));
    String number = both("quote", "copy", "2", "--customer", buyer).get("number").asString();
    sumsOfGoodsAgree(both("quote", "show", number), buyer, fitOut.pieces());
    both("quote", "issue", number, "--allow-below-floor", "--unknown-margin-by", "olga");
    both("quote", "accept", number);
    JsonNode order = both("order", "raise", number);
    raise(
        order,
        fitOut.lines().stream().map(line -> Map.entry(line.item(), line.quantity())).toList());
    String raised = order.get("number").asString();
    balances("the fit-out raised");
    ledger.bought.stream()
        .filter(one -> one.order.equals(raised) && one.awaited > 1)
        .toList()
        .forEach(
            one -> {
              int pieces = 1 + random.nextInt(one.awaited);
              both("order", "receive", one.purchase, "--line", one.position + "=" + pieces);
              ledger.receive(one, pieces, false);
            });
    ofGroup(raised, 1, "ship").forEach(ledger::ship);
    ofGroup(raised, 5, "cancel", "--reason", "they have them")
        .forEach(line -> ledger.cancel(line, line.open()));
    linesAgree(raised);
    balances("a group shipped and one given up");
  }

  /** Does something with a whole group, and gives its lines. */
  private List<Line> ofGroup(String order, int group, String... what) {
    List<String> words = new ArrayList<>(List.of("order", what[0], order, "--group", "" + group));
    words.addAll(List.of(what).subList(1, what.length));
    both(words.toArray(String[]::new));
    return ledger.lines.stream()
        .filter(line -> line.order.equals(order))
        .filter(line -> fitOut.lines().get(line.position - 1).group() == group)
        .toList();
  }

  private void sumsAgree(String number, String buyer, Map<String, Integer> wanted) {
    JsonNode shown = both("quote", "show", number, "--internal");
    sumsOfGoodsAgree(shown.get("quote"), buyer, wanted);
    assertThat(shown.get("earnings").get("all").get("fraction").decimalValue())
        .isEqualByComparingTo(pencil.margin(buyer, wanted, rate));
  }

  private void sumsOfGoodsAgree(JsonNode quote, String buyer, Map<String, Integer> wanted) {
    PaperAndPencil.Sums sums = pencil.sums(buyer, wanted);
    assertThat(quote.get("subtotal").asString()).isEqualTo(sums.subtotal() + " USD");
    assertThat(quote.get("freight").asString()).isEqualTo(sums.freight() + " USD");
    assertThat(quote.get("tax").asString()).isEqualTo(sums.tax() + " USD");
    assertThat(quote.get("total").asString()).isEqualTo(sums.total() + " USD");
  }

  private void raise(JsonNode order, List<Map.Entry<String, Integer>> wanted) {
    String number = order.get("number").asString();
    int position = 0;
    Map<String, Integer> needed = new LinkedHashMap<>();
    for (Map.Entry<String, Integer> line : wanted) {
      position++;
      needed.merge(
          line.getKey(),
          ledger.raise(number, position, line.getKey(), line.getValue()),
          Integer::sum);
    }
    needed.forEach(
        (item, count) -> assertThat(needed(order, item)).as(number + " " + item).isEqualTo(count));
    for (JsonNode purchase : order.get("purchases")) {
      for (JsonNode line : purchase.get("lines")) {
        String item = line.get("stockCode").asString();
        int quantity = line.get("quantity").asInt();
        assertThat(quantity % pencil.pack(item)).isZero();
        assertThat(quantity).isGreaterThanOrEqualTo(line.get("needed").asInt());
        ledger.bought.add(
            new Bought(
                purchase.get("number").asString(),
                number,
                line.get("position").asInt(),
                item,
                quantity));
      }
    }
    linesAgree(number);
  }

  private static int needed(JsonNode order, String item) {
    int needed = 0;
    for (JsonNode purchase : order.get("purchases")) {
      for (JsonNode line : purchase.get("lines")) {
        needed += line.get("stockCode").asString().equals(item) ? line.get("needed").asInt() : 0;
      }
    }
    return needed;
  }

  private void move() {
    switch (random.nextInt(7)) {
      case 0, 1 -> receive();
      case 2 -> ship();
      case 3 -> takeBack();
      case 4 -> count();
      case 5 -> cancelPieces();
      default -> cancelOrder();
    }
  }

  private void receive() {
    Bought from = oneOf(ledger.bought, one -> one.awaited > 0);
    if (from == null) {
      return;
    }
    int over = random.nextInt(3);
    int pieces = 1 + random.nextInt(from.awaited) + (over == 0 ? 0 : 2);
    List<String> words =
        new ArrayList<>(
            List.of("order", "receive", from.purchase, "--line", from.position + "=" + pieces));
    if (over > 0) {
      words.addAll(List.of("--over", over == 1 ? "take" : "send-back"));
    }
    both(words.toArray(String[]::new));
    ledger.receive(from, pieces, over == 1);
  }

  private void ship() {
    Line line = oneOf(ledger.lines, one -> one.reserved > 0);
    if (line != null) {
      both("order", "ship", line.order, "--line", line.position + "=" + line.reserved);
      ledger.ship(line);
    }
  }

  private void takeBack() {
    Line line = oneOf(ledger.lines, one -> one.shipped > one.returned);
    if (line != null) {
      int pieces = 1 + random.nextInt(line.shipped - line.returned);
      both(
          "order",
          "return",
          line.order,
          "--line",
          line.position + "=" + pieces,
          "--reason",
          "not wanted");
      ledger.takeBack(line, pieces);
    }
  }

  private void count() {
    List<String> items = List.copyOf(ledger.onHand.keySet());
    String item = items.get(random.nextInt(items.size()));
    int pieces = Math.max(0, ledger.onHand(item) + random.nextInt(9) - 4);
    both("order", "count", item, "" + pieces, "--reason", "counted by two");
    ledger.count(item, pieces);
  }

  private void cancelPieces() {
    Line line = oneOf(ledger.lines, one -> one.open() > 1);
    if (line != null) {
      int pieces = 1 + random.nextInt(line.open() - 1);
      both(
          "order",
          "cancel",
          line.order,
          "--line",
          line.position + "=" + pieces,
          "--reason",
          "a shorter run");
      ledger.cancel(line, pieces);
    }
  }

  private void cancelOrder() {
    Line any =
        oneOf(
            ledger.lines,
            one ->
                ledger.lines.stream()
                    .filter(line -> line.order.equals(one.order))
                    .allMatch(line -> line.shipped == 0 && line.open() > 0));
    if (any != null) {
      boolean close = random.nextBoolean();
      both(
          "order",
          "cancel",
          any.order,
          "--purchases",
          close ? "close" : "keep",
          "--reason",
          "the yard was sold");
      ledger.cancel(any.order, close);
    }
  }

  private <T> T oneOf(List<T> among, Predicate<T> which) {
    List<T> fit = among.stream().filter(which).toList();
    return fit.isEmpty() ? null : fit.get(random.nextInt(fit.size()));
  }

  private void balances(String when) {
    JsonNode stock = both("order", "stock");
    assertThat(stock.get("balanced").asBoolean()).as(when).isTrue();
    TreeSet<String> seen = new TreeSet<>();
    for (JsonNode shelf : stock.get("shelves")) {
      String item = shelf.get("item").asString();
      seen.add(item);
      assertThat(shelf.get("onHand").asInt()).as(when + item).isEqualTo(ledger.onHand(item));
      assertThat(shelf.get("reserved").asInt()).as(when + item).isEqualTo(ledger.reserved(item));
      assertThat(shelf.get("onOrder").asInt()).as(when + item).isEqualTo(ledger.onOrder(item));
      assertThat(
              shelf.get("counted").asInt()
                  + shelf.get("received").asInt()
                  + shelf.get("returned").asInt())
          .as(when + item)
          .isEqualTo(
              shelf.get("shipped").asInt() + shelf.get("sentBack").asInt() + ledger.onHand(item));
    }
    ledger.lines.stream()
        .filter(line -> line.reserved > 0)
        .forEach(line -> assertThat(seen).as(when).contains(line.item));
  }

  private void linesAgree(String number) {
    JsonNode order = both("order", "show", number);
    for (Line line : ledger.lines) {
      if (line.order.equals(number)) {
        JsonNode shown = order.get("lines").get(line.position - 1);
        assertThat(
                Stream.of("quantity", "reserved", "shipped", "cancelled", "returned", "shortage")
                    .map(column -> shown.get(column).asInt()))
            .as(number + " line " + line.position)
            .containsExactly(
                line.quantity,
                line.reserved,
                line.shipped,
                line.cancelled,
                line.returned,
                line.lacks());
      }
    }
  }

  /** A command that must go well, the same way in both books. */
  private JsonNode both(String... words) {
    String[] all = Arrays.copyOf(words, words.length + 1);
    all[words.length] = "--json";
    List<Ended> ended = desks.stream().map(desk -> desk.run(all)).toList();
    for (Ended one : ended) {
      assertThat(one.exitCode()).as(String.join(" ", words) + ": " + one.err()).isZero();
    }
    assertThat(ended.get(1).out()).isEqualTo(ended.get(0).out());
    return ended.get(0).json();
  }
}
