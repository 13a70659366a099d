package hosewright.paper.quote;

import hosewright.quote.Quote;
import java.util.Optional;

/** What a paper says that was printed before its quote was issued. */
final class DraftMark {
  private DraftMark() {}

  static Optional<String> of(Quote quote) {
    return quote.status() == Quote.Status.DRAFT
        ? Optional.of("DRAFT: not an offer until it is issued")
        : Optional.empty();
  }
}
