package hosewright.desk.quote;

import static hosewright.desk.quote.QuotesAtTheDesk.draft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.Revising.Revised;
import hosewright.desk.purchase.AskedPurchase;
import hosewright.desk.purchase.AskedPurchase.AskedGroup;
import hosewright.desk.purchase.MakePurchase;
import hosewright.desk.quote.LineChange.Kind;
import hosewright.paper.json.Json;
import hosewright.paper.page.Paper;
import hosewright.paper.quote.LinesCsv;
import hosewright.paper.quote.PlainSummary;
import hosewright.paper.quote.QuoteWorkbook;
import hosewright.problem.BadInputException;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.terms.Dealer;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.extractor.XSSFExcelExtractor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prices, order and words that somebody sets by hand. */
final class HandPriceTest {
  private static final String WHY = "matches the other yard";
  private static final Dealer DEALER = new Dealer("A dealer", List.of("Quay"), "", "", "");

  @TempDir private Path folder;
  private OpenDesk desk;

  @BeforeEach
  void open_a_desk() {
    desk = OpenDesk.withDemo(folder);
  }

  private Quote revised(LineChange... changes) {
    return new ReviseQuote(desk)
        .revise(new ReviseQuote.Request("1", "to be seen", Map.of(), changes(WHY, changes), "ines"))
        .revised()
        .map(Revised::quote)
        .orElseThrow();
  }

  private static Changes changes(String why, LineChange... changes) {
    return new Changes(
        Arrays.asList(changes),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(why));
  }

  private static String price(Quote quote, int line) {
    return quote.lines().get(line - 1).price().unitPrice().getAmount().toPlainString();
  }

  @Test
  void a_price_set_by_hand_is_what_the_buyer_pays_whatever_the_number() {
    draft(desk);
    Quote quote =
        revised(new LineChange(Kind.PRICE, "1=150.00"), new LineChange(Kind.QUANTITY, "1=200"));
    assertThat(price(quote, 1)).isEqualTo("150.00");
    // 200 x 150.00
    assertThat(quote.lines().get(0).price().extended().getAmount()).isEqualByComparingTo("30000");
  }

  @Test
  void the_price_before_comes_back_when_the_one_set_by_hand_ends() {
    String before = price(draft(desk), 1);
    revised(new LineChange(Kind.PRICE, "1=150.00"));
    assertThat(price(revised(new LineChange(Kind.PRICE, "1=list")), 1)).isEqualTo(before);
  }

  @Test
  void no_paper_says_that_a_price_was_set_by_hand_and_the_dealer_sees_why() throws Exception {
    draft(desk);
    Quote quote = revised(new LineChange(Kind.PRICE, "1=150.00"));
    ByteArrayOutputStream csv = new ByteArrayOutputStream();
    LinesCsv.write(quote, csv);
    ByteArrayOutputStream book = new ByteArrayOutputStream();
    QuoteWorkbook.write(quote, DEALER, Paper.LETTER, book);
    String sheets;
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(book.toByteArray()));
        XSSFExcelExtractor text = new XSSFExcelExtractor(workbook)) {
      sheets = text.getText();
    }
    for (String paper :
        List.of(
            csv.toString(StandardCharsets.UTF_8),
            sheets,
            Json.write(quote),
            PlainSummary.text(quote))) {
      assertThat(paper).doesNotContain(WHY, "by hand", "agreed", "prices\"");
    }
    ShowQuote.Internal inside =
        new ShowQuote(desk).show("1", Optional.empty(), true).internal().orElseThrow();
    assertThat(inside.earnings().lines().get(0).setBecause()).contains(WHY);
    assertThat(Json.readQuote(Json.keep(quote))).isEqualTo(quote);
  }

  @Test
  void a_price_without_a_reason_is_refused() {
    draft(desk);
    assertThatThrownBy(
            () ->
                new ReviseQuote(desk)
                    .revise(
                        new ReviseQuote.Request(
                            "1",
                            "to be seen",
                            Map.of(),
                            new Changes(
                                List.of(new LineChange(Kind.PRICE, "1=150.00")),
                                Optional.empty(),
                                Optional.empty(),
                                List.of(),
                                Optional.empty()),
                            "ines")))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("price-reason");
  }

  @Test
  void one_item_in_two_groups_has_one_price() {
    new MakePurchase(desk, Optional.empty())
        .make(
            new MakePurchase.Request(
                new AskedPurchase(
                    Optional.empty(),
                    Optional.of("COUNTER"),
                    List.of(
                        AskedGroup.of("Front", List.of("2 x W-SPAN-15-3")),
                        AskedGroup.of("Rear", List.of("3 x W-SPAN-15-3")))),
                Optional.empty(),
                Optional.empty(),
                changes(WHY, new LineChange(Kind.PRICE, "W-SPAN-15-3=12.00")),
                "ines"));
    assertThat(new ShowQuote(desk).show("1", Optional.empty(), false).quote().lines())
        .extracting(line -> line.price().unitPrice().getAmount().toPlainString())
        .containsExactly("12.00", "12.00");
    assertThatThrownBy(
            () ->
                revised(
                    new LineChange(Kind.PRICE, "1=11.00"), new LineChange(Kind.PRICE, "2=13.00")))
        .hasMessageContaining("one price for W-SPAN-15-3");
    assertThat(new ShowQuote(desk).show("1", Optional.empty(), false).quote().revision())
        .isEqualTo(1);
  }

  @Test
  void lines_stand_in_the_order_set_under_headings_and_with_words_for_the_buyer() {
    Quote before = draft(desk);
    String second = before.lines().get(1).key();
    Quote quote =
        revised(
            new LineChange(Kind.ORDER, "2, 1"),
            new LineChange(Kind.HEADING, "2=Fittings"),
            new LineChange(Kind.REMARK, "2=For the rear locker"));
    assertThat(quote.lines()).extracting(QuoteLine::key).startsWith(second);
    assertThat(quote.heading(quote.lines().get(0))).contains("Fittings");
    assertThat(quote.lines().get(0).note().orElseThrow()).contains("For the rear locker");
    assertThat(quote.total()).isEqualTo(before.total());
  }
}
