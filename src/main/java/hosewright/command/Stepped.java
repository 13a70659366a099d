package hosewright.command;

import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.shell.Answer;

/** A quote after a step that changed nothing but where it stands. */
record Stepped(String number, int revision, Quote.Status status, String by, String note) {

  static Answer answer(Quote quote, String by, String note) {
    return Answer.of(
        new Stepped(quote.number(), quote.revision(), quote.status(), by, note),
        "%s revision %d is %s, noted by %s%s."
            .formatted(
                quote.number(),
                quote.revision(),
                QuoteLife.word(quote.status()),
                by,
                note.isEmpty() ? "" : ": " + note));
  }
}
