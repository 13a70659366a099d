package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.LoadedBooks;
import hosewright.door.shell.run.OneDocument;
import hosewright.door.shell.run.RealProgram;
import hosewright.door.shell.run.RealProgram.Ended;
import hosewright.store.database.PostgresCluster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built program with the books of a team on a real server. */
final class TeamBooksIT {
  @TempDir Path temporary;
  private PostgresCluster cluster;
  private RealProgram alone;
  private RealProgram inTeam;

  @BeforeEach
  void start() throws IOException {
    cluster = PostgresCluster.shared();
    alone = RealProgram.installed(Files.createDirectory(temporary.resolve("work")));
    cluster.execute("DROP DATABASE IF EXISTS team");
    cluster.execute("CREATE DATABASE team");
    inTeam = alone.with(cluster.environment("team"));
  }

  @Test
  void the_books_of_one_machine_move_into_a_database_and_are_quoted_from_there() {
    LoadedBooks.putInto(alone);
    assertThat(quote(alone).exitCode()).isZero();
    String before = alone.run("quote", "show", "Q-000001", "--json").out();

    Ended moved = inTeam.run("data", "move", "--json");

    assertThat(moved.exitCode()).as(moved.err()).isZero();
    assertThat(OneDocument.in(moved.out()).get("to").asString()).isEqualTo(cluster.url("team"));
    assertThat(inTeam.run("quote", "show", "Q-000001", "--json").out()).isEqualTo(before);
    assertThat(OneDocument.in(quote(inTeam).out()).get("number").asString()).isEqualTo("Q-000002");
    assertThat(inTeam.run("data", "move").exitCode()).isEqualTo(2);
    assertThat(inTeam.run("data", "where").out()).contains(cluster.url("team"));
    assertThat(inTeam.run("data", "restore", "monday.zip").exitCode()).isEqualTo(2);
  }

  @Test
  void books_on_a_server_are_backed_up_and_put_back_there_or_in_a_folder() {
    assertThat(quote(inTeam).exitCode()).isZero();
    String before = inTeam.run("quote", "show", "Q-000001", "--json").out();
    assertThat(inTeam.run("data", "backup", "team.zip").exitCode()).isZero();
    assertThat(quote(inTeam).exitCode()).isZero();

    Ended onServer = inTeam.run("data", "restore", "team.zip", "--json");
    Ended inFolder = alone.run("data", "restore", "team.zip", "--json");

    assertThat(onServer.exitCode()).as(onServer.err()).isZero();
    assertThat(inFolder.exitCode()).as(inFolder.err()).isZero();
    for (RealProgram books : List.of(inTeam, alone)) {
      assertThat(books.run("quote", "show", "Q-000001", "--json").out()).isEqualTo(before);
      assertThat(OneDocument.in(books.run("quote", "list", "--json").out()).get("quotes"))
          .hasSize(1);
    }
    assertThat(OneDocument.in(quote(inTeam).out()).get("number").asString()).isEqualTo("Q-000003");
  }

  @Test
  void a_login_that_is_refused_gives_nothing_away() {
    RealProgram stranger =
        alone.with(
            Map.of("HOSEWRIGHT_DB_USER", "stranger", "HOSEWRIGHT_DB_PASSWORD", "let me in please"));

    Ended ended = stranger.run("quote", "list", "--verbose", "--db", cluster.url("team"));

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("stranger").doesNotContain("let me in");
    assertThat(alone.data().toFile().list()).isNullOrEmpty();
  }

  private static Ended quote(RealProgram program) {
    return program.run(
        "quote",
        "make",
        "--json",
        "--customer",
        "COUNTER",
        "--job",
        Path.of("quotes/hydrant-to-nozzle.yaml").toAbsolutePath().toString());
  }
}
