package hosewright.desk.rate;

import hosewright.desk.Books;
import hosewright.quote.terms.Rates.ExchangeRate;
import java.util.List;
import java.util.function.Supplier;

/** Lists what other currencies were and are worth. */
public final class ListRates {
  private final Supplier<Books> books;

  public ListRates(Supplier<Books> books) {
    this.books = books;
  }

  /** Every rate on record, by currency and then by day. */
  public List<ExchangeRate> list() {
    try (Books open = books.get()) {
      return open.rates().load().rates();
    }
  }
}
