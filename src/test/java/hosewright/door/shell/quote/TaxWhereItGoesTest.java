package hosewright.door.shell.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.TradingDesk;
import hosewright.paper.sheet.Spreadsheet;
import hosewright.paper.sheet.WorkbookReader;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Tax by the place goods go to and the day, by the demo dealer's table (taxes.csv). */
final class TaxWhereItGoesTest {
  private static final String JOB = "quotes/hydrant-to-nozzle.yaml";

  /** What the demo job's goods come to at the counter. */
  private static final BigDecimal GOODS = new BigDecimal("1873.55");

  @TempDir private Path folder;
  private TradingDesk desk;

  @BeforeEach
  void open() {
    desk = new TradingDesk(folder.resolve("data"), "2026-11-02");
  }

  @Test
  void a_place_that_taxes_neither_work_nor_freight_taxes_the_goods_alone() {
    String number = desk.quote("COUNTER");
    JsonNode quote = revise(number, "--add", "2 x SVC-FLUSH", "--ship-to", "dunmere");

    // 1873.55 x 0.0475 = 88.993625; two visits and the freight are not taxed there.
    assertThat(quote.get("tax").asString()).isEqualTo("88.99 USD");
    assertThat(quote.get("taxNote").asString())
        .isEqualTo("Dunmere county tax 4.75 %, shipped to Dunmere");
    assertThat(quote.get("lines").get(6).get("taxable").asBoolean()).isFalse();
    assertThat(quote.get("lines").get(0).get("taxable").asBoolean()).isTrue();
  }

  @Test
  void a_new_quote_is_taxed_where_it_goes_from_the_first() {
    JsonNode quote = made("--ship-to", "dunmere", "--freight", "85.00");

    // 1873.55 x 0.0475 = 88.993625; freight is not taxed there. 1873.55 + 85.00 + 88.99.
    assertThat(quote.get("revision").asInt()).isEqualTo(1);
    assertThat(quote.get("tax").asString()).isEqualTo("88.99 USD");
    assertThat(quote.get("freight").asString()).isEqualTo("85.00 USD");
    assertThat(quote.get("total").asString()).isEqualTo("2047.54 USD");
    assertThat(made("--ship-to", "usual").get("taxRate").asString()).isEqualTo("0.0625");
  }

  @Test
  void a_purchase_of_a_job_and_parts_goes_to_one_place_too() {
    JsonNode quote = made("--add", "2 x SVC-FLUSH", "--ship-to", "Dunmere", "--freight", "85.00");

    // Work is not taxed there: the tax is that of the goods, and 1873.55 + 280.00 + 85.00 + 88.99.
    assertThat(quote.get("taxNote").asString()).contains("shipped to Dunmere");
    assertThat(quote.get("tax").asString()).isEqualTo("88.99 USD");
    assertThat(quote.get("total").asString()).isEqualTo("2327.54 USD");
  }

  @Test
  void a_new_quote_to_a_place_nobody_knows_is_refused_and_takes_no_number() {
    String[] place = {"--customer", "COUNTER", "--ship-to", "Dunmeer"};
    assertThat(desk.refused(words(new String[] {"quote", "make", "--job", JOB}, place)))
        .contains("ship-to", "Dunmere");
    assertThat(desk.refused(words(new String[] {"quote", "make", "--add", "9 x W-HYD"}, place)))
        .contains("ship-to", "Dunmere");
    assertThat(desk.quote("COUNTER")).isEqualTo("Q-000001");
  }

  @Test
  void the_rate_is_the_one_of_the_day_of_the_quote() {
    desk.quote("COUNTER");
    assertThat(revise("1", "--ship-to", "Port Harlow").get("taxRate").asString())
        .isEqualTo("0.0625");
    desk.done("quote", "issue", "1");
    TradingDesk later = desk;
    later.on("2027-01-15");
    assertThat(later.refused("quote", "issue", "1")).contains("expired");
    later.done("quote", "update-prices", "1");
    assertThat(later.done("quote", "show", "1").get("taxRate").asString()).isEqualTo("0.065");
  }

