package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.quote.Earnings;
import hosewright.quote.Margin;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteStore.Logged;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Shows one quote as it was made. */
public final class ShowQuote {
  private final Supplier<Books> books;

  public ShowQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * A quote with the steps taken with its revision.
   *
   * @param zone in which the dealer reads a clock
   * @param internal what it earns, where the dealer asked for it
   */
  public record Shown(Quote quote, List<Logged> steps, ZoneId zone, Optional<Internal> internal) {}

  /**
   * A quote with what it earns.
   *
   * @param standing how that is to the floor; unknown while a cost is not known
   */
  public record Internal(
      Quote quote, Earnings earnings, Optional<BigDecimal> floor, Margin.Floor standing) {}

  /**
   * The quote.
   *
   * @param revision which one; the latest without it
   * @param internal whether cost and margin are wanted
   */
  public Shown show(String number, Optional<String> revision, boolean internal) {
    try (Books open = books.get()) {
      Quote quote = QuoteChoice.of(number, revision, open);
      List<Logged> steps =
          open.quotes().steps(quote.number()).stream()
              .filter(logged -> logged.revision() == quote.revision())
              .toList();
      Optional<Internal> earned = internal ? Optional.of(internal(open, quote)) : Optional.empty();
      return new Shown(quote, steps, open.zone(), earned);
    }
  }

  private static Internal internal(Books open, Quote quote) {
    Earnings earnings = Costs.earnings(open, quote);
    Optional<BigDecimal> floor = Costs.floor(open, quote);
    return new Internal(quote, earnings, floor, earnings.all().against(floor));
  }
}
