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
import tools.jackson.databind.JsonNode;

/** The built program with the books of a team on a real server. */
final class TeamBooksIT {
  private static final String MAKE =
      "quote make --customer COUNTER --job '%s'"
          .formatted(Path.of("quotes/hydrant-to-nozzle.yaml").toAbsolutePath());
  private static final String SHOW = "quote show Q-000001";

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
    JsonNode before = answers(alone, MAKE, SHOW).get(1);

    Ended moved = inTeam.run("data", "move", "--json");

    assertThat(moved.exitCode()).as(moved.err()).isZero();
    assertThat(OneDocument.in(moved.out()).get("to").asString()).isEqualTo(cluster.url("team"));
    List<JsonNode> after = answers(inTeam, SHOW, MAKE, "data where");
    assertThat(after.get(0)).isEqualTo(before);
    assertThat(after.get(1).get("number").asString()).isEqualTo("Q-000002");
    assertThat(after.get(2).toString()).contains(cluster.url("team"));
    assertThat(inTeam.run("data", "move").exitCode()).isEqualTo(2);
    assertThat(inTeam.run("data", "restore", "monday.zip").exitCode()).isEqualTo(2);
  }

  @Test
  void books_on_a_server_are_backed_up_and_put_back_there_or_in_a_folder() {
    JsonNode before = answers(inTeam, MAKE, SHOW, "data backup team.zip", MAKE).get(1);

    Ended onServer = inTeam.run("data", "restore", "team.zip", "--json");
    Ended inFolder = alone.run("data", "restore", "team.zip", "--json");

    assertThat(onServer.exitCode()).as(onServer.err()).isZero();
    assertThat(inFolder.exitCode()).as(inFolder.err()).isZero();
    for (RealProgram books : List.of(inTeam, alone)) {
      List<JsonNode> after = answers(books, SHOW, "quote list");
      assertThat(after.get(0)).isEqualTo(before);
      assertThat(after.get(1).get("quotes")).hasSize(1);
    }
    assertThat(answers(inTeam, MAKE).get(0).get("number").asString()).isEqualTo("Q-000003");
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

  /** What is answered to each of some commands that are done in one start. */
  private static List<JsonNode> answers(RealProgram program, String... commands) {
    Ended ended = program.runWith(String.join("\n", commands) + "\n", "--json");
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    List<JsonNode> answers = OneDocument.each(ended.out());
    assertThat(answers).hasSize(commands.length);
    return answers;
  }
}
