package hosewright.door.shell.order;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.TradingDesk;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A whole purchase from its package file through the shop, group by group. */
final class FitOutYearTest {
  @TempDir private Path folder;

  private static JsonNode balances(TradingDesk desk) {
    JsonNode stock = desk.done("order", "stock");
    assertThat(stock.get("balanced").asBoolean()).isTrue();
    return stock;
  }

  private static void receiveAll(TradingDesk desk, JsonNode order) {
    for (JsonNode purchase : order.get("purchases")) {
      desk.done("order", "receive", purchase.get("number").asString());
    }
  }

  @Test
  void a_fit_out_is_ordered_shipped_and_cancelled_by_group_and_stock_balances() {
    TradingDesk desk = new TradingDesk(folder.resolve("data"), "2026-11-02");
    JsonNode quote =
        desk.done(
            "quote", "make", "--package", "quotes/packages/fit-out.yaml", "--add", "1 x W-HYD");
    assertThat(quote.get("groups").size()).isEqualTo(7);
    assertThat(quote.get("lines").size() + quote.get("offered").size()).isGreaterThanOrEqualTo(30);
    assertThat(quote.get("savedTogether").asString()).endsWith("USD");
    assertThat(quote.get("mightBeLess").asString()).endsWith("USD");
    String number = quote.get("number").asString();
    // What is beside the total stands last, as its lines are numbered last.
    assertThat(desk.run("quote", "show", number).out())
        .containsSubsequence("7. Parts", "6. Line to the hill tank", "subtotal of 6");
    assertThat(desk.refused("quote", "issue", number, "--allow-below-floor"))
        .contains("Mounting brackets, painted: no cost is in force");
    desk.done("quote", "issue", number, "--allow-below-floor", "--unknown-margin-by", "olga");
    desk.done("quote", "accept", number);

    JsonNode order = desk.done("order", "raise", number);
    assertThat(order.get("lines").size()).isEqualTo(quote.get("lines").size());
    assertThat(order.get("groups").size()).isEqualTo(6);
    balances(desk);
    assertThat(desk.run("order", "show", "1").out())
        .containsPattern("raised 2026-11-02 by [^;]*; can ship 202");
    receiveAll(desk, order);
    balances(desk);

    JsonNode first = desk.done("order", "ship", "1", "--group", "1");
    assertThat(first.get("state").asString()).isEqualTo("part_shipped");
    for (JsonNode line : first.get("lines")) {
      boolean ofFirst = false;
      for (JsonNode position : first.get("groups").get(0).get("lines")) {
        ofFirst = ofFirst || position.asInt() == line.get("position").asInt();
      }
      assertThat(line.get("shipped").asInt()).isEqualTo(ofFirst ? line.get("quantity").asInt() : 0);
    }
    balances(desk);

    String picked = desk.run("order", "pick", "1", "--group", "2").out();
    assertThat(picked).contains("Two hand lines off the wye").doesNotContain("Compartment 3");
    assertThat(desk.refused("order", "ship", "1", "--group", "6")).contains("Compartment 3");

    desk.done("order", "cancel", "1", "--group", "5", "--reason", "they have brackets");
    balances(desk);
    JsonNode last = desk.done("order", "ship", "1");
    assertThat(last.get("state").asString()).isEqualTo("shipped");
    balances(desk);
  }
}