  @Test
  void an_exempt_buyer_pays_none_wherever_it_goes_and_an_unknown_place_is_refused() {
    String number = desk.quote("HARLOW-FD");
    assertThat(revise(number, "--ship-to", "Dunmere").get("tax").asString()).isEqualTo("0.00 USD");
    assertThat(desk.refused("quote", "revise", number, "--ship-to", "Dunmeer", "--reason", "moved"))
        .contains("ship-to", "Dunmere");
    JsonNode usual = revise(desk.quote("COUNTER"), "--ship-to", "Dunmere");
    assertThat(usual.get("taxRate").asString()).isEqualTo("0.0475");
    assertThat(revise("2", "--ship-to", "usual").get("taxRate").asString()).isEqualTo("0.0625");
  }

  @Test
  void paper_store_and_recalculated_workbook_agree() throws Exception {
    String number = desk.quote("COUNTER");
    List<String[]> changes =
        List.of(
            new String[] {"--add", "2 x SVC-FLUSH", "--ship-to", "Dunmere"},
            new String[] {"--freight", "85.00", "--ship-to", "Ellowmere"},
            new String[] {"--quantity", "1=9000", "--freight", "terms"},
            new String[] {"--ship-to", "usual", "--discount", "1=7%", "--discount-reason", "many"});
    List<Path> files = new ArrayList<>();
    List<JsonNode> quotes = new ArrayList<>();
    for (String[] change : changes) {
      quotes.add(revise(number, change));
      desk.done("quote", "export", number, "--as", "workbook,pdf", "--out", folder.toString());
      files.add(folder.resolve("Q-000001-r" + (quotes.size() + 1) + ".xlsx"));
    }

    List<Path> recalculated =
        Spreadsheet.in(Files.createDirectory(folder.resolve("again"))).recalculated(files);
    for (int i = 0; i < quotes.size(); i++) {
      JsonNode quote = quotes.get(i);
      boolean open = quote.get("carriage").asString().equals("to_be_quoted");
      BigDecimal sum = amount(quote, "subtotal").add(amount(quote, "tax"));
      assertThat(amount(quote, "total"))
          .isEqualByComparingTo(open ? sum : sum.add(amount(quote, "freight")));
      String paper = paper(files.get(i));
      assertThat(paper)
          .contains("Subtotal " + printed(quote, "subtotal"), " % " + printed(quote, "tax"))
          .contains(printed(quote, "total") + " USD");
      assertThat(paper.contains("Freight to be quoted") || paper.contains("(taxed) to be quoted"))
          .isEqualTo(open);
      try (XSSFWorkbook workbook = WorkbookReader.open(recalculated.get(i))) {
        for (String name : List.of("subtotal", "tax", "total")) {
          assertThat(WorkbookReader.amount(workbook, "quote_" + name))
              .as(i + " " + name)
              .isEqualByComparingTo(amount(quote, name));
        }
      }
    }
    // 1873.55 + 280.00 of work; only goods and freight taxed in Ellowmere: 1958.55 x 0.05.
    assertThat(amount(quotes.get(1), "tax"))
        .isEqualByComparingTo(
            GOODS
                .add(new BigDecimal("85.00"))
                .multiply(new BigDecimal("0.05"))
                .setScale(2, RoundingMode.HALF_UP));
  }

  /** What the paper beside a workbook says. */
  private static String paper(Path workbook) throws IOException {
    byte[] pdf = Files.readAllBytes(Path.of(workbook.toString().replace(".xlsx", ".pdf")));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private static String printed(JsonNode quote, String name) {
    return String.format(Locale.ROOT, "%,.2f", amount(quote, name));
  }

  private static BigDecimal amount(JsonNode quote, String name) {
    return new BigDecimal(quote.get(name).asString().replace(" USD", ""));
  }

  private JsonNode made(String... more) {
    return desk.done(
        words(new String[] {"quote", "make", "--job", JOB, "--customer", "COUNTER"}, more));
  }

  private static String[] words(String[] begin, String[] more) {
    return Stream.concat(Stream.of(begin), Stream.of(more)).toArray(String[]::new);
  }

  private JsonNode revise(String number, String... changes) {
    return desk.done(
            Stream.concat(
                    Stream.of("quote", "revise", number, "--reason", "as asked"),
                    Stream.of(changes))
                .toArray(String[]::new))
        .get("quote");
  }
}
