package hosewright.desk.supplier;

import hosewright.catalogue.Supplier;
import hosewright.desk.Books;
import java.util.List;

/** Offers suppliers to whoever asks one for a price. */
public final class OfferSuppliers {
  private final java.util.function.Supplier<Books> books;

  public OfferSuppliers(java.util.function.Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The codes of all suppliers.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public List<String> codes() {
    try (Books open = books.get()) {
      return open.shelf().suppliers().stream().map(Supplier::code).toList();
    }
  }
}
