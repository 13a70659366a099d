package hosewright.door.shell.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.TradingDesk;
import hosewright.store.database.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What a quote promises, to whom it may go out, and which of its revisions stands. */
final class OffersThatHoldTest {
  private static final String JOB = "quotes/hydrant-to-nozzle.yaml";
  private static final String HOSE = "H175-DJ-50-15NH";

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
  void a_quote_dated_ahead_holds_from_its_own_day_on() {
    String number =
        desk.done("quote", "make", "--job", JOB, "--customer", "COUNTER", "--date", "2027-06-01")
            .get("number")
            .asString();

    assertThat(desk.refused("quote", "issue", number, "--valid-until", "2027-05-31"))
        .contains("2027-06-01");
    assertThat(desk.done("quote", "issue", number).get("validUntil").asString())
        .isEqualTo("2027-07-01");
    assertThat(
            desk.refused(
                "quote", "make", "--job", JOB, "--customer", "COUNTER", "--date", "2126-06-01"))
        .contains("date", "a day up to");
  }

  @Test
  void an_unknown_cost_passes_no_floor_without_a_persons_yes() {
    String number = desk.quote("COUNTER");
    revise(number, "--add", "1 x Crating @ 35.00");

    assertThat(desk.refused("quote", "issue", number)).contains("some cost is not known");
    assertThat(desk.refused("quote", "issue", number, "--allow-below-floor"))
        .contains("unknown-margin-by");
    desk.done("quote", "issue", number, "--unknown-margin-by", "olga");
    assertThat(desk.run("quote", "history", number).out()).contains("olga said yes");
  }

  @Test
  void what_earns_too_little_even_at_no_cost_more_is_below_the_floor() {
    String number = desk.quote("COUNTER");
    // 9 hoses cost 9 x 110.90; at 65 % off they are sold for less than that.
    revise(
        number,
        "--add",
        "1 x Crating @ 35.00",
        "--discount",
        "1=65%",
        "--discount-reason",
        "a mistake");

    assertThat(desk.refused("quote", "issue", number, "--unknown-margin-by", "olga"))
        .contains("it earns less than the floor");
  }

  @Test
  void a_list_price_on_a_revised_line_is_the_one_of_its_new_quantity() {
    String number = desk.quote("COUNTER");
    JsonNode nine = desk.done("quote", "show", number).get("lines").get(0);
    JsonNode sixty = revise(number, "--quantity", "1=60").get("quote").get("lines").get(0);

    assertThat(sixty.get("listPrice").asString()).isNotEqualTo(nine.get("listPrice").asString());
    // A counter sale pays the list price.
    assertThat(sixty.get("listPrice")).isEqualTo(sixty.get("unitPrice"));
  }

  @Test
  void freight_of_nothing_is_nothing_and_an_empty_quote_does_not_go_out() {
    String number = desk.quote("COUNTER");
    JsonNode bare =
        revise(
                number, "--drop", "1", "--drop", "2", "--drop", "3", "--drop", "4", "--drop", "5",
                "--drop", "6")
            .get("quote");

    assertThat(bare.get("freight").asString()).isEqualTo("0.00 USD");
    assertThat(bare.get("total").asString()).isEqualTo("0.00 USD");
    assertThat(desk.refused("quote", "issue", number)).contains("has no lines");
  }

  @Test
  void freight_that_is_still_to_be_quoted_is_no_zero_inside_a_total() {
    String number = desk.quote("COUNTER");
    revise(number, "--quantity", "1=9000");

    assertThat(desk.run("quote", "show", number).out())
        .contains("to be quoted", "total without freight")
        .doesNotContain(" 0.00 USD");
    JsonNode agreed = revise(number, "--freight", "2345.60").get("quote");
    assertThat(agreed.get("freight").asString()).isEqualTo("2345.60 USD");
    assertThat(agreed.get("carriage").asString()).isEqualTo("by_hand");
    assertThat(desk.run("quote", "show", number).out())
        .contains("2345.60 USD")
        .doesNotContain("without freight");
    revise(number, "--freight", "terms");
    assertThat(desk.run("quote", "show", number).out()).contains("total without freight");
  }

  @Test
  void a_weight_is_printed_as_it_is_charged_for() {
    // 9 x 21.25 lb of hose and the small parts, to the hundredth of a pound.
    assertThat(desk.done("quote", "show", desk.quote("COUNTER")).get("freightNote").asString())
        .matches("by weight table, \\d+\\.\\d+ lb");
  }

  @Test
  void a_price_agreed_once_and_lapsed_by_the_day_of_the_quote_is_said() {
    String said =
        desk.run("quote", "make", "--job", JOB, "--customer", "HARLOW-FD", "--date", "2027-02-01")
            .err();
    assertThat(said.replaceAll("\\s+", " "))
        .contains("The price agreed for " + HOSE + " lapsed on 2026-12-31");
    assertThat(desk.run("quote", "make", "--job", JOB, "--customer", "HARLOW-FD").err())
        .doesNotContain("lapsed");
  }

  @Test
  void a_live_offer_is_taken_while_a_newer_draft_stands_and_the_draft_is_given_up() {
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number);
    revise(number, "--quantity", "1=12");

