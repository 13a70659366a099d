package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A year at the dealer's, from the first load to books that balance, typed as it would be. */
final class TradingYearTest {
  @TempDir Path folder;

  @Test
  void a_year_of_trade_ends_with_books_that_balance() throws Exception {
    TradingDesk desk = new TradingDesk(folder.resolve("data"), "2026-01-05");
    DemoCatalogue.loadInto(desk, folder.resolve("january"), BigDecimal.ONE);

    String first = desk.quote("DUNMERE-CON");
    String lost = desk.quote("SKERRY-FARM");
    String late = desk.quote("COUNTER");
    desk.done(
        "quote",
        "revise",
        first,
        "--quantity",
        "1=40",
        "--add",
        "2 x SVC-FLUSH",
        "--add",
        "1 x Crating @ 35.00",
        "--reason",
        "they lay three lines",
        "--by",
        "ines");
    // Nobody knows what the crating costs.
    desk.done(
        "quote",
        "issue",
        first,
        "--valid-days",
        "60",
        "--unknown-margin-by",
        "olga",
        "--by",
        "ines");
    desk.done("quote", "issue", lost, "--by", "ines");
    desk.done("quote", "issue", late, "--by", "ines");
    JsonNode promised = desk.done("quote", "show", first);

    desk.clock.set("2026-02-01");
    DemoCatalogue.loadInto(desk, folder.resolve("february"), new BigDecimal("1.08"));
    desk.done("quote", "decline", lost, "--reason", "grown out of it");
    assertThat(desk.done("quote", "show", first)).isEqualTo(promised);

    desk.clock.set("2026-02-20");
    assertThat(desk.refused("quote", "accept", late)).contains("expired");
    desk.done("quote", "update-prices", late, "--by", "ines");
    desk.done("quote", "issue", late);
    desk.done("quote", "accept", late);
    desk.done("quote", "accept", first, "--by", "tom", "--note", "their order 4711");

    JsonNode order = desk.done("order", "raise", first, "--by", "tom");
    JsonNode small = desk.done("order", "raise", late, "--by", "tom");
    tracesToTheQuote(desk, order);
    tracesToTheQuote(desk, small);
    // 15 hoses lie in stock and 40 are wanted: 25 are bought, 21 days away, then 2 days of work.
    assertThat(order.get("lines").get(0).get("reserved").asInt()).isEqualTo(15);
    assertThat(order.get("shipOn").asString()).isEqualTo("2026-03-15");
    assertThat(small.get("lines").get(0).get("shortage").asInt()).isEqualTo(9);
    assertThat(desk.done("order", "shortages").get("shortages").size()).isEqualTo(2);
    balances(desk);

    desk.clock.set("2026-03-10");
    desk.done("order", "receive", "P-000001", "--line", "1=10", "--by", "sam");
    desk.done("order", "ship", "O-000001", "--by", "sam");
    balances(desk);
    desk.clock.set("2026-03-16");
    assertThat(desk.done("order", "shortages").get("shortages").get(0).get("overdue").asBoolean())
        .isTrue();
    desk.done("order", "receive", "P-000001", "--by", "sam");
    desk.done("order", "receive", "P-000002", "--by", "sam");
    JsonNode shipped = desk.done("order", "ship", "O-000001", "--by", "sam");
    desk.done("order", "ship", "O-000002", "--by", "sam");
    assertThat(shipped.get("state").asString()).isEqualTo("shipped");

    aThirdOrderIsCancelled(desk);

    desk.clock.set("2026-12-31");
    // The file still states January's stock: loading it again is no count.
    DemoCatalogue.loadInto(desk, folder.resolve("december"), new BigDecimal("1.08"));
    JsonNode stock = balances(desk);
    JsonNode hose = shelf(stock, "H175-DJ-50-15NH");
    assertThat(hose.get("counted").asInt()).isEqualTo(15);
    assertThat(hose.get("received").asInt()).isEqualTo(34);
    assertThat(hose.get("shipped").asInt()).isEqualTo(49);
    assertThat(hose.get("onHand").asInt()).isZero();
    assertThat(desk.done("quote", "show", first + "-r2").get("total"))
        .isEqualTo(promised.get("total"));
    assertThat(desk.done("order", "list").get("orders").size()).isEqualTo(3);
    assertThat(Files.exists(folder.resolve("data/store.mv.db"))).isTrue();
  }

  /** Bought for and taken back before anything came: the books are as if it had not been. */
  private static void aThirdOrderIsCancelled(TradingDesk desk) {
    desk.clock.set("2026-05-04");
    JsonNode before = desk.done("order", "stock");
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number);
    desk.done("quote", "accept", number);
    JsonNode order = desk.done("order", "raise", number);
    JsonNode cancelled =
        desk.done("order", "cancel", "3", "--reason", "the yard was sold", "--by", "tom");
    assertThat(cancelled.get("order").get("state").asString()).isEqualTo("cancelled");
    assertThat(cancelled.get("order").get("cancellation").get("by").asString()).isEqualTo("tom");
    assertThat(cancelled.get("closed").size()).isEqualTo(order.get("purchases").size());
    assertThat(desk.done("order", "shortages").get("shortages").size()).isZero();
    assertThat(desk.run("quote", "history", number).out())
        .contains("order cancelled by tom", "O-000003: the yard");
    assertThat(desk.done("order", "stock").get("balanced").asBoolean()).isTrue();
    assertThat(shelf(desk.done("order", "stock"), "H175-DJ-50-15NH"))
        .isEqualTo(shelf(before, "H175-DJ-50-15NH"));
    assertThat(desk.refused("order", "pick", "3")).contains("is cancelled");
    assertThat(desk.refused("order", "ship", "3")).contains("has nothing reserved");
    assertThat(desk.run("order", "purchase", "P-000003").out())
        .contains("Please deliver nothing more of it");
  }

  /** Every line of an order is a line of its quote, in item, words and quantity. */
  private static void tracesToTheQuote(TradingDesk desk, JsonNode order) {
    JsonNode quote =
        desk.done(
            "quote",
            "show",
            order.get("quoteNumber").asString() + "-r" + order.get("quoteRevision").asInt());
    assertThat(order.get("lines").size()).isEqualTo(quote.get("lines").size());
    for (JsonNode line : order.get("lines")) {
      JsonNode quoted = quote.get("lines").get(line.get("quotePosition").asInt() - 1);
      for (String same : new String[] {"item", "description", "quantity"}) {
        assertThat(line.get(same)).isEqualTo(quoted.get(same));
      }
    }
  }

  /** Stock in is stock out and on hand, for every shelf that moved and for all others. */
  private static JsonNode balances(TradingDesk desk) {
    JsonNode stock = desk.done("order", "stock");
    for (JsonNode shelf : stock.get("shelves")) {
      assertThat(shelf.get("counted").asInt() + shelf.get("received").asInt())
          .isEqualTo(shelf.get("shipped").asInt() + shelf.get("onHand").asInt());
    }
    assertThat(stock.get("balanced").asBoolean()).isTrue();
    return stock;
  }

  private static JsonNode shelf(JsonNode stock, String item) {
    for (JsonNode shelf : stock.get("shelves")) {
      if (shelf.get("item").asString().equals(item)) {
        return shelf;
      }
    }
    throw new AssertionError("no shelf " + item);
  }
}
