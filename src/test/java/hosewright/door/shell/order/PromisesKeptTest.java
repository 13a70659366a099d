package hosewright.door.shell.order;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.TradingDesk;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.Database;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What was promised of the shelf when it is counted, delivered to, sent back to and asked for. Of
 * the hose 15 lie in the demo stock and the demo job takes 9.
 */
final class PromisesKeptTest {
  private static final String HOSE = "H175-DJ-50-15NH";

  /** Two lie in stock, and nobody supplies it any more. */
  private static final String DISCONTINUED = "A-35NHFS-25NHM";

  @TempDir private Path folder;
  private TradingDesk desk;

  /** As a second window of the shop's would: to open it anew takes longer than most commands. */
  @AutoClose private Database held;

  @BeforeEach
  void open() {
    desk = new TradingDesk(folder.resolve("data"), "2026-11-02");
    held = desk.open();
  }

  @Test
  void a_count_below_what_is_promised_makes_shortages_and_the_rest_still_ships() {
    order("1=9");

    JsonNode counted = count(2);

    assertThat(counted.get("shortened").size()).isEqualTo(1);
    assertThat(counted.get("shortened").get(0).get("order").asString()).isEqualTo("O-000001");
    assertThat(counted.get("shortened").get(0).get("pieces").asInt()).isEqualTo(7);
    assertThat(shelf("free")).isZero();
    JsonNode short7 = desk.done("order", "shortages").get("shortages").get(0);
    assertThat(short7.get("shortage").asInt()).isEqualTo(7);
    assertThat(short7.get("unsupplied").asInt()).isEqualTo(7);
    assertThat(line(desk.done("order", "ship", "1"), 0, "shipped")).isEqualTo(2);
    assertThat(shelf("onHand")).isZero();
  }

  @Test
  void a_catalogue_that_counts_fewer_than_are_promised_names_who_is_short() {
    order("1=9");

    Ended loaded = desk.run("catalogue", "load", stating(2));

    assertThat(loaded.exitCode()).isZero();
    assertThat(loaded.out())
        .contains("Nothing but stock differs", "O-000001 is short of 7 of " + HOSE)
        .doesNotContain("Nothing differs");
    assertThat(shelf("free")).isZero();
    assertThat(line(desk.done("order", "ship", "1"), 0, "shipped")).isEqualTo(2);
  }

  @Test
  void a_dry_run_says_what_it_would_count() {
    assertThat(desk.run("catalogue", "load", stating(2), "--dry-run").out())
        .contains("1 shelf would be counted", HOSE);
    assertThat(shelf("onHand")).isEqualTo(15);
  }

  @Test
  void the_newest_promise_is_given_up_first_and_found_again_last() {
    order("1=6");
    order("1=5");

    JsonNode shortened = count(4).get("shortened");
    assertThat(shortened.get(0).get("order").asString()).isEqualTo("O-000001");
    assertThat(shortened.get(0).get("pieces").asInt()).isEqualTo(2);
    assertThat(shortened.get(1).get("order").asString()).isEqualTo("O-000002");
    assertThat(shortened.get(1).get("pieces").asInt()).isEqualTo(5);

    JsonNode served = count(9).get("served");
    assertThat(served.get(0).get("order").asString()).isEqualTo("O-000001");
    assertThat(served.get(0).get("pieces").asInt()).isEqualTo(2);
    assertThat(served.get(1).get("order").asString()).isEqualTo("O-000002");
    assertThat(served.get(1).get("pieces").asInt()).isEqualTo(3);
  }

  @Test
  void an_order_that_is_not_there_is_told_as_not_there() {
    assertThat(desk.refused("order", "show", "2").strip())
        .isEqualTo("There is no order 2: none is raised yet, 'order raise' raises one.");
  }

  @Test
  void a_file_loaded_again_undoes_no_count_and_a_count_by_hand_may_equal_it() {
    count(3);
    desk.done("catalogue", "load", "catalogue");
    assertThat(shelf("onHand")).isEqualTo(3);

    count(15);
    assertThat(shelf("onHand")).isEqualTo(15);
    assertThat(desk.refused("order", "count", HOSE, "15")).contains("reason");
    assertThat(desk.refused("order", "count", "H175-DJ-50-15NX", "1", "--reason", "found it"))
        .contains("There is no item", HOSE);
    assertThat(desk.refused("order", "count", "svc-flush", "3", "--reason", "found them"))
        .contains("SVC-FLUSH", "of work nothing lies on a shelf");
  }

