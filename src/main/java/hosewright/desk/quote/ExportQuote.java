package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.quote.Quote;
import hosewright.quote.terms.Dealer;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Writes a quote's papers into a folder. */
public final class ExportQuote {
  private final Supplier<Books> books;

  public ExportQuote(Supplier<Books> books) {
    this.books = books;
  }

  /** The papers written of one revision. */
  public record Exported(String number, int revision, List<String> files) {}

  /**
   * The files, all of them or none where one has no place to go to.
   *
   * @param revision which one; the latest without it
   */
  public Exported export(String number, Optional<String> revision, Papers papers) {
    Quote quote;
    Dealer dealer;
    try (Books open = books.get()) {
      quote = QuoteChoice.of(number, revision, open);
      dealer = Papers.dealer(open.terms());
    }
    List<String> files = papers.write(quote, dealer);
    return new Exported(quote.number(), quote.revision(), files);
  }
}
