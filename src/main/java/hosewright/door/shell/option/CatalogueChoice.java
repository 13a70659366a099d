package hosewright.door.shell.option;

import hosewright.desk.Books;
import hosewright.desk.catalogue.OfferItems;
import hosewright.desk.customer.OfferCustomers;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.problem.RefusalException;
import java.util.List;
import java.util.function.Supplier;

/** How commands name an item, a customer: whole, and completed from the books as it is typed. */
public final class CatalogueChoice {
  private CatalogueChoice() {}

  public static ArgumentSpec item(Supplier<Books> books) {
    return ArgumentSpec.required("ITEM", "the item's number, such as H175-DJ-50-15NH")
        .completing(typed -> numbers(books, typed));
  }

  /** Item numbers that begin so. */
  static List<String> numbers(Supplier<Books> books, String typed) {
    return offered(() -> new OfferItems(books).beginning(typed));
  }

  /** The ids of all customers. */
  public static List<String> customers(Supplier<Books> books) {
    return offered(() -> new OfferCustomers(books).ids());
  }

  /** Nothing is offered while the books cannot be had: the command itself will say why. */
  private static List<String> offered(Supplier<List<String>> values) {
    try {
      return values.get();
    } catch (RefusalException e) {
      return List.of();
    }
  }
}
