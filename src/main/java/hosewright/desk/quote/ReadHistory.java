package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteStore.Logged;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Supplier;

/** Lists every step taken with a quote: what, who, when and why. */
public final class ReadHistory {
  private final Supplier<Books> books;

  public ReadHistory(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The steps of a quote's life, in order.
   *
   * @param zone in which the dealer reads a clock
   */
  public record History(String number, List<Logged> steps, ZoneId zone) {}

  /** The history of the quote named, all its revisions. */
  public History read(String number) {
    try (Books open = books.get()) {
      Quote quote = QuoteChoice.named(number, open.quotes());
      return new History(quote.number(), open.quotes().steps(quote.number()), open.zone());
    }
  }
}
