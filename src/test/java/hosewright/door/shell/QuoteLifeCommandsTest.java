package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.store.database.Database;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A quote's life as the person at the counter drives it. */
final class QuoteLifeCommandsTest {
  @TempDir Path folder;
  private TradingDesk desk;

  /** As a second window of the shop's would: to open it anew takes longer than most commands. */
  @AutoClose private Database held;

  @BeforeEach
  void open() {
    desk = new TradingDesk(folder.resolve("data"), "2026-11-02");
    held = desk.open();
  }

  /**
   * Worked by hand from the demo price list: hose 196.50 up to 9 and 188.64 from 10; reducer 22.25;
   * gaskets 1.10 and 0.70; spanners 17.50, hydrant wrench 46.00.
   *
   * <pre>
   * 12 x 188.64                              2263.68
   *  1 x 22.25 less 10 % = 20.025, half up     20.03
   *  1 x 1.10, 1 x 0.70, 2 x 17.50             36.80
   *  1 x 46.00                                 46.00
   *  2 x 17.50 crating                         35.00
   *                                          -------
   * subtotal                                 2401.51
   * freight, 264 lb                           132.00
   * tax 6.25 % of 2533.51 = 158.344..        158.34
   * total                                    2691.85
   * </pre>
   */
  @Test
  void breaks_discount_rounding_freight_and_tax_come_out_as_worked_by_hand() {
    String number = desk.quote("COUNTER");

    JsonNode quote = revise(number).get("quote");

    assertThat(quote.get("lines").get(0).get("unitPrice").asString()).isEqualTo("188.64");
    assertThat(quote.get("lines").get(0).get("extended").asString()).isEqualTo("2263.68");
    assertThat(quote.get("lines").get(1).get("unitPrice").asString()).isEqualTo("20.03");
    assertThat(quote.get("lines").get(6).get("extended").asString()).isEqualTo("35.00");
    assertThat(quote.get("subtotal").asString()).isEqualTo("2401.51 USD");
    assertThat(quote.get("freight").asString()).isEqualTo("132.00 USD");
    assertThat(quote.get("tax").asString()).isEqualTo("158.34 USD");
    assertThat(quote.get("total").asString()).isEqualTo("2691.85 USD");
  }

  @Test
  void a_quote_whose_papers_have_no_place_is_not_made_and_uses_up_no_number() throws IOException {
    String[] make = {
      "quote", "make", "--job", TradingDesk.JOB, "--customer", "COUNTER", "--export", "csv", "--out"
    };
    Path papers = folder.resolve("papers");

    assertThat(desk.refused(with(make, papers.toString()))).contains("a folder that exists");
    Files.createDirectory(papers);
    Files.createFile(papers.resolve("Q-000001-r1.csv"));
    assertThat(desk.refused(with(make, papers.toString()))).contains("the file exists");

    assertThat(desk.done("quote", "list").findValues("number")).isEmpty();
    Files.delete(papers.resolve("Q-000001-r1.csv"));
    desk.done(with(make, papers.toString()));
    assertThat(papers.resolve("Q-000001-r1.csv")).isNotEmptyFile();
  }

  private static String[] with(String[] words, String last) {
    String[] all = Arrays.copyOf(words, words.length + 1);
    all[words.length] = last;
    return all;
  }

  @Test
  void a_difference_says_what_why_and_adds_up() {
    String number = desk.quote("COUNTER");
    revise(number);

    JsonNode diff = desk.done("quote", "diff", number + "-r1", number + "-r2");

    assertThat(diff.get("why").asString()).isEqualTo("three lengths more");
    assertThat(texts(diff.get("lines"), "why"))
        .containsExactly(
            "quantity set by hand; price break from 10", "10 % off: first order", "added by hand");
    BigDecimal sum = amount(diff, "freightDifference").add(amount(diff, "taxDifference"));
    for (JsonNode line : diff.get("lines")) {
      sum = sum.add(amount(line, "difference"));
    }
    assertThat(sum).isEqualTo(amount(diff, "totalDifference"));
    assertThat(amount(diff, "totalDifference")).isEqualTo("618.33");
    assertThat(texts(diff.get("rest"), "what")).contains("offered", "notes", "freight");
  }

