package hosewright.store.database;

import static hosewright.store.db.Tables.QUOTE;
import static hosewright.store.db.Tables.QUOTE_COUNTER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.catalogue.CatalogueFiles;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.problem.NoSuchThingException;
import hosewright.problem.TroubleException;
import hosewright.store.catalogue.CatalogueStore;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a team's server may have against us, said in plain words; a real server says it. */
final class ServerPoolTest {
  @TempDir Path folder;
  private PostgresCluster cluster;

  @BeforeEach
  void start() {
    cluster = PostgresCluster.shared();
  }

  @Test
  void a_wrong_password_is_refused_and_never_repeated() {
    Server server = as(new Server.Login(PostgresCluster.USER, Optional.of("seven feet of lift")));

    assertThatThrownBy(() -> Database.open(server, folder))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("does not let this user in")
        .hasMessageContaining("HOSEWRIGHT_DB_PASSWORD")
        .satisfies(e -> assertThat(textOf(e)).doesNotContain("seven"));
  }

  @Test
  void no_password_where_one_is_asked_is_told() {
    assertThatThrownBy(
            () ->
                Database.open(as(new Server.Login(PostgresCluster.USER, Optional.empty())), folder))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("HOSEWRIGHT_DB_PASSWORD");
  }

  @Test
  void a_database_that_is_not_there_is_told() {
    assertThatThrownBy(() -> Database.open(cluster.server("nowhere"), folder))
        .isInstanceOf(NoSuchThingException.class)
        .hasMessageContaining("none so named");
  }

  @Test
  void a_server_that_is_not_there_is_told() {
    Server server =
        Server.of(
            "--db",
            "jdbc:postgresql://127.0.0.1:1/books",
            new Server.Login(PostgresCluster.USER, Optional.of(PostgresCluster.PASSWORD)));

    assertThatThrownBy(() -> Database.open(server, folder))
        .isInstanceOf(TroubleException.class)
        .hasMessageContaining("no PostgreSQL server answers there");
  }

  @Test
  void a_database_that_would_sort_otherwise_is_refused_with_what_to_say_to_the_server() {
    cluster.execute(
        "CREATE DATABASE dictionary TEMPLATE template0 LOCALE_PROVIDER icu ICU_LOCALE 'en-US'");

    assertThatThrownBy(() -> Database.open(cluster.server("dictionary"), folder))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("CREATE DATABASE dictionary TEMPLATE template0");
  }

  @Test
  void a_database_of_others_is_left_alone() {
    cluster.execute("CREATE DATABASE elsewhere");
    Server server = cluster.server("elsewhere");
    cluster.executeIn("elsewhere", "CREATE TABLE shopping (item TEXT)");

    assertThatThrownBy(() -> Database.open(server, folder))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("others' tables");
  }

  @Test
  void many_who_open_an_empty_database_at_once_find_it_made_once() throws Exception {
    cluster.execute("CREATE DATABASE crowd");
    CountDownLatch start = new CountDownLatch(1);
    ExecutorService people = Executors.newFixedThreadPool(4);
    List<Future<Integer>> found =
        IntStream.range(0, 4)
            .mapToObj(
                i ->
                    people.submit(
                        () -> {
                          start.await();
                          try (Database database = Database.open(cluster.server("crowd"), folder)) {
                            return database.context().fetchCount(QUOTE_COUNTER);
                          }
                        }))
            .toList();
    start.countDown();

    for (Future<Integer> one : found) {
      assertThat(one.get()).isEqualTo(1);
    }
    people.shutdown();
  }

  @Test
  void who_waits_for_a_row_too_long_is_told_to_try_again() {
    try (Database one = BooksOn.SERVER.open(folder);
        Database other = BooksOn.SERVER.open(folder)) {
      one.context()
          .transaction(
              holding -> {
                holding.dsl().selectFrom(QUOTE_COUNTER).forUpdate().fetch();
                assertThatThrownBy(
                        () ->
                            other
                                .context()
                                .transaction(
                                    waiting -> {
                                      waiting.dsl().execute("SET LOCAL lock_timeout = '50ms'");
                                      waiting.dsl().selectFrom(QUOTE_COUNTER).forUpdate().fetch();
                                    }))
                    .isInstanceOf(ConflictException.class)
                    .hasMessageContaining("somebody else just now, nothing was kept");
              });
    }
  }

  @Test
  void who_loses_the_server_is_told_to_look_before_doing_it_again() {
    try (Database database = BooksOn.SERVER.open(folder)) {
      assertThatThrownBy(
              () ->
                  database
                      .context()
                      .transaction(
                          inside -> {
                            DSLContext dsl = inside.dsl();
                            Integer self =
                                dsl.select(DSL.field("pg_backend_pid()", Integer.class))
                                    .fetchSingle()
                                    .value1();
                            cluster.execute("SELECT pg_terminate_backend(%d)".formatted(self));
                            dsl.fetchCount(QUOTE);
                          }))
          .isInstanceOf(TroubleException.class)
          .hasMessageContaining("the server is gone");
    }
  }

  @Test
  void a_reader_sees_one_catalogue_while_another_is_put_in_its_place() {
    try (Database database = BooksOn.SERVER.open(folder);
        Database other = BooksOn.SERVER.open(folder)) {
      int loads =
          database.steadily(
              steady -> {
                CatalogueStore store = new CatalogueStore(steady);
                int before = store.load().items().size();
                new CatalogueStore(other).replace(new CatalogueFiles().read(), Instant.EPOCH, "");
                assertThat(store.load().items()).hasSize(before);
                return before;
              });

      assertThat(new CatalogueStore(database).load().items()).hasSizeGreaterThan(loads);
    }
  }

  private Server as(Server.Login login) {
    return Server.of("--db", cluster.url(BooksOn.database(folder)), login);
  }

  private static String textOf(Throwable e) {
    StringWriter text = new StringWriter();
    e.printStackTrace(new PrintWriter(text, true));
    return text.toString();
  }
}
