package hosewright.door.shell.quote;

import hosewright.desk.quote.Moved;
import hosewright.door.shell.screen.Answer;
import hosewright.quote.life.QuoteLife;

/** A quote that took a step, as it is answered. */
final class MovedText {
  private MovedText() {}

  static Answer answer(Moved quote) {
    return Answer.of(
        quote,
        "%s revision %d is %s, noted by %s%s."
            .formatted(
                quote.number(),
                quote.revision(),
                QuoteLife.word(quote.status()),
                quote.by(),
                quote.note().isEmpty() ? "" : ": " + quote.note()));
  }
}
