package hosewright.fault;

import static hosewright.store.db.Tables.CUSTOMER;
import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueFiles;
import hosewright.csv.CsvText;
import hosewright.fault.TurningFolder.How;
import hosewright.problem.RefusalException;
import hosewright.quote.terms.CustomerFiles;
import hosewright.quote.terms.CustomerReader;
import hosewright.quote.terms.MarginFloors;
import hosewright.store.backup.Backup;
import hosewright.store.catalogue.CatalogueStore;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import hosewright.store.quote.CustomerStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A folder that turns read-only at any step of a backup or of its way back: either all was done or
 * nothing, it is told in words, and what is left behind goes with the next one.
 */
final class ReadOnlyFolderTest {
  private static final Instant NOW = Instant.parse("2026-11-02T12:00:00Z");

  @TempDir private Path folder;
  @TempDir private Path shelf;
  private final TurningFolder turning = new TurningFolder();
  private String said;

  @BeforeEach
  void keep_books() throws IOException {
    // A few rows of each kind: many more would be read and written again for every step.
    try (Database books = BooksOn.EMBEDDED.open(folder)) {
      Catalogue catalogue = new CatalogueFiles().read();
      new CatalogueStore(books).replace(catalogue, NOW, "items.csv");
      new CustomerStore(books)
          .replace(
              CustomerReader.readTables(
                  CsvText.all(new CustomerFiles().readers()), catalogue, MarginFloors.NONE));
    }
    // What does not get smaller, so that the backup goes out in several pieces.
    byte[] noise = new byte[200_000];
    new SplittableRandom(20261130).nextBytes(noise);
    Files.write(folder.resolve("terms.txt"), noise);
    Files.createDirectory(folder.resolve("kits"));
    Files.writeString(folder.resolve("kits/hand-line.txt"), "1 x W-HYD\n");
  }

  @ParameterizedTest
  @EnumSource
  void a_backup_is_made_whole_or_not_at_all(How how) {
    Path file = shelf.resolve("monday.zip");
    int step = 0;
    try (Database books = Database.open(folder)) {
      while (!isDone(how, step, () -> backup(folder).make(books, view(file)))) {
        assertThat(file).as("step %d", step).doesNotExist();
        step++;
      }
      assertThat(step).as("steps that can fail").isGreaterThan(how == How.CLOSED_TO_US ? 1 : 5);
      assertThat(names(shelf)).containsExactly("monday.zip");
      backup(folder).make(books, Optional.of(shelf.resolve("tuesday.zip")));
    }
    assertThat(names(shelf)).containsExactly("monday.zip", "tuesday.zip");
    backup(folder).restore(file);
  }

  @ParameterizedTest
  @EnumSource
  void a_backup_is_put_back_whole_or_not_at_all(How how) {
    putBack(how, 4);
  }

  @ParameterizedTest
  @EnumSource
  @Tag("long")
  void a_backup_is_put_back_whole_or_not_at_all_whatever_step_fails(How how) {
    putBack(how, 1);
  }

  /**
   * @param stride steps from one failure to the next
   */
  private void putBack(How how, int stride) {
    Path file = shelf.resolve("monday.zip");
    int customers = customersKept();
    try (Database books = Database.open(folder)) {
      backup(folder).make(books, Optional.of(file));
    }
    takeOut();
    int step = 0;
    while (!isDone(how, step, () -> backup(turning.view(folder)).restore(file))) {
      if (customersKept() == customers) {
        assertThat(said).as("step %d", step).contains("has begun", "is not known");
        takeOut();
      }
      assertThat(customersKept()).as("step %d", step).isEqualTo(customers - 1);
      assertThat(names(folder)).as("step %d", step).noneMatch(name -> name.startsWith("."));
      step += stride;
    }
    assertThat(step).as("steps that can fail").isGreaterThan(3);
    assertThat(customersKept()).isEqualTo(customers);
    assertThat(folder.resolve("kits/hand-line.txt")).hasContent("1 x W-HYD");
  }

  /** Whether something was done before the folder turned; told in words if it was not. */
  private boolean isDone(How how, int after, Runnable work) {
    turning.turn(how, after);
    try {
      work.run();
      return true;
    } catch (RefusalException e) {
      said = e.getMessage();
      assertThat(said).matches("(?s).*(may not be|can be|may be) (read and )?(written|turned).*");
      return false;
    } finally {
      turning.turnBack();
    }
  }

  private int customersKept() {
    try (Database books = Database.open(folder)) {
      return books.context().fetchCount(CUSTOMER);
    }
  }

  private void takeOut() {
    try {
      Files.writeString(folder.resolve("kits/hand-line.txt"), "9 x W-HYD\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    try (Database books = Database.open(folder)) {
      books.context().deleteFrom(CUSTOMER).where(CUSTOMER.ID.eq("WALKIN")).execute();
    }
  }

  private Optional<Path> view(Path file) {
    return Optional.of(turning.view(file));
  }

  private static Backup backup(Path of) {
    return new Backup(of, "1.0", NOW);
  }

  private static List<String> names(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
