package hosewright.desk;

import hosewright.paper.json.Json;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteCodec;

/** Quotes are kept as the JSON that scripts read. */
final class QuoteDocuments implements QuoteCodec {
  @Override
  public String write(Quote quote) {
    return Json.keep(quote);
  }

  @Override
  public Quote read(String document) {
    return Json.readQuote(document);
  }
}
