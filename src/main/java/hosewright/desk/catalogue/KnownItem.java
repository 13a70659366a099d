package hosewright.desk.catalogue;

import hosewright.problem.NoSuchThingException;
import hosewright.store.catalogue.CatalogueStore;
import java.util.List;

/** An item as somebody names it. */
final class KnownItem {
  private KnownItem() {}

  /**
   * The number of an item the books know, whether still listed or not, in its own spelling.
   *
   * @throws NoSuchThingException naming the nearest when there is no such item
   */
  static String number(String named, CatalogueStore shelf) {
    List<String> numbers = shelf.numbersEver();
    return numbers.stream()
        .filter(named::equalsIgnoreCase)
        .findFirst()
        .orElseThrow(
            () ->
                new NoSuchThingException(
                    "item", named, numbers, "'catalogue find' searches by words, sizes and ends"));
  }
}
