package hosewright.store.quote;

import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.QUOTE;
import static org.jooq.impl.DSL.max;
import static org.jooq.impl.DSL.select;
import static org.jooq.impl.DSL.val;

import hosewright.quote.Quote;
import hosewright.quote.QuoteCodec;
import hosewright.quote.QuoteHeading;
import hosewright.store.database.Amounts;
import hosewright.store.db.tables.records.QuoteRecord;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record1;
import org.jooq.Select;

/** Quotes to rows of the store and back. */
public final class QuoteRows {
  private final QuoteCodec codec;

  QuoteRows(QuoteCodec codec) {
    this.codec = codec;
  }

  /**
   * Lets one person at a time change a quote: waits until nobody else does, and holds every
   * revision of it until the transaction ends. What is read afterwards is the latest there is.
   */
  public static void hold(DSLContext inside, String number) {
    inside
        .selectOne()
        .from(QUOTE)
        .where(QUOTE.QUOTE_NUMBER.eq(number))
        .and(QUOTE.REVISION.eq(1))
        .forUpdate()
        .fetch();
  }

  /** A revision that somebody has seen, if it has a status. */
  public static Condition as(Quote seen, Quote.Status status) {
    return QUOTE
        .QUOTE_NUMBER
        .eq(seen.number())
        .and(QUOTE.REVISION.eq(seen.revision()))
        .and(QUOTE.STATUS.eq(status.name()));
  }

  /** The revision of a quote that nothing has replaced. */
  public static Select<Record1<Integer>> latestOf(String number) {
    return latestOf(val(number));
  }

  static Select<Record1<Integer>> latestOf(Field<String> number) {
    var other = QUOTE.as("OTHER");
    return select(max(other.REVISION)).from(other).where(other.QUOTE_NUMBER.eq(number));
  }

  /** An order that stands and was raised from a quote. */
  public static Condition ordered(String number) {
    return CUSTOMER_ORDER.QUOTE_NUMBER.eq(number).and(CUSTOMER_ORDER.CANCELLED_AT.isNull());
  }

  /** The quote of one row; what was decided after it was written stands in columns. */
  Optional<Quote> find(DSLContext context, Condition which) {
    return context
        .select(QUOTE.DOCUMENT, QUOTE.STATUS, QUOTE.VALID_UNTIL, QUOTE.LEAD_DAYS)
        .from(QUOTE)
        .where(which)
        .fetchOptional(
            row -> {
              Quote quote = codec.read(row.value1());
              int leadDays = row.value4() == null ? quote.validity().leadDays() : row.value4();
              return quote
                  .promising(row.value3(), leadDays)
                  .withStatus(Quote.Status.valueOf(row.value2()));
            });
  }

  /** What a list shows of quotes, newest number first. */
  static List<QuoteHeading> headings(DSLContext context, Condition which) {
    return context
        .select(
            QUOTE.QUOTE_NUMBER,
            QUOTE.REVISION,
            QUOTE.STATUS,
            QUOTE.CUSTOMER_ID,
            QUOTE.CUSTOMER_NAME,
            QUOTE.QUOTE_DATE,
            QUOTE.VALID_UNTIL,
            QUOTE.TITLE,
            QUOTE.TOTAL,
            QUOTE.CURRENCY,
            QUOTE.MADE_AT)
        .from(QUOTE)
        .where(which)
        .orderBy(QUOTE.QUOTE_NUMBER.desc(), QUOTE.REVISION)
        .fetchInto(QUOTE)
        .map(QuoteRows::heading);
  }

  private static QuoteHeading heading(QuoteRecord row) {
    return new QuoteHeading(
        new Quote.Name(row.getQuoteNumber(), row.getRevision()),
        Quote.Status.valueOf(row.getStatus()),
        new QuoteHeading.Buyer(row.getCustomerId(), row.getCustomerName()),
        new QuoteHeading.Days(row.getQuoteDate(), row.getValidUntil(), row.getMadeAt().toInstant()),
        row.getTitle(),
        Amounts.money(row.getTotal(), row.getCurrency()));
  }

  /** A quote as it is kept. */
  QuoteRecord of(Quote quote) {
    return new QuoteRecord(
        quote.number(),
        quote.revision(),
        quote.status().name(),
        quote.customer().id(),
        quote.customer().name(),
        quote.validity().date(),
        quote.validity().validUntil(),
        quote.basis().title(),
        quote.total().getAmount(),
        Amounts.code(quote.total()),
        Objects.requireNonNull(codec.write(quote), "document"),
        quote.validity().madeAt().atOffset(ZoneOffset.UTC),
        null);
  }
}
