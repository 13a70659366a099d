package hosewright.command;

import hosewright.desk.Books;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.Invocation;
import hosewright.store.CatalogueStore;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/** How commands name an item, a customer: whole, and completed from the books as it is typed. */
final class CatalogueChoice {
  private static final int OFFERED = 200;

  private CatalogueChoice() {}

  static ArgumentSpec item(Supplier<Books> books) {
    return ArgumentSpec.required("ITEM", "the item's number, such as H175-DJ-50-15NH")
        .completing(typed -> numbers(books, typed));
  }

  /** Item numbers that begin so. */
  static List<String> numbers(Supplier<Books> books, String typed) {
    return offered(books, open -> open.shelf().numbersBeginning(typed, OFFERED));
  }

  /** The ids of all customers. */
  static List<String> customers(Supplier<Books> books) {
    return offered(books, open -> open.buyers().ids());
  }

  /** Nothing is offered while the books cannot be had: the command itself will say why. */
  private static List<String> offered(Supplier<Books> books, Function<Books, List<String>> values) {
    try (Books open = books.get()) {
      return values.apply(open);
    } catch (BadInputException e) {
      return List.of();
    }
  }

  /**
   * The number of an item the books know, whether still listed or not, in its own spelling.
   *
   * @throws BadInputException naming the nearest when there is no such item
   */
  static String known(Invocation in, CatalogueStore shelf) {
    String typed = in.argument(0).orElseThrow();
    List<String> numbers = shelf.numbersEver();
    return numbers.stream()
        .filter(typed::equalsIgnoreCase)
        .findFirst()
        .orElseThrow(
            () ->
                new BadInputException(
                    List.of(
                        new Problem(
                            "ITEM",
                            typed,
                            "the number of an item in the catalogue; 'catalogue find' searches by"
                                + " words, sizes and ends",
                            Nearest.to(typed, numbers)))));
  }
}
