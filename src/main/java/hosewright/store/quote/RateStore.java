package hosewright.store.quote;

import static hosewright.store.db.Tables.EXCHANGE_RATE;

import hosewright.quote.terms.Rates;
import hosewright.quote.terms.Rates.ExchangeRate;
import hosewright.store.database.Database;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.ExchangeRateRecord;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.jooq.DSLContext;

/** Keeps what other currencies are worth. */
public final class RateStore {
  private final DSLContext context;

  public RateStore(Database database) {
    this.context = database.context();
  }

  /** Every rate there is, by currency and then by day. */
  public Rates load() {
    return new Rates(
        context
            .selectFrom(EXCHANGE_RATE)
            .orderBy(EXCHANGE_RATE.CURRENCY, EXCHANGE_RATE.INTO_CURRENCY, EXCHANGE_RATE.VALID_FROM)
            .fetch(
                row ->
                    new ExchangeRate(
                        CurrencyUnit.of(row.getCurrency()),
                        CurrencyUnit.of(row.getIntoCurrency()),
                        row.getValidFrom(),
                        row.getRate().stripTrailingZeros(),
                        row.getSource())));
  }

  /**
   * Puts a rate on record, in the place of one of the same day.
   *
   * @param by who says so
   */
  public void put(ExchangeRate rate, String by, Instant at) {
    context.transaction(
        nested ->
            Rows.merge(
                nested.dsl(),
                EXCHANGE_RATE,
                List.of(
                    new ExchangeRateRecord(
                        rate.currency().getCode(),
                        rate.into().getCode(),
                        rate.from(),
                        rate.rate(),
                        rate.source(),
                        by,
                        at.atOffset(ZoneOffset.UTC),
                        null))));
  }
}
