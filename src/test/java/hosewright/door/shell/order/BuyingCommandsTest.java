package hosewright.door.shell.order;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.TradingDesk;
import hosewright.store.database.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Buying what has no price, picking and making up, as typed. */
final class BuyingCommandsTest {
  @TempDir Path folder;
  private TradingDesk desk;

  /** As a second window of the shop's would: to open it anew takes longer than most commands. */
  @AutoClose private Database held;

  @BeforeEach
  void open() {
    desk = new TradingDesk(folder.resolve("data"), "2026-11-02");
    held = desk.open();
  }

  @Test
  void a_part_without_a_price_is_asked_for_answered_priced_ordered_and_shipped()
      throws IOException {
    String number =
        desk.done(
                "quote",
                "make",
                "--from",
                "2.5 NH male hydrant",
                "--to",
                "6 Storz",
                "--length",
                "100 ft",
                "--flow",
                "60 gpm",
                "--need",
                "10 psi",
                "--source-pressure",
                "100 psi",
                "--size",
                "2.5 in",
                "--customer",
                "COUNTER")
            .get("number")
            .asString();
    JsonNode asked =
        desk.done(
            "quote",
            "ask",
            number,
            "--supplier",
            "COUPL",
            "--supplier",
            "BRASS",
            "--out",
            folder.toString());
    assertThat(asked.get("asked").size()).isEqualTo(2);
    answer("COUPL", ",61.50,USD,12,14,from stock", ",1.10,USD,,14,");
    answer("BRASS", ",80,CAD,5,21,", ",,,,,");
    String[] files = {file("COUPL").toString(), file("BRASS").toString()};

    assertThat(desk.refused("quote", "answers", number, files[0], files[1]))
        .contains("rate is missing");
    JsonNode answers =
        desk.done("quote", "answers", number, files[0], files[1], "--rate", "CAD=0.73");
    // 80 + 5 = 85 CAD x 0.73 = 62.05 USD against 61.50 + 12 = 73.50 USD.
    assertThat(answers.get("answers").get(0).get("supplier").asString()).isEqualTo("BRASS");
    assertThat(answers.get("answers").get(0).get("landed").asString()).isEqualTo("62.05 USD");
    desk.done(
        "quote",
        "answers",
        number,
        "--rate",
        "CAD=0.73",
        "--choose",
        "1=coupl",
        "--reason",
        "a week sooner");

    desk.done(
        "quote",
        "revise",
        number,
        "--source",
        "1=95.00",
        "--source",
        "2=2.50",
        "--reason",
        "prices came in");
    assertThat(desk.done("quote", "issue", number).get("leadDays").asInt()).isEqualTo(14);
    assertThat(desk.run("quote", "show", number).out()).doesNotContain("61.50");
    assertThat(desk.run("quote", "show", number, "--internal").out()).contains("73.50");
    desk.done("quote", "accept", number);
    JsonNode order = desk.done("order", "raise", number);

    JsonNode purchase = order.get("purchases").get(0);
    assertThat(purchase.get("supplier").asString()).isEqualTo("COUPL");
    assertThat(purchase.get("expectedOn").asString()).isEqualTo("2026-11-16");
    assertThat(purchase.get("lines").size()).isEqualTo(2);
    // 61.50 + 2 x 1.10 = 63.70; the foundry takes no order under 75.00.
    assertThat(purchase.get("remark").asString())
        .isEqualTo("11.30 USD under the minimum order 75.00 USD");
    // A supplier is to see what it is paid, whom to ask and where to deliver, never for whom it is.
    assertThat(desk.run("order", "purchase", "P-1").out())
        .contains("Each USD", "61.50", "Freight as agreed: 12.00 USD.", "In all 75.70 USD.")
        .contains("Date 2026-", "Questions to 555-0142", "Deliver to ", "Signature")
        .doesNotContain(order.get("customer").asString());
    assertThat(desk.run("order", "purchase", "P-1", "--without-prices").out())
        .doesNotContain("61.50")
        .contains("Freight as agreed: 12.00 USD");
    desk.done("order", "receive", "P-1");
    assertThat(desk.done("order", "ship", "1").get("state").asString()).isEqualTo("shipped");
    assertThat(desk.done("order", "stock").get("balanced").asBoolean()).isTrue();
  }

  @Test
  void an_answer_in_foreign_money_is_compared_and_costed_at_the_rate_on_record()
      throws IOException {
    a_quote_that_lacks_prices();
    desk.done("quote", "ask", "1", "--supplier", "BRASS", "--out", folder.toString());
    answer("COUPL", ",61.50,USD,12,14,", ",1.10,USD,,14,");
    answer("BRASS", ",80,CAD,5,21,", ",,,,,");
    String[] compare = {
      "quote", "answers", "1", file("COUPL").toString(), file("BRASS").toString()
    };
    assertThat(desk.refused(compare)).contains("rate is missing");

    desk.done("rate", "set", "CAD", "0.73", "--from", "2026-11-01", "--source", "our bank");
    desk.done("rate", "set", "CAD", "0.90", "--from", "2026-11-20", "--source", "our bank");
    // 85 CAD are 62.05 USD at 0.73, and 76.50 USD at 0.90; the foundry wants 73.50 USD.
    assertThat(cheapest(desk.done(compare))).isEqualTo("BRASS 62.05 USD");
    desk.on("2026-11-20");
    assertThat(cheapest(desk.done(compare))).isEqualTo("COUPL 73.50 USD");
    desk.on("2026-11-02");
    // What somebody says goes before what is on record: 85 x 0.80.
    assertThat(cheapest(desk.done("quote", "answers", "1", "--rate", "CAD=0.80")))
        .isEqualTo("BRASS 68.00 USD");

    desk.done("quote", "revise", "1", "--source", "1=95.00", "--reason", "priced");
    assertThat(desk.run("quote", "show", "1", "--internal").out()).contains("62.05");
  }

