package hosewright.desk.catalogue;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.store.catalogue.CatalogueStore;
import java.util.List;

/** An item as somebody names it. */
final class KnownItem {
  private KnownItem() {}

  /**
   * The number of an item the books know, whether still listed or not, in its own spelling.
   *
   * @throws BadInputException naming the nearest when there is no such item
   */
  static String number(String named, CatalogueStore shelf) {
    List<String> numbers = shelf.numbersEver();
    return numbers.stream()
        .filter(named::equalsIgnoreCase)
        .findFirst()
        .orElseThrow(
            () ->
                new BadInputException(
                    List.of(
                        new Problem(
                            "ITEM",
                            named,
                            "the number of an item in the catalogue; 'catalogue find' searches by"
                                + " words, sizes and ends",
                            Nearest.to(named, numbers)))));
  }
}