  @Test
  void what_comes_goes_to_the_oldest_promise_whichever_order_it_was_bought_for() {
    order("1=20");
    order("1=4");

    JsonNode served = desk.done("order", "receive", "P-000002").get("served");

    assertThat(served.get(0).get("order").asString()).isEqualTo("O-000001");
    assertThat(served.get(0).get("pieces").asInt()).isEqualTo(4);
    JsonNode waits = desk.done("order", "shortages").get("shortages");
    assertThat(waits.get(0).get("order").asString()).isEqualTo("O-000001");
    assertThat(waits.get(1).get("order").asString()).isEqualTo("O-000002");
    assertThat(waits.get(1).get("purchase").asString()).isEqualTo("P-000001");
    assertThat(desk.run("order", "show", "2").out()).contains("come with P-000001");
  }

  @Test
  void what_comes_and_nobody_waits_for_is_taken_before_anything_is_bought() {
    order("1=20");
    desk.done("order", "cancel", "1", "--reason", "sold the yard", "--purchases", "keep");
    count(0);

    JsonNode order = order("1=4");

    assertThat(order.get("purchases").size()).isZero();
    assertThat(line(order, 0, "shortage")).isEqualTo(4);
    assertThat(line(order, 0, "unsupplied")).isZero();
    assertThat(order.get("shipOn").asString()).isEqualTo("2026-11-23");
    // 5 come with P-000001 and 4 of them are spoken for.
    assertThat(order("1=3").get("purchases").get(0).get("lines").get(0).get("needed").asInt())
        .isEqualTo(2);
  }

  @Test
  void goods_another_order_waits_for_are_not_closed_with_the_order_they_were_bought_for() {
    order("1=20");
    count(0);
    desk.done("order", "cancel", "1", "--line", "1=18", "--reason", "a smaller yard");
    order("1=2");

    assertThat(desk.refused("order", "cancel", "1", "--reason", "no yard at all"))
        .contains("P-000001, which O-000002 waits for");
    desk.done("order", "cancel", "1", "--reason", "no yard at all", "--purchases", "close");
    assertThat(desk.done("order", "shortages").get("shortages").get(0).get("unsupplied").asInt())
        .isEqualTo(2);
  }

  @Test
  void the_day_is_open_where_nobody_supplies_and_order_buy_asks_somebody() {
    JsonNode order = order("1=9", "--add", "3 x " + DISCONTINUED);

    assertThat(order.get("shipOn").isNull()).isTrue();
    assertThat(desk.run("order", "show", "1").out())
        .contains("ship date open", "'order buy O-000001' buys it");
    assertThat(desk.refused("order", "buy", "1")).contains("from", "nobody supplies line 7");
    assertThat(desk.refused("order", "buy", "1", "--from", "COUPLE")).contains("COUPL");

    JsonNode bought =
        desk.done(
            "order", "buy", "1", "--from", "COUPL", "--each", "31.50 USD", "--lead-days", "9");
    JsonNode purchase = bought.get("purchases").get(bought.get("purchases").size() - 1);
    assertThat(purchase.get("expectedOn").asString()).isEqualTo("2026-11-11");
    assertThat(purchase.get("lines").get(0).get("quantity").asInt()).isEqualTo(1);
    assertThat(desk.run("order", "purchase", purchase.get("number").asString()).out())
        .contains("31.50");
    assertThat(desk.refused("order", "buy", "1", "--from", "COUPL")).contains("short of nothing");
  }

  @Test
  void the_day_an_order_can_ship_is_looked_at_anew_whenever_it_is_shown() {
    order("1=9");
    assertThat(shipOn()).isEqualTo("2026-11-02");

    count(2);
    assertThat(shipOn()).isEqualTo("open");
    assertThat(desk.run("order", "list").out()).contains("open");
    assertThat(desk.run("order", "show", "1").out().replaceAll("\\s+", " "))
        .contains("; ship date open, since nobody supplies some of it");
    // The weaving mill takes 21 days.
    desk.done("order", "buy", "1");
    assertThat(shipOn()).isEqualTo("2026-11-23");
    assertThat(desk.run("order", "show", "1").out().replaceAll("\\s+", " "))
        .contains("; can ship 2026-11-23");
    desk.on("2026-11-10");
    desk.done("order", "receive", "P-000001");
    assertThat(shipOn()).isEqualTo("2026-11-10");
    desk.done("order", "ship", "1");
    assertThat(desk.run("order", "show", "1").out()).doesNotContain("can ship", "ship date");
  }

