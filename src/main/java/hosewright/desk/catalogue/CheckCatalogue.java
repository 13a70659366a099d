package hosewright.desk.catalogue;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.MissingFacts;
import hosewright.desk.CatalogueFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToIntFunction;

/** Reads a dealer's catalogue files as a load would, and leaves the books alone. */
public final class CheckCatalogue {
  private final Consumer<String> progress;

  /**
   * @param progress told how far a long reading is
   */
  public CheckCatalogue(Consumer<String> progress) {
    this.progress = progress;
  }

  /**
   * What a load would take in.
   *
   * @param missing facts that the items leave unsaid
   */
  public record Checked(
      int items,
      int prices,
      int costs,
      int suppliers,
      int customers,
      String currency,
      List<MissingFacts> missing) {}

  /**
   * The counts, once nothing is wrong.
   *
   * @param place the folder or workbook
   * @param mapping file that maps the dealer's own columns to ours
   * @throws hosewright.problem.BadInputException naming every file that is missing and every cell
   *     that is wrong
   */
  public Checked check(Path place, Optional<Path> mapping) {
    CatalogueFolder folder = CatalogueFolder.read(place, mapping, progress);
    Catalogue catalogue = folder.catalogue();
    return new Checked(
        catalogue.items().size(),
        rows(catalogue, number -> catalogue.priceHistory(number).size()),
        rows(catalogue, number -> catalogue.costHistory(number).size()),
        catalogue.suppliers().size(),
        folder.customers().map(given -> given.customers().size()).orElse(0),
        catalogue.currency().map(Object::toString).orElse(""),
        MissingFacts.of(catalogue));
  }

  private static int rows(Catalogue catalogue, ToIntFunction<String> ofItem) {
    return catalogue.items().stream().mapToInt(item -> ofItem.applyAsInt(item.number())).sum();
  }
}
