package hosewright.store.backup;

import static hosewright.store.db.Tables.QUOTE;
import static hosewright.store.db.Tables.QUOTE_VOID;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueFiles;
import hosewright.csv.CsvText;
import hosewright.problem.RefusalException;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.Signed;
import hosewright.quote.terms.CustomerFiles;
import hosewright.quote.terms.CustomerReader;
import hosewright.quote.terms.MarginFloors;
import hosewright.store.catalogue.CatalogueStore;
import hosewright.store.database.BookTables;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import hosewright.store.quote.CustomerStore;
import hosewright.store.quote.SampleQuotes;
import hosewright.store.quote.StoredQuotes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipFile;
import org.jooq.Table;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Books go from a folder to a server and back through backups, and nothing is lost on the way. */
final class RoundTripTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-02T10:00:00Z"), ZoneOffset.UTC);
  private static final Signed MADE = Signed.of(QuoteLife.Step.MAKE, "ines", CLOCK.instant(), "");

  @TempDir Path folder;
  @TempDir Path team;
  @TempDir Path another;
  @TempDir Path copies;

  @BeforeEach
  void fill() throws IOException {
    try (Database books = BooksOn.EMBEDDED.open(folder)) {
      Catalogue catalogue = new CatalogueFiles().read();
      new CatalogueStore(books).replace(catalogue, CLOCK.instant(), "items.csv");
      new CustomerStore(books)
          .replace(
              CustomerReader.readTables(
                  CsvText.all(new CustomerFiles().readers()), catalogue, MarginFloors.NONE));
      for (String title : List.of("Quay line", "Mole line, ½ in, 多\t\\N \uD83D\uDEB0", "")) {
        quotes(books).saveNew(number -> SampleQuotes.quote(number, 1, title), MADE);
      }
    }
    Files.writeString(folder.resolve("terms.txt"), "Goods stay ours until paid.\r\n");
    Files.createDirectory(folder.resolve("kits"));
    Files.writeString(folder.resolve("kits/hand-line.txt"), "# ours\n2 x W-HYD per line\n");
    Files.writeString(folder.resolve("kits/Not a kit.txt"), "mine");
  }

  @Test
  void every_table_is_equal_after_a_folder_a_server_and_a_folder_again() throws IOException {
    Path first = copies.resolve("first.zip");
    Path second = copies.resolve("second.zip");
    try (Database books = Database.open(folder)) {
      backup(folder).make(books, Optional.of(first));
    }

    try (Database server = BooksOn.SERVER.open(team)) {
      backup(team).restore(first, server);
      backup(team).make(server, Optional.of(second));
    }
    backup(another).restore(second);

    try (Database before = Database.open(folder);
        Database after = Database.open(another)) {
      for (Table<?> table : BookTables.parentsFirst()) {
        assertThat(after.context().selectFrom(table).fetch().intoMaps())
            .as(table.getName())
            .containsExactlyInAnyOrderElementsOf(
                before.context().selectFrom(table).fetch().intoMaps());
      }
      assertThat(before.context().fetchCount(QUOTE)).isEqualTo(3);
    }
    // Of the same books the same bytes, whatever database they are kept in.
    assertThat(tables(second)).isEqualTo(tables(first));
    assertThat(another.resolve("terms.txt")).hasContent("Goods stay ours until paid.\r\n");
    for (Path there : List.of(team, another)) {
      assertThat(there.resolve("kits/hand-line.txt")).hasContent("# ours\n2 x W-HYD per line\n");
      assertThat(there.resolve("kits").toFile().list()).containsExactly("hand-line.txt");
    }
  }

  @Test
  void numbers_told_on_the_server_are_not_given_again_after_an_older_backup_is_put_back() {
    Path monday = copies.resolve("monday.zip");
    try (Database server = BooksOn.SERVER.open(team)) {
      quotes(server).saveNew(number -> SampleQuotes.quote(number, 1, "Quay line"), MADE);
      backup(team).make(server, Optional.of(monday));
      quotes(server).saveNew(number -> SampleQuotes.quote(number, 1, "Mole line"), MADE);

      Optional<Path> before = backup(team).restore(monday, server);

      assertThat(server.context().fetchCount(QUOTE)).isEqualTo(1);
      assertThat(
              quotes(server)
                  .saveNew(number -> SampleQuotes.quote(number, 1, "Slip line"), MADE)
                  .number())
          .isEqualTo("Q-000003");
      assertThat(server.context().fetchCount(QUOTE_VOID)).isEqualTo(1);
      // What stood there went into a backup of its own.
      backup(team).restore(before.orElseThrow(), server);
      assertThat(server.context().fetchCount(QUOTE)).isEqualTo(2);
    }
  }

  @Test
  void a_backup_that_is_refused_changes_nothing_on_the_server() throws IOException {
    Path monday = copies.resolve("monday.zip");
    try (Database server = BooksOn.SERVER.open(team)) {
      backup(team).make(server, Optional.of(monday));
      byte[] whole = Files.readAllBytes(monday);
      Files.write(monday, Arrays.copyOf(whole, whole.length / 2));
      quotes(server).saveNew(number -> SampleQuotes.quote(number, 1, "Quay line"), MADE);

      assertThatThrownBy(() -> backup(team).restore(monday, server))
          .isInstanceOf(RefusalException.class);

      assertThat(server.context().fetchCount(QUOTE)).isEqualTo(1);
    }
    assertThat(team.toFile().list()).noneMatch(name -> name.startsWith("."));
  }

  private static Backup backup(Path folder) {
    return new Backup(folder, "1.0", CLOCK.instant());
  }

  private static StoredQuotes quotes(Database database) {
    return new StoredQuotes(database, SampleQuotes.CODEC, CLOCK);
  }

  private static Map<String, String> tables(Path file) throws IOException {
    Map<String, String> digests = new TreeMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      String manifest = new String(zip.getInputStream(zip.getEntry("manifest.txt")).readAllBytes());
      manifest
          .lines()
          .filter(line -> line.startsWith("tables/"))
          .forEach(line -> digests.put(line.split("\t")[0], line));
    }
    return digests;
  }
}
