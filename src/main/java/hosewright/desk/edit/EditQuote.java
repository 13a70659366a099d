package hosewright.desk.edit;

import hosewright.desk.Books;
import hosewright.desk.quote.QuoteChoice;
import hosewright.desk.quote.ReviseQuote;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteLife.Step;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Has a quote edited as a small text and makes a revision of what came back. */
public final class EditQuote {
  private final Supplier<Books> books;

  public EditQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The new revision; empty where nobody gave a text back.
   *
   * <p>The books are closed while somebody edits; a revision made meanwhile is found then.
   *
   * @param number the latest revision of a quote
   * @param editor gives the text back as it is to be; empty to leave the quote as it is
   * @param by who revises it
   * @throws hosewright.problem.BadInputException naming what cannot be used by its line
   */
  public Optional<ReviseQuote.Outcome> edit(
      String number, Function<String, Optional<String>> editor, String by) {
    Quote seen;
    try (Books open = books.get()) {
      seen = QuoteChoice.latest(number, open);
      QuoteLife.take(seen, Step.REVISE);
    }
    Optional<String> back = editor.apply(EditSheet.of(seen));
    return back.map(
        text -> {
          EditSheet.Edited edited = EditSheet.read(seen, text);
          return new ReviseQuote(books)
              .revise(
                  new ReviseQuote.Request(
                      seen.name().words(), edited.reason(), Map.of(), edited.changes(), by));
        });
  }
}
