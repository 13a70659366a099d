package hosewright.quote;

import static hosewright.quote.GroupedQuotes.parts;
import static hosewright.quote.GroupedQuotes.usd;
import static org.assertj.core.api.Assertions.assertThat;

import hosewright.paper.json.Json;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a quote of several groups comes to; the sums stand beside each case. */
final class QuoteGroupsTest {
  private static Quote of(Group... groups) {
    return GroupedQuotes.of(Amendments.NONE, "0", groups);
  }

  @Test
  void a_price_break_is_reached_by_all_of_an_item_in_the_total() {
    Quote quote =
        of(
            parts("Engine set", 1, false, Map.of("HOSE", 6)),
            parts("Station", 1, false, Map.of("HOSE", 4)));
    // Ten in all: 95.55 each, 6 of them 573.30 and 4 of them 382.20.
    assertThat(quote.lines()).extracting(QuoteLine::group).containsExactly(1, 2);
    assertThat(quote.groupSums())
        .extracting(Quote.GroupSum::subtotal)
        .containsExactly(usd("573.30"), usd("382.20"));
    assertThat(quote.totals().subtotal()).isEqualTo(usd("955.50"));
  }

  @Test
  void a_group_sold_several_times_sells_its_goods_as_often() {
    Quote quote = of(parts("Engine set", 3, false, Map.of("NOZZLE", 2)));
    // Six nozzles at 240.01.
    assertThat(quote.lines().get(0).quantity()).isEqualTo(6);
    assertThat(quote.totals().subtotal()).isEqualTo(usd("1440.06"));
  }

  @Test
  void an_optional_group_stands_beside_the_total_and_lowers_no_price_in_it() {
    Quote quote =
        of(
            parts("Engine set", 1, false, Map.of("HOSE", 6)),
            parts("Station", 1, true, Map.of("HOSE", 4)));
    // Six at 100.05 in the total; the four would be bought with them, ten in all, at 95.55.
    assertThat(quote.totals().subtotal()).isEqualTo(usd("600.30"));
    assertThat(quote.groupSums().get(1).subtotal()).isEqualTo(usd("382.20"));
    assertThat(quote.lines()).hasSize(1);
    assertThat(quote.offeredAlone()).isEmpty();
    assertThat(quote.lines(quote.groups().get(1)).get(0).position()).isEqualTo(2);
  }

  @Test
  void one_item_may_be_changed_in_one_group_and_stay_in_the_other() {
    Quote both =
        of(
            parts("Engine set", 1, false, Map.of("WRENCH", 2)),
            parts("Station", 1, false, Map.of("WRENCH", 2)));
    Amendments changed =
        Amendments.NONE
            .withQuantity(both.lines().get(1).key(), 7)
            .withDiscount(
                both.lines().get(1).key(), new Discount(new BigDecimal("0.10"), "shelf-worn"));
    Quote quote =
        GroupedQuotes.of(
            changed,
            "0",
            parts("Engine set", 1, false, Map.of("WRENCH", 2)),
            parts("Station", 1, false, Map.of("WRENCH", 2)));
    // Nine at 14.95; the seven at a tenth less: 13.455, half up 13.46.
    assertThat(quote.lines()).extracting(QuoteLine::quantity).containsExactly(2, 7);
    assertThat(quote.lines())
        .extracting(line -> line.price().unitPrice())
        .containsExactly(usd("14.95"), usd("13.46"));
    assertThat(Departures.of(quote)).hasSize(1);
  }

  @Test
  void what_was_kept_without_groups_is_one_group_of_the_quotes_own_title() {
    Quote quote = of(parts("a fit-out", 1, false, Map.of("HOSE", 6, "WRENCH", 1)));
    String before =
        Json.keep(quote)
            .replaceAll("\"group\" : 1,\\s*", "")
            .replaceAll("(?s),\\s*\"firstGroup\".*?\"furtherGroups\" : \\[ \\]", "");
    assertThat(before).doesNotContain("firstGroup", "\"group\" :", "furtherGroups");
    assertThat(Json.readQuote(before)).isEqualTo(quote);
  }

  @Test
  void a_group_taken_into_the_total_is_told_among_the_differences() {
    Group engine = parts("Engine set", 1, false, Map.of("HOSE", 6));
    QuoteDiff diff =
        QuoteDiff.between(
            of(engine, parts("Station", 1, true, Map.of("WRENCH", 2))),
            Map.of(),
            of(engine, parts("Station", 1, false, Map.of("WRENCH", 2))),
            Map.of());
    assertThat(diff.rest())
        .filteredOn(change -> change.what().equals("group 2"))
        .singleElement()
        .satisfies(change -> assertThat(change.before()).contains("optional"));
    // Two wrenches at 15.40.
    assertThat(diff.lines()).singleElement().extracting("difference").isEqualTo(usd("30.80"));
  }

  /** The third part of this proof is the workbook: RecalculationTest. */
  @Test
  void five_hundred_random_packages_come_to_what_a_plain_reckoning_says_in_store_and_json() {
    for (int seed = 0; seed < 500; seed++) {
      Random random = new Random(seed);
      RandomPackage wanted = RandomPackage.of(random);
      Quote quote = wanted.quote();
      Quote kept = Json.readQuote(Json.keep(quote));
      assertThat(kept).as("seed %d", seed).isEqualTo(quote);
      assertThat(kept.groupSums())
          .as("seed %d", seed)
          .extracting(sum -> sum.subtotal().getAmount())
          .containsExactlyElementsOf(wanted.subtotals());
      assertThat(kept.totals().subtotal().getAmount())
          .as("seed %d", seed)
          .isEqualByComparingTo(wanted.subtotal());
    }
  }
}
