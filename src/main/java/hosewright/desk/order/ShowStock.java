package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Stock;
import hosewright.order.OrderBook.StockLine;
import hosewright.problem.NoSuchThingException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Shows what came, went, is on hand, promised and bought, and whether it balances. */
public final class ShowStock {
  private final Supplier<Books> books;

  public ShowStock(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The shelves.
   *
   * @param shelves those asked for
   * @param counted how many shelves were looked at
   * @param balanced whether for every shelf, asked for or not, stock in is stock out and on hand,
   *     and what is reserved is held by lines of orders
   */
  public record Stock(List<StockLine> shelves, int counted, boolean balanced) {}

  /**
   * The shelf of an item, or every shelf on which something moved or is promised.
   *
   * @throws NoSuchThingException naming the nearest when the item was never in stock
   */
  public Stock show(Optional<String> item) {
    List<StockLine> all;
    try (Books open = books.get()) {
      open.shelf();
      all = open.orders().stock();
    }
    List<StockLine> shelves = item.map(typed -> named(typed, all)).orElseGet(() -> moved(all));
    return new Stock(shelves, all.size(), all.stream().allMatch(StockLine::balances));
  }

  private static List<StockLine> moved(List<StockLine> all) {
    return all.stream()
        .filter(
            line ->
                line.moved().received()
                        + line.moved().shipped()
                        + line.moved().returned()
                        + line.reserved()
                        + line.held()
                        + line.onOrder()
                    > 0)
        .toList();
  }

  private static List<StockLine> named(String item, List<StockLine> all) {
    List<StockLine> found =
        all.stream().filter(line -> line.stockCode().equalsIgnoreCase(item)).toList();
    if (found.isEmpty()) {
      throw new NoSuchThingException(
          "item",
          item,
          all.stream().map(StockLine::stockCode).toList(),
          "none so numbered was ever in stock");
    }
    return found;
  }
}
