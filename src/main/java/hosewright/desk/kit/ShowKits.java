package hosewright.desk.kit;

import hosewright.desk.Books;
import hosewright.desk.Kits;
import hosewright.desk.Kits.Kit;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Shows the dealer's kits. */
public final class ShowKits {
  private final Supplier<Books> books;

  public ShowKits(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The kits, in the order of their names.
   *
   * @param name the one to show; all without it
   * @throws hosewright.problem.NoSuchThingException when there is none of that name
   */
  public List<Kit> show(Optional<String> name) {
    try (Books open = books.get()) {
      Kits kits = open.kits();
      return name.map(one -> List.of(kits.get(one)))
          .orElseGet(() -> kits.names().stream().map(kits::get).toList());
    }
  }
}
