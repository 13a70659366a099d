package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.QuoteLife.Step;
import hosewright.quote.Signed;
import hosewright.shell.Answer;
import hosewright.shell.Invocation;
import java.util.function.Supplier;

/** A quote after a step that changed nothing but where it stands. */
record Stepped(String number, int revision, Quote.Status status, String by, String note) {

  /**
   * Takes a step with the latest revision of the quote named.
   *
   * @param noteOption the option that says why or how, which may be left out
   */
  static Answer take(Step step, String noteOption, Invocation in, Supplier<Books> books) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(in, open);
      Quote.Status next = QuoteLife.take(seen, step).status();
      String note = in.value(noteOption).map(text -> Signing.sentence(noteOption, text)).orElse("");
      Signed signed = Signing.as(SignedBy.name(in), step, open.now(), note);
      Quote moved = open.quotes().changeStatus(seen, next, signed);
      return answer(moved, signed.by(), note);
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
