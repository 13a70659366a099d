package hosewright.desk.customer;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.Books;
import hosewright.desk.BooksPlace;
import hosewright.problem.BadInputException;
import hosewright.store.database.BooksOn;
import hosewright.store.database.PostgresCluster;
import hosewright.store.database.Server;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two counters of one dealer, whose books are on a server. */
final class TwoCountersTest {
  private static final Clock DAY =
      Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);
  private static final Map<CustomerField, String> MOSS =
      Map.of(
          CustomerField.ID, "MOSS-CREW",
          CustomerField.NAME, "Mossgate Fire Crew",
          CustomerField.CLASS, "agency");

  @TempDir private Path folder;

  @Test
  void of_two_who_add_one_customer_at_once_one_is_told_that_it_is_there() throws Exception {
    Server server = PostgresCluster.shared().server(BooksOn.database(folder));
    Supplier<Books> books = () -> new Books(new OnServer(folder, server), remark -> {}, DAY);
    try (Books demo = books.get()) {
      assertThat(demo.customers().customers()).isNotEmpty();
    }
    ExecutorService counters = Executors.newFixedThreadPool(2);
    try {
      Callable<Boolean> counter = () -> added(books);
      List<Future<Boolean>> both = counters.invokeAll(List.of(counter, counter));

      assertThat(List.of(both.get(0).get(), both.get(1).get()))
          .containsExactlyInAnyOrder(true, false);
    } finally {
      counters.shutdown();
    }
  }

  private static boolean added(Supplier<Books> books) {
    try {
      new AddCustomer(books).add(MOSS, List.of("H175-DJ-50-15NH 165.00 from 2026-01-01"), false);
      return true;
    } catch (BadInputException e) {
      assertThat(e).hasMessageContaining("an id nobody has yet");
      return false;
    }
  }

  private record OnServer(Path where, Server known) implements BooksPlace {
    @Override
    public Path folder() {
      return where;
    }

    @Override
    public Optional<Server> server() {
      return Optional.of(known);
    }

    @Override
    public Optional<String> serverField() {
      return Optional.of("--db");
    }
  }
}
