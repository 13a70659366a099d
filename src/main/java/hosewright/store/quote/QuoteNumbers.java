package hosewright.store.quote;

import static hosewright.store.db.Tables.QUOTE_COUNTER;
import static hosewright.store.db.Tables.QUOTE_VOID;

import hosewright.store.database.HighWaterMark;
import hosewright.store.database.Rows;
import hosewright.store.database.Series;
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
    int last =
        inside
            .select(QUOTE_COUNTER.LAST_NUMBER)
            .from(QUOTE_COUNTER)
            .forUpdate()
            .fetchSingle()
            .value1();
    int highest = mark.above(last);
    recordLost(inside, last, highest, now);
    int number = highest + 1;
    inside.update(QUOTE_COUNTER).set(QUOTE_COUNTER.LAST_NUMBER, number).execute();
    return number;
  }

  /**
   * Remembers that somebody is about to see a number. Call when its quote is kept: a process that
   * dies between the two has told nobody, and the number stands in the store.
   */
  void told(String written) {
    mark.raise(Series.number(written));
  }

  private static void recordLost(DSLContext inside, int last, int highest, OffsetDateTime now) {
    List<QuoteVoidRecord> lost =
        Series.QUOTE
            .between(last, highest)
            .map(number -> new QuoteVoidRecord(number, LOST, now))
            .toList();
    Rows.insert(inside, QUOTE_VOID, lost);
  }
}
