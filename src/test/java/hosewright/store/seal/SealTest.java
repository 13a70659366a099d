package hosewright.store.seal;

import static hosewright.store.db.Tables.PRICE;
import static hosewright.store.db.Tables.QUOTE;
import static hosewright.store.db.Tables.STOCK_MOVEMENT;
import static org.assertj.core.api.Assertions.assertThat;

import hosewright.store.db.tables.records.PriceRecord;
import hosewright.store.db.tables.records.QuoteRecord;
import hosewright.store.db.tables.records.StockMovementRecord;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

final class SealTest {
  private static PriceRecord price() {
    return new PriceRecord(
        "H-1",
        10,
        LocalDate.parse("2026-01-01"),
        null,
        new BigDecimal("12.50"),
        "USD",
        1,
        null,
        null);
  }

  private static PriceRecord sealed() {
    PriceRecord row = price();
    Seal.put(row, PRICE);
    return row;
  }

  @Test
  void a_change_of_any_value_breaks_the_seal_that_of_the_key_too() {
    assertThat(Seal.holds(sealed(), PRICE)).isTrue();

    PriceRecord otherItem = sealed();
    otherItem.setItemNumber("H-3");
    PriceRecord otherDay = sealed();
    otherDay.setValidFrom(LocalDate.parse("2026-01-02"));
    PriceRecord ends = sealed();
    ends.setValidUntil(LocalDate.parse("2026-12-31"));
    PriceRecord dearer = sealed();
    dearer.setUnitPrice(new BigDecimal("12.51"));

    assertThat(otherItem).matches(row -> !Seal.holds(row, PRICE));
    assertThat(otherDay).matches(row -> !Seal.holds(row, PRICE));
    assertThat(ends).matches(row -> !Seal.holds(row, PRICE));
    assertThat(dearer).matches(row -> !Seal.holds(row, PRICE));
  }

  @Test
  void values_that_trade_places_break_it() {
    PriceRecord row = sealed();
    row.setAddedBy(10);
    row.setMinimumQuantity(1);

    assertThat(Seal.holds(row, PRICE)).isFalse();
  }

  @Test
  void a_row_that_was_never_sealed_does_not_hold() {
    PriceRecord row = price();
    assertThat(Seal.holds(row, PRICE)).isFalse();
    row.setSeal(0L);
    assertThat(Seal.holds(row, PRICE)).isFalse();
  }

  @Test
  void a_database_may_pad_money_and_move_a_moment_into_its_own_time_zone() {
    PriceRecord padded = sealed();
    padded.setUnitPrice(new BigDecimal("12.5000"));
    StockMovementRecord moved =
        new StockMovementRecord(
            "H-1",
            1,
            5,
            "COUNTED",
            "",
            OffsetDateTime.parse("2026-03-02T10:00:00.123456789Z"),
            "sam",
            null,
            null);
    Seal.put(moved, STOCK_MOVEMENT);
    assertThat(moved.getMovedAt()).isEqualTo("2026-03-02T10:00:00.123456Z");
    moved.setMovedAt(moved.getMovedAt().withOffsetSameInstant(ZoneOffset.ofHours(-5)));

    assertThat(Seal.holds(padded, PRICE)).isTrue();
    assertThat(Seal.holds(moved, STOCK_MOVEMENT)).isTrue();
  }

  @Test
  void a_document_is_held_by_its_digest_and_a_row_without_it_by_its_seal() {
    QuoteRecord quote = new QuoteRecord();
    quote.setQuoteNumber("Q-000001");
    quote.setDocument("{}");
    Seal.put(quote, QUOTE);
    // SHA-256 of the two bytes "{}", as sha256sum of GNU coreutils says it.
    assertThat(quote.getDocumentDigest())
        .isEqualTo("44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a");
    assertThat(Seal.holds(quote, QUOTE)).isTrue();

    quote.setDocument("{ }");
    assertThat(Seal.holds(quote, QUOTE)).isFalse();
    quote.setDocument("{}");
    quote.setDocumentDigest(Seal.digest("{ }"));
    assertThat(Seal.holds(quote, QUOTE)).isFalse();
  }
}
