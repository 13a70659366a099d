package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.BooksOn;
import hosewright.store.database.CutLine;
import hosewright.store.database.PostgresCluster;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A team's server that goes while a command is under way, after any of its messages. */
final class LostServerTest {
  private static final long SEED = 20261130;
  private static final String JOB = "quotes/hydrant-to-nozzle.yaml";
  private static final List<List<String>> COMMANDS =
      List.of(
          List.of("quote", "make", "--job", JOB, "--customer", "COUNTER"),
          List.of("quote", "list"),
          List.of("quote", "copy", "Q-000001", "--customer", "COUNTER"),
          List.of("quote", "revise", "Q-000001", "--quantity", "1=12", "--reason", "more"),
          List.of("order", "stock"),
          List.of("customer", "list"),
          List.of("catalogue", "find", "attack"),
          List.of("catalogue", "load", "catalogue"));

  @TempDir Path data;

  @Test
  void a_server_that_goes_in_the_middle_is_trouble_to_mend_and_no_fault_of_ours() {
    lose(2);
  }

  @Test
  @Tag("long")
  void a_thousand_times_a_server_goes_in_the_middle() {
    lose(125);
  }

  @Test
  void connections_that_a_server_ends_are_trouble_too() {
    PostgresCluster cluster = PostgresCluster.shared();
    String database = BooksOn.database(data);
    CommandTrial shell = CommandTrial.of(data, cluster.environment(database), AllCommands::of);
    shell.run("quote", "list");
    cluster.execute("ALTER DATABASE %s WITH ALLOW_CONNECTIONS false".formatted(database));

    Ended ended = shell.run("quote", "list");

    assertThat(ended.exitCode()).as(ended.err()).isEqualTo(2);
  }

  private void lose(int timesEach) {
    PostgresCluster cluster = PostgresCluster.shared();
    String database = BooksOn.database(data);
    SplittableRandom random = new SplittableRandom(SEED);
    int troubles = 0;
    for (List<String> command : COMMANDS) {
      int whole = messages(cluster, database, command);
      for (int i = 0; i < timesEach; i++) {
        int messages = random.nextInt(whole);
        try (CutLine line = new CutLine(cluster, messages)) {
          Ended ended = run(line, database, command);
          String said =
              "seed %d, %s cut after %d of %d messages: %s"
                  .formatted(SEED, command, messages, whole, ended.err());
          assertThat(ended.exitCode()).as(said).isIn(0, 2);
          assertThat(ended.err()).as(said).doesNotContain("Hosewright failed");
          troubles += ended.err().contains("cannot be used: ") ? 1 : 0;
        }
      }
    }
    assertThat(troubles).as("commands that met with trouble").isGreaterThan(timesEach);
  }

  private int messages(PostgresCluster cluster, String database, List<String> command) {
    try (CutLine line = new CutLine(cluster, Integer.MAX_VALUE)) {
      Ended ended = run(line, database, command);
      assertThat(ended.exitCode()).as(command + ": " + ended.err()).isZero();
      return line.sent();
    }
  }

  private Ended run(CutLine line, String database, List<String> command) {
    return CommandTrial.of(data, line.environment(database), AllCommands::of)
        .run(command.toArray(String[]::new));
  }
}
