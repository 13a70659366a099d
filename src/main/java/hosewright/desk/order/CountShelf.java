package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.OrderBook.Counted;
import hosewright.order.OrderBook.StockLine;
import hosewright.problem.BadInputException;
import hosewright.problem.NoSuchThingException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Puts on record how many pieces of an item somebody counted on the shelf. */
public final class CountShelf {
  private final Supplier<Books> books;

  public CountShelf(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param item an item of the catalogue, or what else has a shelf
   * @param reason why it was counted, for the record
   * @param by who counted
   */
  public record Request(String item, int pieces, String reason, String by) {}

  /**
   * What came of it: promises there are no longer pieces for, or for which pieces were found.
   *
   * @throws NoSuchThingException naming the nearest when there is no such item
   * @throws BadInputException when it is work, of which there is none to count
   */
  public Counted count(Request asked) {
    String why = Signing.sentence("reason", asked.reason());
    try (Books open = books.get()) {
      String code = shelf(asked.item().strip(), open);
      return open.orders().count(code, asked.pieces(), Signing.actor(asked.by(), open.now()), why);
    }
  }

  private static String shelf(String typed, Books open) {
    var listed = open.shelf().numbersListed();
    var shelves = open.orders().stock().stream().map(StockLine::stockCode).toList();
    Optional<String> found =
        Stream.concat(shelves.stream(), listed.stream())
            .filter(code -> code.equalsIgnoreCase(typed))
            .findFirst();
    String code =
        found.orElseThrow(
            () ->
                new NoSuchThingException(
                    "item",
                    typed,
                    Stream.concat(shelves.stream(), listed.stream()).distinct().toList(),
                    "'catalogue find' finds items by what they are"));
    if (!shelves.contains(code) && isWork(code, open)) {
      throw new BadInputException("item", code, "goods: of work nothing lies on a shelf");
    }
    return code;
  }

  private static boolean isWork(String number, Books open) {
    return open.shelf()
        .load(List.of(number))
        .item(number)
        .filter(item -> item.kind().isWork())
        .isPresent();
  }
}
