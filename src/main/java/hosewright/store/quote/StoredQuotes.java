package hosewright.store.quote;

import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.QUOTE;
import static org.jooq.impl.DSL.max;
import static org.jooq.impl.DSL.select;
import static org.jooq.impl.DSL.val;

import hosewright.problem.ConflictException;
import hosewright.problem.NoSuchThingException;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteCodec;
import hosewright.quote.life.QuoteHeading;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteStore;
import hosewright.quote.life.Signed;
import hosewright.store.database.Database;
import hosewright.store.database.Rows;
import hosewright.store.database.Series;
import hosewright.store.seal.BrokenSeal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Record2;

/** Keeps quotes in the store, each as one document beside the columns a list shows. */
public final class StoredQuotes implements QuoteStore {
  private final DSLContext context;
  private final QuoteNumbers numbers;
  private final QuoteRows rows;
  private final Clock clock;

  /**
   * @param codec turns a quote into the document that is kept
   * @param clock dates the record of numbers that were lost
   */
  public StoredQuotes(Database database, QuoteCodec codec, Clock clock) {
    this.context = database.context();
    this.numbers = new QuoteNumbers(database.marks().of(Series.QUOTE));
    this.rows = new QuoteRows(codec);
    this.clock = clock;
  }

  @Override
  public Quote saveNew(Function<String, Quote> withNumber, Signed signed) {
    Quote kept =
        context.transactionResult(
            nested -> {
              DSLContext inside = nested.dsl();
              int number = numbers.take(inside, OffsetDateTime.now(clock));
              String written = Series.QUOTE.written(number);
              Quote quote = withNumber.apply(written);
              if (!quote.number().equals(written) || quote.revision() != 1) {
                throw new IllegalArgumentException(
                    "a new quote is revision 1 of %s, not revision %s of %s"
                        .formatted(written, quote.revision(), quote.number()));
              }
              Rows.insert(inside, rows.of(quote));
              QuoteSteps.log(inside, written, 1, signed);
              return quote;
            });
    numbers.told(kept.number());
    return kept;
  }

  @Override
  public Quote saveRevision(Quote seen, Quote next, Signed signed) {
    return context.transactionResult(
        nested -> {
          DSLContext inside = nested.dsl();
          QuoteRows.hold(inside, next.number());
          Integer highest = inside.fetchSingle(QuoteRows.highestOf(val(next.number()))).value1();
          if (highest == null) {
            throw new NoSuchThingException(
                "quote", next.number(), List.of(), "'quote list' shows all");
          }
          int latest = inside.select(QuoteRows.latestOf(next.number())).fetchSingle().value1();
          if (seen.revision() != latest || next.revision() != latest + 1) {
            throw revisedMeanwhile(
                next, "cannot be kept, since revision " + latest + " is the latest on file");
          }
          stillAs(inside, seen);
          // A discarded draft keeps its number.
          Quote kept = next.as(highest + 1);
          Rows.insert(inside, rows.of(kept));
          QuoteSteps.log(inside, kept.number(), kept.revision(), signed);
          return kept;
        });
  }

  @Override
  public Quote changeStatus(Quote seen, Quote.Status next, Signed signed) {
    return move(seen, next, seen, signed);
  }

  @Override
  public Quote accept(Quote seen, Signed signed) {
    context.transaction(
        nested -> {
          DSLContext inside = nested.dsl();
          QuoteRows.hold(inside, seen.number());
          for (var newer : newer(inside, seen)) {
            if (newer.value2().equals(Quote.Status.DRAFT.name())) {
              discard(inside, seen, newer.value1(), signed);
            } else {
              throw ConflictException.stateForbids(
                  "quote",
                  seen.name().words(),
                  "is replaced by revision " + newer.value1() + ", which went out after it",
                  "accept that one");
            }
          }
          int changed =
              Rows.change(
                  inside,
                  QUOTE,
                  QuoteRows.as(seen, Quote.Status.ISSUED),
                  row -> row.setStatus(Quote.Status.ACCEPTED.name()));
          if (changed == 0) {
            throw revisedMeanwhile(seen, "is no longer " + QuoteLife.word(seen.status()));
          }
          QuoteSteps.log(inside, seen.number(), seen.revision(), signed);
        });
    return seen.withStatus(Quote.Status.ACCEPTED);
  }

  private static List<Record2<Integer, String>> newer(DSLContext inside, Quote seen) {
    return inside
        .select(QUOTE.REVISION, QUOTE.STATUS)
        .from(QUOTE)
        .where(QUOTE.QUOTE_NUMBER.eq(seen.number()))
        .and(QUOTE.REVISION.greaterThan(seen.revision()))
        .and(QUOTE.STATUS.ne(Quote.Status.DISCARDED.name()))
        .orderBy(QUOTE.REVISION)
        .fetch();
  }

  private static void discard(DSLContext inside, Quote accepted, int revision, Signed signed) {
    Rows.change(
        inside,
        QUOTE,
        QUOTE.QUOTE_NUMBER.eq(accepted.number()).and(QUOTE.REVISION.eq(revision)),
        row -> row.setStatus(Quote.Status.DISCARDED.name()));
    QuoteSteps.log(
        inside,
        accepted.number(),
        revision,
        Signed.of(
            QuoteLife.Step.DISCARD,
            signed.by(),
            signed.at(),
            "revision " + accepted.revision() + " was accepted"));
  }

  @Override
  public Quote issue(Quote seen, LocalDate validUntil, int leadDays, Signed signed) {
    return move(seen, Quote.Status.ISSUED, seen.promising(validUntil, leadDays), signed);
  }

