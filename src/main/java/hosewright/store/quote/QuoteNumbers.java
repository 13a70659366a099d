package hosewright.store.quote;

import static hosewright.store.db.Tables.QUOTE_COUNTER;
import static hosewright.store.db.Tables.QUOTE_VOID;

import hosewright.store.database.HighWaterMark;
import hosewright.store.database.Rows;
import hosewright.store.database.Series;
import hosewright.store.db.tables.records.QuoteCounterRecord;
import hosewright.store.db.tables.records.QuoteVoidRecord;
import java.time.OffsetDateTime;
import java.util.List;
import org.jooq.DSLContext;

/** Hands out quote numbers inside the transaction that keeps the quote. */
public record QuoteNumbers(HighWaterMark mark) {
  /** Why a number has no paper. */
  public static final String LOST = "used before an older store was put back";

  /**
   * Locks the counter until the transaction ends, so that whoever else wants a number waits, and a
   * transaction that fails gives its number back.
   *
   * @param now noted beside numbers that turn out to be lost
   */
  int take(DSLContext inside, OffsetDateTime now) {
    QuoteCounterRecord counter = inside.selectFrom(QUOTE_COUNTER).forUpdate().fetchSingle();
    int last = counter.getLastNumber();
    int highest = mark.above(last);
    recordLost(inside, last, highest, now);
    int number = highest + 1;
    counter.setLastNumber(number);
    Rows.update(inside, QUOTE_COUNTER, List.of(counter));
    return number;
  }

  /**
   * Remembers that somebody is about to see a number. Call when its quote is kept: a process that
   * dies between the two has told nobody, and the number stands in the store.
   */
  void told(String written) {
    mark.raise(Series.number(written));
  }

  /** Whether a quote was given a number that no restored backup made void. */
  boolean isUsed(DSLContext context, String written) {
    int last = context.selectFrom(QUOTE_COUNTER).fetchSingle().getLastNumber();
    return Series.QUOTE.isUpTo(written, last)
        && !context.fetchExists(QUOTE_VOID, QUOTE_VOID.QUOTE_NUMBER.eq(written));
  }

  private static void recordLost(DSLContext inside, int last, int highest, OffsetDateTime now) {
    List<QuoteVoidRecord> lost =
        Series.QUOTE
            .between(last, highest)
            .map(number -> new QuoteVoidRecord(number, LOST, now, null))
            .toList();
    Rows.insert(inside, QUOTE_VOID, lost);
  }
}