    assertThat(desk.refused("quote", "accept", number)).contains("--revision 1");
    JsonNode taken = desk.done("quote", "accept", number, "--revision", "1");
    assertThat(taken.get("revision").asInt()).isEqualTo(1);
    assertThat(desk.done("quote", "show", number + "-r2").get("status").asString())
        .isEqualTo("discarded");
    JsonNode order = desk.done("order", "raise", number);
    assertThat(order.get("quoteRevision").asInt()).isEqualTo(1);
    assertThat(order.get("lines").get(0).get("quantity").asInt()).isEqualTo(9);
  }

  @Test
  void an_offer_that_a_newer_one_replaced_cannot_be_taken() {
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number);
    revise(number, "--quantity", "1=12");
    desk.done("quote", "issue", number);

    assertThat(desk.refused("quote", "accept", number, "--revision", "1"))
        .contains("is replaced by revision 2");
    assertThat(desk.done("quote", "accept", number).get("revision").asInt()).isEqualTo(2);
  }

  @Test
  void a_discarded_draft_keeps_its_number_and_the_offer_before_it_stands() {
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number);
    revise(number, "--quantity", "1=12");
    desk.done("quote", "discard", number, "--reason", "they took the first one");

    assertThat(desk.done("quote", "show", number).get("revision").asInt()).isEqualTo(1);
    assertThat(desk.refused("quote", "discard", number, "--reason", "again")).contains("is issued");
    assertThat(revise(number, "--quantity", "1=14").get("quote").get("revision").asInt())
        .isEqualTo(3);
    String other = desk.quote("COUNTER");
    desk.done("quote", "discard", other, "--reason", "typed in twice");
    assertThat(desk.refused("quote", "issue", other)).contains("what can be done is copy");
  }

  @Test
  void a_copy_for_another_buyer_says_that_it_drops_discounts() {
    String number = desk.quote("COUNTER");
    revise(number, "--discount", "1=10%", "--discount-reason", "first order");

    String said = desk.run("quote", "copy", number, "--customer", "DUNMERE-CON").err();
    assertThat(said.replaceAll("\\s+", " "))
        .contains("Discounts are not copied", HOSE + ", 10 % off: first order");
    assertThat(desk.run("quote", "copy", number).err()).doesNotContain("Discounts");
    assertThat(desk.done("quote", "show", "3").get("lines").get(0).get("discount").isNull())
        .isFalse();
  }

  @Test
  void a_total_beyond_what_books_hold_is_refused_and_nothing_is_kept() {
    String number = desk.quote("COUNTER");

    assertThat(
            desk.refused(
                "quote",
                "revise",
                number,
                "--add",
                "999999 x Crating @ 999999999.99",
                "--reason",
                "a slip"))
        .contains("total");
    assertThat(desk.done("quote", "show", number).get("revision").asInt()).isEqualTo(1);
  }

  @Test
  void rates_are_kept_by_day_and_one_of_nothing_is_refused() {
    assertThat(desk.refused("rate", "set", "XYZ", "0", "--source", "none"))
        .contains("currency", "rate");
    desk.done("rate", "set", "CAD", "0.70", "--from", "2026-01-01", "--source", "our bank");
    desk.done("rate", "set", "CAD", "0.80", "--from", "2026-12-01", "--source", "our bank");
    assertThat(desk.done("rate", "list").get("rates").size()).isEqualTo(2);
    assertThat(desk.run("rate", "list").out()).contains("0.7", "2026-12-01", "our bank");
  }

  @Test
  void a_cost_in_foreign_money_is_held_to_the_floor_at_the_rate_on_record_on_the_day()
      throws IOException {
    desk.done("catalogue", "load", hoseBoughtFor("170.00,CAD"));
    String number = desk.quote("COUNTER");
    assertThat(desk.refused("quote", "issue", number)).contains("some cost is not known");

    // A hose sold for 196.50 costs 170.00 x 0.70 = 119.00, and earns 39 %; the floor is 30 %.
    desk.done("rate", "set", "CAD", "0.70", "--from", "2026-11-01", "--source", "our bank");
    desk.done("rate", "set", "CAD", "0.90", "--from", "2026-11-10", "--source", "our bank");
    assertThat(desk.run("quote", "show", number, "--internal").out()).contains("119.00");
    desk.done("quote", "issue", number);

    // 170.00 x 0.90 = 153.00 leaves 22 %.
    desk.on("2026-11-10");
    String later = desk.quote("COUNTER");
    assertThat(desk.refused("quote", "issue", later)).contains("it earns less than the floor");
  }

  /** The demo catalogue with another cost of the hose. */
  private String hoseBoughtFor(String cost) throws IOException {
    Path catalogue = Files.createDirectory(folder.resolve("catalogue"));
    try (Stream<Path> files = Files.list(Path.of("catalogue"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.writeString(
            catalogue.resolve(file.getFileName()),
            Files.readString(file)
                .replace(
                    HOSE + ",WEAVE,2026-01-01,,119.39,USD", HOSE + ",WEAVE,2026-01-01,," + cost));
      }
    }
    return catalogue.toString();
  }

  private JsonNode revise(String number, String... changes) {
    String[] words = new String[changes.length + 5];
    System.arraycopy(
        new String[] {"quote", "revise", number, "--reason", "as asked"}, 0, words, 0, 5);
    System.arraycopy(changes, 0, words, 5, changes.length);
    return desk.done(words);
  }
}