  private Quote move(Quote seen, Quote.Status next, Quote promised, Signed signed) {
    context.transaction(
        nested -> {
          DSLContext inside = nested.dsl();
          QuoteRows.hold(inside, seen.number());
          int changed =
              Rows.change(
                  inside,
                  QUOTE,
                  QuoteRows.as(seen, seen.status())
                      .and(QUOTE.REVISION.eq(QuoteRows.latestOf(seen.number()))),
                  row -> {
                    row.setStatus(next.name());
                    row.setValidUntil(promised.validity().validUntil());
                    row.setLeadDays(promised.validity().leadDays());
                  });
          if (changed == 0) {
            throw revisedMeanwhile(
                seen,
                "is no longer the latest revision, or no longer " + QuoteLife.word(seen.status()));
          }
          QuoteSteps.log(inside, seen.number(), seen.revision(), signed);
        });
    return promised.withStatus(next);
  }

  private static void stillAs(DSLContext inside, Quote seen) {
    if (!inside.fetchExists(QUOTE, QuoteRows.as(seen, seen.status()))) {
      throw revisedMeanwhile(seen, "is no longer " + QuoteLife.word(seen.status()));
    }
    if (inside.fetchExists(CUSTOMER_ORDER, QuoteRows.ordered(seen.number()))) {
      throw ConflictException.stateForbids(
          "quote", seen.number(), "has an order", "copy it to quote the job again");
    }
  }

  @Override
  public Optional<Instant> lastMade() {
    // Numbers are given in the order of time, and are the key: all quotes need not be read.
    return context
        .select(max(QUOTE.MADE_AT))
        .from(QUOTE)
        .where(QUOTE.QUOTE_NUMBER.eq(select(max(QUOTE.QUOTE_NUMBER)).from(QUOTE)))
        .fetchOptional()
        .map(Record1::value1)
        .map(OffsetDateTime::toInstant);
  }

  @Override
  public int expireBefore(LocalDate day) {
    Condition past =
        QUOTE.STATUS.eq(Quote.Status.ISSUED.name()).and(QUOTE.VALID_UNTIL.lessThan(day));
    if (!context.fetchExists(QUOTE, past)) {
      return 0;
    }
    return context.transactionResult(
        nested ->
            nested
                .dsl()
                .selectDistinct(QUOTE.QUOTE_NUMBER)
                .from(QUOTE)
                .where(past)
                .orderBy(QUOTE.QUOTE_NUMBER)
                .fetch(QUOTE.QUOTE_NUMBER)
                .stream()
                .mapToInt(number -> expire(nested.dsl(), number, past))
                .sum());
  }

  private int expire(DSLContext inside, String number, Condition past) {
    QuoteRows.hold(inside, number);
    Condition over = QUOTE.QUOTE_NUMBER.eq(number).and(past);
    var expired = inside.select(QUOTE.REVISION, QUOTE.VALID_UNTIL).from(QUOTE).where(over).fetch();
    Rows.change(inside, QUOTE, over, row -> row.setStatus(Quote.Status.EXPIRED.name()));
    for (var revision : expired) {
      QuoteSteps.log(
          inside,
          number,
          revision.value1(),
          Signed.of(
              QuoteLife.Step.EXPIRE,
              "the calendar",
              clock.instant(),
              "it was valid until " + revision.value2()));
    }
    return expired.size();
  }

  @Override
  public List<Logged> steps(String number) {
    return QuoteSteps.of(context, number);
  }

  @Override
  public Optional<Quote> find(String number) {
    // Asked first: a revision made meanwhile is then found, not missed.
    int logged = QuoteSteps.lastRevision(context, number);
    Optional<Quote> latest = latest(number);
    if (latest.isEmpty() && numbers.isUsed(context, number)) {
      latest = latest(number);
    } else if (latest.isEmpty()) {
      return latest;
    }
    // Lost from an index, a quote would be none, and an old revision the latest.
    if (latest.isEmpty() || !isThere(number, logged)) {
      throw BrokenSeal.ofRows(QUOTE, number);
    }
    return latest;
  }

  private boolean isThere(String number, int revision) {
    return revision == 0
        || context.fetchExists(
            QUOTE, QUOTE.QUOTE_NUMBER.eq(number).and(QUOTE.REVISION.greaterOrEqual(revision)));
  }

  private Optional<Quote> latest(String number) {
    return rows.find(
        context, QUOTE.QUOTE_NUMBER.eq(number).and(QUOTE.REVISION.eq(QuoteRows.latestOf(number))));
  }

  @Override
  public Optional<Quote> find(String number, int revision) {
    return rows.find(context, QUOTE.QUOTE_NUMBER.eq(number).and(QUOTE.REVISION.eq(revision)));
  }

  @Override
  public List<Quote> ofTender(String sha256) {
    // Only says which documents are worth reading: it may stand anywhere in them.
    return rows.all(context, QUOTE.REVISION.eq(1).and(QUOTE.DOCUMENT.contains(sha256))).stream()
        .filter(
            quote -> quote.basis().tender().filter(row -> row.sha256().equals(sha256)).isPresent())
        .toList();
  }

  @Override
  public List<QuoteHeading> list() {
    return QuoteRows.headings(context, QUOTE.REVISION.eq(QuoteRows.latestOf(QUOTE.QUOTE_NUMBER)));
  }

  private static ConflictException revisedMeanwhile(Quote quote, String why) {
    return ConflictException.somebodyWasFirst(
        "quote", quote.number() + " revision " + quote.revision(), why);
  }
}
