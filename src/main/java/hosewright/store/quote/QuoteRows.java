package hosewright.store.quote;

import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.QUOTE;
import static org.jooq.impl.DSL.coalesce;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.max;
import static org.jooq.impl.DSL.select;
import static org.jooq.impl.DSL.val;

import hosewright.quote.Quote;
import hosewright.quote.life.QuoteCodec;
import hosewright.quote.life.QuoteHeading;
import hosewright.store.database.Amounts;
import hosewright.store.db.tables.records.QuoteRecord;
import hosewright.store.seal.SealCheck;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
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

  /**
   * The revision of a quote that nothing has replaced: the highest that was not discarded, or the
   * highest of all where every one was.
   */
  public static Field<Integer> latestOf(String number) {
    return latestOf(val(number));
  }

  static Field<Integer> latestOf(Field<String> number) {
    var standing = QUOTE.as("STANDING");
    return coalesce(
        field(
            select(max(standing.REVISION))
                .from(standing)
                .where(standing.QUOTE_NUMBER.eq(number))
                .and(standing.STATUS.ne(Quote.Status.DISCARDED.name()))),
        field(highestOf(number)));
  }

  /** The highest revision of a quote, discarded or not. */
  static Select<Record1<Integer>> highestOf(Field<String> number) {
    var other = QUOTE.as("OTHER");
    return select(max(other.REVISION)).from(other).where(other.QUOTE_NUMBER.eq(number));
  }

  /** An order that stands and was raised from a quote. */
  public static Condition ordered(String number) {
    return CUSTOMER_ORDER.QUOTE_NUMBER.eq(number).and(CUSTOMER_ORDER.CANCELLED_AT.isNull());
  }

  /** The quote of one row; what was decided after it was written stands in columns. */
  Optional<Quote> find(DSLContext context, Condition which) {
    return context.selectFrom(QUOTE).where(which).fetchOptional(this::quote);
  }

  /** The quotes of some rows, by number. */
  List<Quote> all(DSLContext context, Condition which) {
    return context
        .selectFrom(QUOTE)
        .where(which)
        .orderBy(QUOTE.QUOTE_NUMBER, QUOTE.REVISION)
        .fetch(this::quote);
  }

  private Quote quote(QuoteRecord row) {
    Quote quote = codec.read(row.getDocument());
    int leadDays = row.getLeadDays() == null ? quote.validity().leadDays() : row.getLeadDays();
    return quote
        .promising(row.getValidUntil(), leadDays)
        .withStatus(Quote.Status.valueOf(row.getStatus()));
  }

  /** What a list shows of quotes, newest number first; no document is read for it. */
  static List<QuoteHeading> headings(DSLContext context, Condition which) {
    return context
        .select(Arrays.stream(QUOTE.fields()).filter(one -> !one.equals(QUOTE.DOCUMENT)).toList())
        .from(QUOTE)
        .where(which)
        .orderBy(QUOTE.QUOTE_NUMBER.desc(), QUOTE.REVISION)
        .fetch(
            row -> {
              SealCheck.check(row, QUOTE);
              return heading(row);
            });
  }

  private static QuoteHeading heading(Record row) {
    return new QuoteHeading(
        new Quote.Name(row.get(QUOTE.QUOTE_NUMBER), row.get(QUOTE.REVISION)),
        Quote.Status.valueOf(row.get(QUOTE.STATUS)),
        new QuoteHeading.Buyer(row.get(QUOTE.CUSTOMER_ID), row.get(QUOTE.CUSTOMER_NAME)),
        new QuoteHeading.Days(
            row.get(QUOTE.QUOTE_DATE),
            row.get(QUOTE.VALID_UNTIL),
            row.get(QUOTE.MADE_AT).toInstant()),
        row.get(QUOTE.TITLE),
        Amounts.money(row.get(QUOTE.TOTAL), row.get(QUOTE.CURRENCY)));
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
        null,
        null,
        null);
  }
}
