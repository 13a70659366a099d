package hosewright.store.quote;

import static hosewright.store.db.Tables.QUOTE_STEP;
import static org.jooq.impl.DSL.max;

import hosewright.quote.Margin;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteStore.Logged;
import hosewright.quote.life.Signed;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.QuoteStepRecord;
import java.time.ZoneOffset;
import java.util.List;
import org.jooq.DSLContext;

/** The log of who did what with a quote, and when: rows are added and never changed. */
public final class QuoteSteps {
  private QuoteSteps() {}

  /** Adds a step, in the transaction that takes it and holds the quote. */
  public static void log(DSLContext inside, String number, int revision, Signed signed) {
    Integer last =
        inside
            .select(max(QUOTE_STEP.STEP_ORDER))
            .from(QUOTE_STEP)
            .where(QUOTE_STEP.QUOTE_NUMBER.eq(number))
            .fetchSingle()
            .value1();
    Rows.insert(
        inside,
        new QuoteStepRecord(
            number,
            last == null ? 1 : last + 1,
            revision,
            signed.step().name(),
            signed.at().atOffset(ZoneOffset.UTC),
            signed.by(),
            signed.note(),
            signed.floor() == Margin.Floor.BELOW,
            signed.floor() == Margin.Floor.UNKNOWN,
            null));
  }

  /** The latest revision of a quote that anybody did anything with; 0 where that was not logged. */
  static int lastRevision(DSLContext context, String number) {
    Integer last =
        context
            .select(max(QUOTE_STEP.REVISION))
            .from(QUOTE_STEP)
            .where(QUOTE_STEP.QUOTE_NUMBER.eq(number))
            .fetchSingle()
            .value1();
    return last == null ? 0 : last;
  }

  static List<Logged> of(DSLContext context, String number) {
    return context
        .selectFrom(QUOTE_STEP)
        .where(QUOTE_STEP.QUOTE_NUMBER.eq(number))
        .orderBy(QUOTE_STEP.STEP_ORDER)
        .fetch(
            row ->
                new Logged(
                    row.getQuoteNumber(),
                    row.getRevision(),
                    new Signed(
                        QuoteLife.Step.valueOf(row.getStep()),
                        row.getSteppedBy(),
                        row.getSteppedAt().toInstant(),
                        row.getNote(),
                        floor(row))));
  }

  private static Margin.Floor floor(QuoteStepRecord row) {
    if (row.getFloorUnknown()) {
      return Margin.Floor.UNKNOWN;
    }
    return row.getBelowFloor() ? Margin.Floor.BELOW : Margin.Floor.KEPT;
  }
}
