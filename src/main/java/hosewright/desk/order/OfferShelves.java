package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.order.OrderBook.StockLine;
import java.util.List;
import java.util.function.Supplier;

/** Offers shelves to whoever asks for the stock of one. */
public final class OfferShelves {
  private final Supplier<Books> books;

  public OfferShelves(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The stock codes of all that was ever in stock.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public List<String> codes() {
    try (Books open = books.get()) {
      return open.orders().stock().stream().map(StockLine::stockCode).toList();
    }
  }
}
