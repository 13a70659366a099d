package hosewright.desk.catalogue;

import hosewright.desk.Books;
import hosewright.store.catalogue.CatalogueStore;
import hosewright.store.catalogue.CatalogueStore.LoadedPrice;
import java.util.List;
import java.util.function.Supplier;

/** Traces every list price an item ever had, and which load brought it. */
public final class TracePrices {
  private final Supplier<Books> books;

  public TracePrices(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * An item's prices.
   *
   * @param listed whether it still is on the list
   */
  public record History(String item, boolean listed, List<LoadedPrice> prices) {}

  /**
   * The prices.
   *
   * @param named the item's number, in any case of its letters
   * @throws hosewright.problem.BadInputException when there is no such item
   */
  public History trace(String named) {
    try (Books open = books.get()) {
      CatalogueStore shelf = open.shelf();
      String number = KnownItem.number(named, shelf);
      boolean listed = shelf.load(List.of(number)).item(number).isPresent();
      return new History(number, listed, shelf.priceHistory(number));
    }
  }
}