  @Test
  void a_changed_job_is_planned_anew_and_keeps_the_prices_quoted_before() throws IOException {
    String number = desk.quote("COUNTER");
    loadWithPricesRaised();
    desk.clock.set("2026-11-20");

    JsonNode revised =
        desk.done("quote", "revise", number, "--length", "300 ft", "--reason", "shorter");

    JsonNode hose = revised.get("quote").get("lines").get(0);
    assertThat(hose.get("quantity").asInt()).isEqualTo(7);
    assertThat(hose.get("unitPrice").asString()).isEqualTo("196.50");
    assertThat(revised.get("diff").get("job").get(0).get("what").asString()).isEqualTo("length");
    assertThat(texts(revised.get("diff").get("lines"), "why"))
        .contains("the plan needs another quantity");
  }

  @Test
  void an_issued_quote_shows_its_prices_after_a_price_rise_and_updating_makes_a_new_revision()
      throws IOException {
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number, "--valid-days", "60", "--by", "ines");
    JsonNode before = desk.done("quote", "show", number);
    loadWithPricesRaised();
    desk.clock.set("2026-12-01");

    assertThat(desk.done("quote", "show", number)).isEqualTo(before);
    JsonNode updated = desk.done("quote", "update-prices", number);

    // The demo prices raised by a tenth: 196.50 becomes 216.15.
    JsonNode hose = updated.get("diff").get("lines").get(0);
    assertThat(hose.get("unitBefore").asString()).isEqualTo("196.50 USD");
    assertThat(hose.get("unitAfter").asString()).isEqualTo("216.15 USD");
    assertThat(hose.get("why").asString()).isEqualTo("list price 196.50 to 216.15");
    assertThat(desk.done("quote", "show", number + "-r1")).isEqualTo(before);
    assertThat(updated.get("quote").get("revision").asInt()).isEqualTo(2);
    assertThat(updated.get("quote").get("status").asString()).isEqualTo("draft");
  }

  @Test
  void whatever_prices_become_an_issued_quote_and_its_papers_stay_as_they_were()
      throws IOException {
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number, "--valid-days", "60");
    JsonNode before = desk.done("quote", "show", number);
    byte[] paper = paper(number);
    long seed = 20261102;
    Random random = new Random(seed);
    for (int change = 0; change < 3; change++) {
      BigDecimal factor = BigDecimal.valueOf(1 + random.nextInt(400), 2);
      DemoCatalogue.loadInto(desk, folder.resolve("prices" + change), factor);

      assertThat(desk.done("quote", "show", number))
          .as("seed %s x %s", seed, factor)
          .isEqualTo(before);
      assertThat(paper(number)).as("seed %s x %s", seed, factor).isEqualTo(paper);
    }
  }

  private byte[] paper(String number) throws IOException {
    desk.done("quote", "export", number, "--as", "pdf", "--out", folder.toString(), "--overwrite");
    return Files.readAllBytes(folder.resolve(number + "-r1.pdf"));
  }

  @Test
  void a_quote_past_its_day_cannot_be_accepted_and_a_clock_set_back_does_not_revive_it() {
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number, "--valid-until", "2026-11-10");
    desk.clock.set("2026-11-11");

    assertThat(desk.done("quote", "list").get("quotes").get(0).get("status").asString())
        .isEqualTo("expired");
    desk.clock.set("2026-11-05");
    assertThat(desk.refused("quote", "accept", number)).contains("is expired");

    JsonNode again = desk.done("quote", "reopen", number, "--reason", "they called");
    assertThat(again.get("quote").get("revision").asInt()).isEqualTo(2);
    assertThat(desk.done("quote", "show", number + "-r1").get("status").asString())
        .isEqualTo("expired");
  }

  @Test
  void a_clock_set_back_before_the_last_quote_is_told_and_not_one_that_goes_on() {
    desk.quote("COUNTER");
    assertThat(desk.run("quote", "list").err()).isEmpty();

    desk.clock.set("2026-01-15");

    assertThat(desk.run("quote", "list").err())
        .contains("This machine's clock says 2026-01-15")
        .contains("the last quote was made on 2026-11-0");
  }

  @Test
  void the_last_day_still_counts() {
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number, "--valid-until", "2026-11-10");
    desk.clock.set("2026-11-10");

    assertThat(desk.done("quote", "accept", number).get("status").asString()).isEqualTo("accepted");
  }

  @Test
  void every_step_says_who_and_when() {
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number, "--by", "Ines Marlow");
    desk.clock.set("2026-11-04");
    desk.done("quote", "decline", number, "--reason", "too slow", "--by", "Tom");

    JsonNode steps = desk.done("quote", "history", number).get("steps");

    assertThat(texts(steps, "step")).containsExactly("make", "issue", "decline");
    assertThat(texts(steps, "by"))
        .containsExactly(System.getProperty("user.name"), "Ines Marlow", "Tom");
    assertThat(texts(steps, "at").get(2)).startsWith("2026-11-04T12:00");
    assertThat(desk.run("quote", "show", number).out())
        .contains("issued by Ines Marlow, 2026-11-02 12:00 UTC")
        .contains("declined by Tom, 2026-11-04 12:00 UTC: too slow");
  }

  @Test
  void an_offer_taken_moves_into_the_total_and_an_alternate_puts_out_what_it_replaces() {
    String number = desk.quote("COUNTER");
    desk.done(
        "quote",
        "revise",
        number,
        "--optional",
        "1 x Hydrant training @ 80.00",
        "--alternate",
        "2: 1 x Reducer, bronze, special @ 99.50",
        "--reason",
        "choices");
    JsonNode offered = desk.done("quote", "show", number);
    assertThat(offered.get("subtotal").asString()).isEqualTo("1873.55 USD");
    assertThat(offered.get("offered").get(1).get("insteadOf").asInt()).isEqualTo(2);

    JsonNode taken =
        desk.done("quote", "revise", number, "--take", "8", "--reason", "they want bronze")
            .get("quote");

    // 1873.55 - 22.25 + 99.50
    assertThat(taken.get("subtotal").asString()).isEqualTo("1950.80 USD");
    assertThat(texts(taken.get("lines"), "item")).doesNotContain("A-25NHF-15NHM");
    assertThat(taken.get("offered").size()).isEqualTo(1);
  }

  @Test
  void terms_come_from_the_text_file_and_stay_on_a_quote_when_the_file_changes()
      throws IOException {
    Path terms = folder.resolve("data/terms.txt");
    Files.createDirectories(terms.getParent());
    Files.writeString(
        terms, "# our terms\nGoods stay ours until paid.\n\nNo returns cut to size.\n");
    String number = desk.quote("COUNTER");
    Files.writeString(terms, "All new.\n");

    assertThat(desk.done("quote", "show", number).get("amendments").get("terms"))
        .extracting(JsonNode::asString)
        .containsExactly("Goods stay ours until paid.", "No returns cut to size.");
  }

  @Test
  void a_copy_for_another_buyer_has_its_own_number_and_terms_and_not_the_first_buyers_discount() {
    String number = desk.quote("COUNTER");
    revise(number);

    JsonNode copy = desk.done("quote", "copy", number, "--customer", "DUNMERE-CON");

    assertThat(copy.get("number").asString()).isEqualTo("Q-000002");
    assertThat(copy.get("revision").asInt()).isEqualTo(1);
    assertThat(copy.get("amendments").get("discounts").size()).isZero();
    assertThat(copy.get("amendments").get("notes").size()).isZero();
    // Trade: 10 % off 188.64 = 169.776, half up 169.78.
    assertThat(copy.get("lines").get(0).get("unitPrice").asString()).isEqualTo("169.78");
    assertThat(desk.refused("quote", "copy", number, "--customer", "HARLOW"))
        .contains("There is no customer HARLOW");
  }

  @Test
  void a_quote_under_the_floor_goes_out_only_when_somebody_says_so_and_is_marked() {
    String number = desk.quote("COUNTER");
    desk.done(
        "quote",
        "revise",
        number,
        "--discount",
        "1=60%",
        "--discount-reason",
        "old stock",
        "--reason",
        "clearing");

    assertThat(desk.refused("quote", "issue", number)).contains("--allow-below-floor");
    assertThat(desk.done("quote", "show", number).get("status").asString()).isEqualTo("draft");
    desk.done("quote", "issue", number, "--allow-below-floor");

    assertThat(desk.run("quote", "history", number).out()).doesNotContain("floor");
    assertThat(desk.run("quote", "history", number, "--internal").out())
        .contains("under the margin floor");
    assertThat(desk.run("quote", "show", number).out().toLowerCase(Locale.ROOT))
        .doesNotContain("margin");
    assertThat(desk.run("quote", "show", number, "--internal").out()).contains("Margin -");
  }

  @Test
  void a_floor_that_nobody_can_tell_of_for_want_of_a_cost_is_said_to_the_dealer_alone() {
    String number = desk.quote("COUNTER");
    desk.done(
        "quote", "revise", number, "--add", "1 x Crating @ 35.00", "--reason", "packed for sea");

    assertThat(desk.refused("quote", "issue", number)).contains("--unknown-margin-by");
    var issued = desk.run("quote", "issue", number, "--unknown-margin-by", "olga");

    assertThat(issued.exitCode()).isZero();
    assertThat(issued.err()).contains("nobody can tell whether the margin floor is kept");
    assertThat(issued.out()).doesNotContain("floor");
    assertThat(desk.run("quote", "history", number, "--internal").out().replaceAll("\\s+", " "))
        .contains("a cost was not known");
    assertThat(desk.run("quote", "history", number).out()).doesNotContain("floor");
    assertThat(desk.run("quote", "show", number, "--internal").out())
        .contains("Crating: no cost is in force")
        .contains("until every cost is known");
    assertThat(desk.done("quote", "show", number, "--internal").get("standing").asString())
        .isEqualTo("unknown");
    assertThat(desk.run("quote", "show", number).out().toLowerCase(Locale.ROOT))
        .doesNotContain("margin", "floor");
  }

  @Test
  void everything_wrong_with_a_revision_is_said_at_once_and_nothing_is_kept() {
    String number = desk.quote("COUNTER");

    String said =
        desk.refused(
            "quote",
            "revise",
            number,
            "--quantity",
            "99=3",
            "--add",
            "Wobble",
            "--drop",
            "W-SPAN-15-2",
            "--discount",
            "1=5%",
            "--reason",
            "x");

    assertThat(said)
        .contains("There is no line 99: quantity takes a line among")
        .contains("add cannot be 'Wobble'")
        .contains("Did you mean 'W-SPAN-15-3'?")
        .contains("discount-reason is missing");
    assertThat(desk.done("quote", "history", number).get("steps").size()).isEqualTo(1);
    assertThat(desk.refused("quote", "revise", number, "--reason", "x"))
        .contains("say what is to be different");
    assertThat(desk.refused("quote", "accept", number)).contains("is a draft: issue it first");
    assertThat(desk.refused("quote", "issue", number, "--valid-until", "2026-11-01"))
        .contains("valid-until");
  }

  private JsonNode revise(String number) {
    return desk.done(
        "quote",
        "revise",
        number,
        "--quantity",
        "1=12",
        "--discount",
        "2=10%",
        "--discount-reason",
        "first order",
        "--add",
        "2 x Crating @ 17.50",
        "--optional",
        "1 x Hydrant training @ 80.00",
        "--note",
        "Gate code 4711",
        "--reason",
        "three lengths more");
  }

  /** The demo catalogue with every list price a tenth higher. */
  private void loadWithPricesRaised() throws IOException {
    DemoCatalogue.loadInto(desk, folder.resolve("raised"), new BigDecimal("1.10"));
  }

  private static BigDecimal amount(JsonNode node, String field) {
    return new BigDecimal(node.get(field).asString().replace(" USD", ""));
  }

  private static List<String> texts(JsonNode rows, String field) {
    List<String> texts = new ArrayList<>();
    rows.forEach(row -> texts.add(row.get(field).asString()));
    return texts;
  }
}
