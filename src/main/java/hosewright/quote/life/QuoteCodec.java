package hosewright.quote.life;

import hosewright.quote.Quote;

/** Turns a whole quote into text that can be kept, and back, without losing anything. */
public interface QuoteCodec {

  String write(Quote quote);

  /** A quote equal to the one that was written. */
  Quote read(String document);
}
