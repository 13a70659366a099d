package hosewright.store.order;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.order.Cancelled.Bought;
import hosewright.order.Order;
import hosewright.order.OrderBook.Actor;
import hosewright.order.OrderBook.Over;
import hosewright.order.OrderBook.StockLine;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.problem.RefusalException;
import hosewright.quote.Quote;
import hosewright.store.database.Database;
import hosewright.store.quote.SampleQuotes;
import hosewright.store.quote.StoredQuotes;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Orders raised, received, shipped and cancelled in any order, beside a count kept by hand. */
final class OrderTradeTest {
  private static final Instant NOW = Instant.parse("2026-03-02T10:00:00Z");
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final Actor SAM = new Actor("sam", NOW);
  private static final List<String> CODES = List.of("H-1", "C-1", "G-1");

  @TempDir Path folder;
  private StoredQuotes quotes;
  private StoredOrders orders;
  private Random random;

  /** Pieces on each shelf as somebody would count them who saw every box come and go. */
  private final Map<String, Integer> counted = new HashMap<>();

  @Test
  void whatever_is_raised_received_shipped_and_cancelled_the_books_balance() {
    trade(2, 70);
  }

  @Test
  @Tag("long")
  void the_books_balance_after_many_more_steps() {
    trade(40, 150);
  }

  private void trade(int seeds, int steps) {
    Set<Order.State> met = EnumSet.noneOf(Order.State.class);
    for (long seed = 1; seed <= seeds; seed++) {
      random = new Random(seed);
      counted.clear();
      try (Database database = Database.open(folder.resolve("seed" + seed))) {
        quotes = new StoredQuotes(database, SampleQuotes.CODEC, Clock.fixed(NOW, ZoneOffset.UTC));
        orders = new StoredOrders(database);
        CODES.forEach(code -> count(database, code, 20));
        for (int step = 0; step < steps; step++) {
          step();
          balances("seed " + seed + " step " + step);
        }
        orders.list().forEach(order -> met.add(order.state()));
      }
    }
    assertThat(met).containsExactlyInAnyOrder(Order.State.values());
  }

  private void step() {
    List<Order> all = orders.list();
    if (all.isEmpty() || random.nextInt(4) == 0) {
      Quote quote = SampleQuotes.accepted(quotes, NOW);
      orders.raise(quote, (number, shelves) -> order(number, quote, shelves.free()), SAM);
      return;
    }
    Order order = all.get(random.nextInt(all.size()));
    switch (random.nextInt(9)) {
      case 0, 1, 2 -> receive(order);
      case 3, 4 -> ship(order);
      case 5 -> orders.reserve(order.number());
      case 6 -> takeBack(order);
      case 7 -> recount();
      default -> {
        if (random.nextBoolean()) {
          cancelLine(order);
        } else {
          cancel(order);
        }
      }
    }
  }

  private void receive(Order order) {
    for (PurchaseOrder purchase : order.purchases()) {
      for (PurchaseLine line : purchase.lines()) {
        Over over = Over.values()[random.nextInt(Over.values().length)];
        int came = random.nextInt(line.outstanding() + 1) + (over == Over.REFUSED ? 0 : 2);
        if (came > 0) {
          orders.receive(purchase.number(), Map.of(line.position(), came), over, SAM);
          int kept = over == Over.SENT_BACK ? Math.min(came, line.outstanding()) : came;
          counted.merge(line.ware().stockCode(), kept, Integer::sum);
        }
      }
    }
  }

  private void ship(Order order) {
    boolean all = random.nextBoolean();
    for (OrderLine line : order.lines()) {
      int gone = all ? line.counts().reserved() : random.nextInt(line.counts().reserved() + 1);
      if (gone > 0) {
        orders.ship(order.number(), Map.of(line.position(), gone), SAM);
        counted.merge(line.ware().stockCode(), -gone, Integer::sum);
      }
    }
  }

  private void takeBack(Order order) {
    for (OrderLine line : order.lines()) {
      int gone = line.counts().shipped() - line.counts().returned();
      if (gone > 0) {
        int back = 1 + random.nextInt(gone);
        orders.takeBack(order.number(), Map.of(line.position(), back), SAM, "too many");
        counted.merge(line.ware().stockCode(), back, Integer::sum);
      }
    }
  }

  private void recount() {
    String code = CODES.get(random.nextInt(CODES.size()));
    int pieces = random.nextInt(30);
    orders.count(code, pieces, SAM, "counted by two");
    counted.put(code, pieces);
  }

  private void cancelLine(Order order) {
    OrderLine line = order.lines().get(random.nextInt(order.lines().size()));
    boolean lastOfIt =
        order.lines().stream()
            .allMatch(one -> one.counts().shipped() == 0 && (one == line || one.open() == 0));
    int most = lastOfIt ? line.open() - 1 : line.open();
    if (most > 0) {
      int fewer = 1 + random.nextInt(most);
      orders.cancelLines(order.number(), Map.of(line.position(), fewer), SAM, "a shorter run");
    }
  }