  /** The day the only order can ship, which its list and its own page tell alike. */
  private String shipOn() {
    JsonNode listed = desk.done("order", "list").get("orders").get(0).get("shipOn");
    assertThat(desk.done("order", "show", "1").get("shipOn")).isEqualTo(listed);
    return listed.isNull() ? "open" : listed.asString();
  }

  @Test
  void more_than_was_bought_is_kept_or_sent_back_and_the_books_say_which() {
    order("1=20");
    assertThat(desk.refused("order", "receive", "P-1", "--line", "1=7")).contains("over");

    desk.done("order", "receive", "P-1", "--line", "1=7", "--over", "send-back");
    assertThat(shelf("onHand")).isEqualTo(20);
    assertThat(shelf("received")).isEqualTo(7);
    assertThat(shelf("sentBack")).isEqualTo(2);
    desk.done("order", "receive", "P-1", "--line", "1=3", "--over", "take");
    assertThat(shelf("free")).isEqualTo(3);
    assertThat(desk.run("order", "show", "1").out()).contains("3 more of line 1 came");
  }

  @Test
  void what_comes_back_lies_on_the_shelf_again_and_no_more_than_went() {
    order("1=9");
    assertThat(desk.refused("order", "return", "1", "--reason", "wrong hose"))
        .contains("no goods with the customer");
    desk.done("order", "ship", "1");

    JsonNode back = desk.done("order", "return", "1", "--line", "1=2", "--reason", "two too many");

    assertThat(line(back, 0, "returned")).isEqualTo(2);
    assertThat(back.get("state").asString()).isEqualTo("shipped");
    assertThat(shelf("free")).isEqualTo(8);
    assertThat(shelf("returned")).isEqualTo(2);
    assertThat(desk.refused("order", "return", "1", "--line", "1=8", "--reason", "all"))
        .contains("1 to 7");
  }

  @Test
  void pieces_of_a_line_are_cancelled_and_what_waits_goes_before_what_lies_there() {
    order("1=20", "--add", "1 x SVC-FLUSH");

    JsonNode after =
        desk.done("order", "cancel", "1", "--line", "1=7", "--reason", "a shorter run");
    assertThat(line(after, 0, "reserved")).isEqualTo(13);
    assertThat(line(after, 0, "shortage")).isZero();
    assertThat(desk.run("quote", "history", "1").out().replaceAll("\\s+", " "))
        .contains("order lines cancelled", "7 of line 1: a shorter run");
    assertThat(desk.run("order", "show", "1").out()).contains("7 of line 1 are cancelled");
    assertThat(desk.done("order", "ship", "1").get("state").asString()).isEqualTo("shipped");
    assertThat(desk.refused("order", "cancel", "1", "--line", "1=1", "--reason", "none"))
        .contains("nothing of line 1 is still to go");
  }

  private JsonNode order(String quantity, String... more) {
    String number = desk.quote("COUNTER");
    List<String> revise =
        Stream.concat(
                Stream.of("quote", "revise", number, "--quantity", quantity, "--reason", "so many"),
                Stream.of(more))
            .toList();
    if (!quantity.equals("1=9") || more.length > 0) {
      desk.done(revise.toArray(String[]::new));
    }
    desk.done("quote", "issue", number);
    desk.done("quote", "accept", number);
    return desk.done("order", "raise", number);
  }

  private JsonNode count(int pieces) {
    return desk.done("order", "count", HOSE, "" + pieces, "--reason", "counted by two");
  }

  /** A number of the hose's shelf, of books that balance. */
  private int shelf(String column) {
    JsonNode stock = desk.done("order", "stock", HOSE);
    assertThat(stock.get("balanced").asBoolean()).isTrue();
    return stock.get("shelves").get(0).get(column).asInt();
  }

  private static int line(JsonNode order, int index, String column) {
    return order.get("lines").get(index).get(column).asInt();
  }

  /** The demo catalogue with another number of the hose in stock. */
  private String stating(int onHand) {
    Path stated = folder.resolve("stating" + onHand);
    try (Stream<Path> files = Files.list(Path.of("catalogue"))) {
      Files.createDirectories(stated);
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.writeString(
            stated.resolve(file.getFileName()),
            Files.readString(file)
                .replaceFirst("(?m)^(" + HOSE + ",hose,.*,WEAVE,1,21,)15,", "$1" + onHand + ","));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return stated.toString();
  }
}
