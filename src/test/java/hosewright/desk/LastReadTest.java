package hosewright.desk;

import static hosewright.store.db.Tables.STOCK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.catalogue.Catalogue;
import hosewright.store.database.Database;
import hosewright.store.database.Rows;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session of many commands beside another that changes the same books. */
final class LastReadTest {
  private static final String HOSE = "H175-DJ-50-15NH";
  private static final Clock DAY =
      Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder;
  @TempDir private Path files;
  private OpenDesk elsewhere;
  private final LastRead session = new LastRead();

  @BeforeEach
  void open() {
    elsewhere = OpenDesk.withDemo(folder);
    OpenDesk.putDemoInto(folder.resolve("books"));
  }

  /** The catalogue as the next command of the session sees it. */
  private Catalogue seen() {
    return seenBy(session);
  }

  private Catalogue seenBy(LastRead reader) {
    try (Books books = new Books(elsewhere.place(), remark -> {}, DAY, reader)) {
      return books.catalogue();
    }
  }

  @Test
  void books_that_nobody_changed_are_read_once() {
    assertThat(seen()).isSameAs(seen());
  }

  @Test
  void a_load_by_somebody_else_is_seen_by_the_next_command() throws IOException {
    Catalogue before = seen();

    try (Books other = elsewhere.get()) {
      other.kept().load(described("as changed elsewhere"));
    }

    assertThat(before.item(HOSE).orElseThrow().description()).startsWith("Attack hose");
    assertThat(seen().item(HOSE).orElseThrow().description()).isEqualTo("as changed elsewhere");
  }

  @Test
  void a_load_that_another_of_the_same_number_took_the_place_of_is_seen() throws IOException {
    try (Books books = elsewhere.get()) {
      books.kept().load(described("the second load"));
    }
    assertThat(seen().item(HOSE).orElseThrow().description()).isEqualTo("the second load");

    putBack(folder);
    try (Books books = elsewhere.get()) {
      books.kept().load(described("another second load"));
    }

    assertThat(seen().item(HOSE).orElseThrow().description()).isEqualTo("another second load");
  }

  @Test
  void what_is_reserved_or_received_meanwhile_is_seen() {
    int free = free();

    try (Database books = Database.open(folder)) {
      Rows.change(books.context(), STOCK, STOCK.STOCK_CODE.eq(HOSE), shelf -> shelf.setReserved(1));
    }

    assertThat(free()).isEqualTo(free - 1);
  }

  @Test
  void a_row_that_changed_without_its_seal_is_told_when_it_is_read() {
    Optional<Money> price = price();

    try (Database books = Database.open(folder)) {
      books.context().execute("UPDATE PRICE SET UNIT_PRICE = 1 WHERE ITEM_NUMBER = ?", HOSE);
    }

    assertThat(price()).as("as it was read before the damage").isEqualTo(price);
    assertThatThrownBy(() -> seenBy(new LastRead())).hasMessageContaining("price");
  }

  private int free() {
    return seen().item(HOSE).orElseThrow().stocking().onHand();
  }

  private Optional<Money> price() {
    return seen().listPrice(HOSE, 1, LocalDate.now(DAY));
  }

  private static void putBack(Path folder) throws IOException {
    try (Stream<Path> fresh = Files.list(folder.resolve("books"))) {
      for (Path file : fresh.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }

  private CatalogueFolder described(String description) throws IOException {
    for (String name : List.of("prices.csv", "costs.csv", "suppliers.csv")) {
      Files.writeString(files.resolve(name), Files.readString(Path.of("catalogue", name)));
    }
    Files.writeString(
        files.resolve("items.csv"),
        Files.readString(Path.of("catalogue", "items.csv"))
            .replace("Attack hose, double jacket, 1.75 in x 50 ft, 1.5 NH couplings", description));
    return CatalogueFolder.read(files, Optional.empty(), step -> {});
  }
}