  /**
   * Whether a piece that a purchase order of this order brings is the one another order gets, piece
   * by piece: all are expected on one day, so the lowest number comes first.
   */
  private boolean isAwaitedElsewhere(Order order) {
    List<String> own = order.purchases().stream().map(PurchaseOrder::number).toList();
    List<Order> oldestFirst = new ArrayList<>(orders.list());
    Collections.reverse(oldestFirst);
    for (String code : CODES) {
      List<String> brought = new ArrayList<>();
      List<String> waiting = new ArrayList<>();
      for (Order one : oldestFirst) {
        one.purchases().stream()
            .flatMap(
                bought ->
                    bought.lines().stream()
                        .filter(line -> line.ware().stockCode().equals(code))
                        .flatMap(
                            line ->
                                Collections.nCopies(line.outstanding(), bought.number()).stream()))
            .forEach(brought::add);
        one.lines().stream()
            .filter(line -> line.ware().stockCode().equals(code))
            .forEach(line -> waiting.addAll(Collections.nCopies(line.shortage(), one.number())));
      }
      for (int piece = 0; piece < Math.min(brought.size(), waiting.size()); piece++) {
        if (own.contains(brought.get(piece)) && !waiting.get(piece).equals(order.number())) {
          return true;
        }
      }
    }
    return false;
  }

  /** Refused exactly where a rule says so, and then nothing has changed. */
  private void cancel(Order order) {
    Bought bought = Bought.values()[random.nextInt(Bought.values().length)];
    boolean gone = order.lines().stream().anyMatch(line -> line.counts().shipped() > 0);
    boolean inPart =
        order.purchases().stream()
            .anyMatch(purchase -> purchase.state() == PurchaseOrder.State.PART_RECEIVED);
    boolean refused =
        gone
            || order.state() == Order.State.CANCELLED
            || (bought == Bought.UNDECIDED && (inPart || isAwaitedElsewhere(order)));
    try {
      orders.cancel(order.number(), bought, SAM, "no longer wanted");
      assertThat(refused).isFalse();
    } catch (RefusalException e) {
      assertThat(refused).as(e.getMessage()).isTrue();
      assertThat(orders.find(order.number())).contains(order);
    }
  }

  private void balances(String when) {
    List<Order> all = orders.list();
    Map<String, StockLine> shelves = new HashMap<>();
    orders.stock().forEach(shelf -> shelves.put(shelf.stockCode(), shelf));
    for (String code : CODES) {
      StockLine shelf = shelves.get(code);
      assertThat(shelf.balances()).as(when).isTrue();
      assertThat(shelf.onHand()).as(when).isEqualTo(counted.get(code));
      assertThat(shelf.free()).as(when).isNotNegative();
      assertThat(shelf.onOrder())
          .as(when)
          .isEqualTo(
              all.stream()
                  .flatMap(order -> order.purchases().stream())
                  .flatMap(purchase -> purchase.lines().stream())
                  .filter(line -> line.ware().stockCode().equals(code))
                  .mapToInt(PurchaseLine::outstanding)
                  .sum());
    }
    for (Order order : all) {
      if (order.state() == Order.State.CANCELLED) {
        assertThat(order.lines())
            .as(when)
            .allMatch(line -> line.counts().reserved() + line.counts().shipped() == 0);
        assertThat(order.lines()).as(when).allMatch(line -> line.shortage() == 0);
      }
    }
    assertThat(all.stream().map(Order::number).distinct().count()).isEqualTo(all.size());
  }

  private Order order(String number, Quote quote, Map<String, Integer> free) {
    List<OrderLine> lines = new ArrayList<>();
    List<PurchaseLine> bought = new ArrayList<>();
    for (String code : CODES.subList(0, 1 + random.nextInt(CODES.size()))) {
      int quantity = 1 + random.nextInt(12);
      int reserved = Math.min(quantity, free.getOrDefault(code, 0));
      int position = lines.size() + 1;
      lines.add(
          new OrderLine(
              position,
              position,
              new OrderLine.Ware(code, code, "part", "each"),
              new OrderLine.Counts(quantity, reserved, 0, 0)));
      if (quantity > reserved) {
        int missing = quantity - reserved;
        bought.add(
            new PurchaseLine(
                bought.size() + 1,
                new PurchaseLine.Ware(code, "part", "each"),
                missing,
                (missing + 5) / 6 * 6,
                0,
                0,
                Optional.empty()));
      }
    }
    List<PurchaseOrder> purchases =
        bought.isEmpty()
            ? List.of()
            : List.of(new PurchaseOrder("", number, "WEAVE", "Weaving", DAY, "", bought));
    return new Order(
        number,
        new Order.Sold(quote.number(), 1, "Port Harlow", "Quay"),
        new Order.Timing(DAY, DAY, NOW, "sam"),
        Optional.empty(),
        lines,
        purchases);
  }

  private void count(Database database, String code, int pieces) {
    counted.put(code, pieces);
    database
        .context()
        .transaction(
            nested ->
                StockRows.move(
                    nested.dsl(),
                    code,
                    pieces,
                    new StockRows.Movement(StockRows.Kind.COUNTED, "", ""),
                    SAM));
  }
}
