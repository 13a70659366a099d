package hosewright.store.catalogue;

import static hosewright.store.db.Tables.QUOTE;

import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.life.QuoteCodec;
import hosewright.store.database.Database;
import java.time.LocalDate;
import java.util.List;
import org.jooq.DSLContext;

/** Finds where an item is used. */
public final class CatalogueUses {
  private final DSLContext context;
  private final QuoteCodec codec;

  public CatalogueUses(Database database, QuoteCodec codec) {
    this.context = database.context();
    this.codec = codec;
  }

  /** A revision of a quote that has an item on its lines, and how many. */
  public record QuoteUse(
      String quote,
      int revision,
      Quote.Status status,
      String customer,
      LocalDate date,
      int quantity) {}

  /** The quotes with an item, every revision, newest first. */
  public List<QuoteUse> quotes(String item) {
    return context
        .selectFrom(QUOTE)
        // Only says which documents are worth reading: it may stand anywhere in them.
        .where(QUOTE.DOCUMENT.contains(item))
        .orderBy(QUOTE.QUOTE_NUMBER.desc(), QUOTE.REVISION.desc())
        .fetch(
            row -> codec.read(row.getDocument()).withStatus(Quote.Status.valueOf(row.getStatus())))
        .stream()
        .map(quote -> use(quote, item))
        .filter(use -> use.quantity() > 0)
        .toList();
  }

  private static QuoteUse use(Quote quote, String item) {
    return new QuoteUse(
        quote.number(),
        quote.revision(),
        quote.status(),
        quote.customer().name(),
        quote.validity().date(),
        quote.lines().stream()
            .filter(line -> line.goods().item().equals(item))
            .mapToInt(QuoteLine::quantity)
            .sum());
  }
}
