package hosewright.desk.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.CatalogueFolder;
import hosewright.desk.OpenDesk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo catalogue, changed by a dealer. */
final class LoadCatalogueTest {
  private static final String HOSE = "H175-DJ-50-15NH";
  private static final String DESCRIPTION =
      "Attack hose, double jacket, 1.75 in x 50 ft, 1.5 NH couplings";

  @TempDir private Path folder;
  @TempDir private Path files;
  private OpenDesk books;
  private LoadCatalogue load;

  @BeforeEach
  void open() {
    books = OpenDesk.withDemo(folder);
    load = new LoadCatalogue(books);
  }

  @Test
  void a_trial_tells_what_would_change_and_changes_nothing() throws IOException {
    var told = load.load(described("as changed"), true);

    assertThat(told.written()).isFalse();
    assertThat(told.difference().facts()).isNotEmpty();
    assertThat(shown()).isEqualTo(DESCRIPTION);
  }

  @Test
  void a_load_puts_the_new_facts_in_the_place_of_the_old() throws IOException {
    var loaded = load.load(described("as changed"), false);

    assertThat(loaded.written()).isTrue();
    assertThat(shown()).isEqualTo("as changed");
    assertThat(load.load(described("as changed"), true).difference().isEmpty()).isTrue();
  }

  @Test
  void prices_in_another_currency_are_refused_while_sums_that_stay_are_not() throws IOException {
    CatalogueFolder euros = inEuros();

    assertThatThrownBy(() -> load.load(euros, false))
        .hasMessageContaining("prices.csv currency cannot be 'EUR'")
        .hasMessageContaining("contract-prices.csv")
        .hasMessageContaining("freight.csv");
    assertThat(new TracePrices(books).trace(HOSE).prices())
        .allSatisfy(
            row ->
                assertThat(row.price().unitPrice().getCurrencyUnit().getCode()).isEqualTo("USD"));
  }

  private String shown() {
    return new ShowItem(books).show(HOSE, false).description();
  }

  private CatalogueFolder described(String description) throws IOException {
    copy(List.of("prices.csv", "costs.csv", "suppliers.csv"));
    String items = Files.readString(Path.of("catalogue", "items.csv"));
    Files.writeString(files.resolve("items.csv"), items.replace(DESCRIPTION, description));
    return CatalogueFolder.read(files, Optional.empty(), step -> {});
  }

  private CatalogueFolder inEuros() throws IOException {
    copy(List.of("items.csv", "suppliers.csv"));
    for (String name : List.of("prices.csv", "costs.csv")) {
      String text = Files.readString(Path.of("catalogue", name));
      Files.writeString(files.resolve(name), text.replace("USD", "EUR"));
    }
    return CatalogueFolder.read(files, Optional.empty(), step -> {});
  }

  private void copy(List<String> names) throws IOException {
    try (Stream<Path> there = Files.list(files)) {
      for (Path file : there.toList()) {
        Files.delete(file);
      }
    }
    for (String name : names) {
      Files.copy(Path.of("catalogue", name), files.resolve(name));
    }
  }
}
