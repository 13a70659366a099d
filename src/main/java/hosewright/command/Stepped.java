package hosewright.command;

import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.QuoteLife.Step;
import hosewright.shell.Answer;
import hosewright.shell.Invocation;
import org.springframework.beans.factory.ObjectProvider;

/** A quote after a step that changed nothing but where it stands. */
record Stepped(String number, int revision, Quote.Status status, String by, String note) {

  /**
   * Takes a step with the latest revision of the quote named.
   *
   * @param noteOption the option that says why or how, which may be left out
   */
  static Answer take(Step step, String noteOption, Invocation in, ObjectProvider<Books> books) {
    try (Books open = books.getObject()) {
      Quote seen = QuoteChoice.latest(in, open);
      Quote.Status next = QuoteLife.take(seen, step).status();
      String note = in.value(noteOption).map(text -> Signing.sentence(noteOption, text)).orElse("");
      Quote moved = open.quotes().changeStatus(seen, next, Signing.as(in, step, open.now(), note));
      return answer(moved, Signing.name(in), note);
    }
  }

  private static Answer answer(Quote quote, String by, String note) {
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