  /** Whose answer to the first line is taken, and what it comes to. */
  private static String cheapest(JsonNode compared) {
    for (JsonNode offer : compared.get("answers")) {
      if (offer.get("line").asInt() == 1 && offer.get("chosen").asBoolean()) {
        return offer.get("supplier").asString() + " " + offer.get("landed").asString();
      }
    }
    return "nobody's";
  }

  @Test
  void what_a_supplier_filled_in_wrongly_is_said_cell_by_cell_and_nothing_is_kept()
      throws IOException {
    a_quote_that_lacks_prices();
    answer("COUPL", ",61.505,USD,12,soon,", ",1.10,DOLLARS,,14,");
    Path csv = file("COUPL");
    Files.writeString(csv, Files.readString(csv).replace("Q-000001,2,", "Q-000002,9,"));

    assertThat(desk.refused("quote", "answers", "1", csv.toString()))
        .contains("row 2 column unit_price", "row 2 column lead_days", "row 3 column currency")
        .contains("row 3 column quote", "row 3 column line");
    assertThat(desk.done("quote", "answers", "1").get("unanswered").size()).isEqualTo(2);
  }

  private void a_quote_that_lacks_prices() {
    desk.done(
        "quote",
        "make",
        "--from",
        "2.5 NH male hydrant",
        "--to",
        "6 Storz",
        "--length",
        "100 ft",
        "--flow",
        "60 gpm",
        "--need",
        "10 psi",
        "--source-pressure",
        "100 psi",
        "--size",
        "2.5 in",
        "--customer",
        "COUNTER");
    desk.done("quote", "ask", "1", "--supplier", "COUPL", "--out", folder.toString());
  }

  /** Three sections of 33 ft of 3 in hose by the foot; the plan says itself what each is cut to. */
  @Test
  void the_bench_is_told_what_to_cut_fit_test_and_write_on_each_section() {
    String number =
        desk.done(
                "quote",
                "make",
                "--from",
                "2.5 NH male hydrant",
                "--to",
                "2.5 NH female monitor",
                "--length",
                "90 ft",
                "--flow",
                "100 gpm",
                "--need",
                "20 psi",
                "--source-pressure",
                "120 psi",
                "--size",
                "3 in",
                "--section",
                "33 ft",
                "--use",
                "fire",
                "--customer",
                "COUNTER")
            .get("number")
            .asString();
    desk.done("quote", "issue", number);
    desk.done("quote", "accept", number);
    desk.done("order", "raise", number);

    JsonNode picked = desk.done("order", "pick", "1");

    JsonNode make = picked.get("bench").get("makes").get(0);
    // 90 ft and 5 % slack take three sections of 33 ft, each cut a foot longer.
    assertThat(make.get("count").asInt()).isEqualTo(3);
    assertThat(make.get("cutFt").asInt()).isEqualTo(34);
    assertThat(picked.get("slip").toString()).contains("33 ft section made up from 34 ft");
    assertThat(make.get("coupledFt").asDouble()).isEqualTo(33);
    assertThat(make.get("inlet").asString()).isEqualTo("2.5 NH female swivel");
    assertThat(make.get("outlet").asString()).isEqualTo("2.5 NH male");
    assertThat(make.get("gasket").asString()).isEqualTo("gasket for 2.5 NH female swivel");
    assertThat(make.get("testPsi").asDouble()).isPositive();
    assertThat(picked.get("bench").get("labels").size()).isEqualTo(3);
    assertThat(picked.get("bench").get("labels").get(1).asString())
        .startsWith(
            "O-000001 | section 2 of 3 | 3 in x 33 ft | 2.5 NH female swivel x 2.5 NH male");
    assertThat(desk.run("order", "pick", "1").out())
        .contains("To make up", "the hose tied down", "Labels");
  }

  @Test
  void a_pick_list_is_written_in_each_form_and_replaces_nothing_unasked() {
    String number = desk.quote("COUNTER");
    desk.done("quote", "issue", number);
    desk.done("quote", "accept", number);
    desk.done("order", "raise", number);
    String[] words = {"order", "pick", "1", "--as", "text,xlsx,pdf", "--out", folder.toString()};

    assertThat(desk.done(words).get("files").size()).isEqualTo(3);
    assertThat(desk.refused(words)).contains("the file exists");
    assertThat(folder.resolve("O-000001-pick.pdf")).isNotEmptyFile();
    assertThat(desk.refused("order", "pick", "1", "--as", "docx")).contains("text, workbook, pdf");
  }

  private Path file(String supplier) {
    return folder.resolve("Q-000001-ask-" + supplier + ".csv");
  }

  /** Fills in the price columns, row by row. */
  private void answer(String supplier, String... filled) throws IOException {
    List<String> lines = Files.readAllLines(file(supplier));
    StringBuilder text = new StringBuilder(lines.get(0)).append('\n');
    for (int row = 0; row < filled.length; row++) {
      String line = lines.get(row + 1);
      text.append(line, 0, line.lastIndexOf("," + supplier + ",") + supplier.length() + 1)
          .append(filled[row])
          .append('\n');
    }
    Files.writeString(file(supplier), text);
  }
}
