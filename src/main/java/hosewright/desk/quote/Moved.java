package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.life.Signed;
import java.util.Optional;
import java.util.function.Supplier;

/** A quote after a step that changed nothing but where it stands. */
public record Moved(String number, int revision, Quote.Status status, String by, String note) {

  /**
   * Takes a step with the latest revision of a quote.
   *
   * @param noteField what a user calls the note
   */
  static Moved take(
      Supplier<Books> books,
      String number,
      Step step,
      String noteField,
      Optional<String> note,
      String by) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(number, open);
      Quote.Status next = QuoteLife.take(seen, step).status();
      String why = note.map(text -> Signing.sentence(noteField, text)).orElse("");
      Signed signed = Signing.as(by, step, open.now(), why);
      Quote moved = open.quotes().changeStatus(seen, next, signed);
      return new Moved(moved.number(), moved.revision(), moved.status(), signed.by(), why);
    }
  }
}
