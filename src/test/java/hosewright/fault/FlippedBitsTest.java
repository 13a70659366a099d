package hosewright.fault;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.desk.OpenDesk;
import hosewright.desk.order.RaiseOrder;
import hosewright.desk.quote.AcceptQuote;
import hosewright.desk.quote.QuotesAtTheDesk;
import hosewright.order.Order;
import hosewright.paper.json.Json;
import hosewright.problem.TroubleException;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteHeading;
import hosewright.quote.life.QuoteStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Books on a disk that forgets: whatever four bits of the store are flipped, they answer as before
 * or are refused as damaged; no answer is another one.
 */
final class FlippedBitsTest {
  private static final int BITS = 4;

  @TempDir private Path folder;
  private Path whole;
  private String before;

  @BeforeEach
  void keep_books() {
    whole = folder.resolve("whole");
    OpenDesk desk = OpenDesk.withDemo(whole);
    for (int made = 0; made < 3; made++) {
      String number = QuotesAtTheDesk.issued(desk).number();
      if (made > 0) {
        new AcceptQuote(desk).accept(number, Optional.of("their order 4711"), "ines");
        new RaiseOrder(desk).raise(number, true, "ines");
      }
    }
    before = answers(desk);
  }

  @Test
  void no_answer_changes() {
    assertThat(changed(20, Found.CLOSED)).isEmpty();
  }

  @Test
  void no_answer_changes_after_a_kill() {
    assertThat(changed(20, Found.AFTER_A_KILL)).isEmpty();
  }

  @Test
  @Tag("long")
  void no_answer_changes_in_five_hundred_stores() {
    assertThat(changed(500, Found.CLOSED)).isEmpty();
  }

  @Test
  @Tag("long")
  void no_answer_changes_in_five_hundred_stores_after_a_kill() {
    assertThat(changed(500, Found.AFTER_A_KILL)).isEmpty();
  }

  /** How a store was left. */
  private enum Found {
    CLOSED,
    /** Without what a program writes as the last thing. */
    AFTER_A_KILL
  }

  /** What went wrong in which store. */
  private List<String> changed(int stores, Found found) {
    List<String> changed = new ArrayList<>();
    for (int seed = 1; seed <= stores; seed++) {
      Path copy = folder.resolve("copy" + seed);
      copyWithFlips(copy, new Random(seed), found);
      String after;
      try {
        after = answers(OpenDesk.unused(copy));
      } catch (TroubleException e) {
        assertThat(e)
            .hasMessageContaining("Nothing was kept")
            .hasMessageMatching("(?s).*'data (check|restore).*");
        continue;
      } catch (RuntimeException | Error e) {
        changed.add("store " + seed + ": " + e);
        continue;
      }
      if (!after.equals(before)) {
        changed.add("store " + seed + ": other answers");
      }
    }
    return changed;
  }

  private void copyWithFlips(Path copy, Random random, Found found) {
    try (Stream<Path> files = Files.list(whole)) {
      Files.createDirectory(copy);
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
      Path store = copy.resolve("store.mv.db");
      byte[] bytes = Files.readAllBytes(store);
      for (int bit = 0; bit < BITS; bit++) {
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
      }
      Files.write(store, bytes);
      if (found == Found.AFTER_A_KILL) {
        Files.deleteIfExists(copy.resolve("store.sum"));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Quotes, orders, prices and ratings, as anybody who asks would be told. */
  private static String answers(OpenDesk desk) {
    StringBuilder said = new StringBuilder();
    try (Books books = desk.get()) {
      QuoteStore quotes = books.quotes();
      for (QuoteHeading heading : quotes.list()) {
        said.append(heading).append(quotes.steps(heading.number()));
      }
      // Asked for by the numbers on paper, for a list might have lost one.
      for (String number : List.of("Q-000001", "Q-000002", "Q-000003")) {
        said.append(quotes.find(number).map(FlippedBitsTest::document).orElse("none"));
      }
      for (Order order : books.orders().list()) {
        said.append(order);
      }
      said.append(books.orders().find("O-000001"));
      said.append(books.orders().stock());
      Catalogue catalogue = books.shelf().load();
      said.append(catalogue.items()).append(catalogue.suppliers());
      catalogue
          .items()
          .forEach(
              item ->
                  said.append(catalogue.priceHistory(item.number()))
                      .append(catalogue.costHistory(item.number())));
      said.append(books.customers().customers()).append(books.customers().contractPrices());
      said.append(books.terms()).append(books.marginFloors());
    }
    return said.toString();
  }

  private static String document(Quote quote) {
    return Json.write(quote);
  }
}
