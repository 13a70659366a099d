package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.BooksOn;
import hosewright.store.database.PostgresCluster;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One year of quoting and ordering, on one machine and in a team, told the same way. */
final class TwoStoresYearTest {
  private static final long SEED = 20261108;
  private static final List<String> JOBS =
      List.of("hydrant-to-nozzle", "wash-down", "drinking-water", "pump-to-tank-uphill");
  private static final List<String> BUYERS = List.of("COUNTER", "HARLOW-FD");

  @TempDir Path alone;
  @TempDir Path team;

  @Test
  void three_days_come_to_the_same_cent_in_both() {
    same(3);
  }

  @Test
  @Tag("long")
  void a_year_comes_to_the_same_cent_in_both() {
    same(250);
  }

  private void same(int days) {
    List<String> embedded = year(alone, Map.of(), days);
    List<String> server =
        year(team, PostgresCluster.shared().environment(BooksOn.database(team)), days);

    assertThat(server).isEqualTo(embedded);
    assertThat(embedded.get(embedded.size() - 3)).contains("Q-0000").contains("USD");
  }

  private static List<String> year(Path data, Map<String, String> environment, int days) {
    WallClock clock = new WallClock("2026-01-05");
    CommandTrial desk = CommandTrial.of(data, environment, trial -> AllCommands.of(trial, clock));
    SplittableRandom random = new SplittableRandom(SEED);
    List<String> told = new ArrayList<>();
    for (int day = 0; day < days; day++) {
      clock.set(LocalDate.of(2026, 1, 5).plusDays(day).toString());
      String number = "Q-%06d".formatted(day + 1);
      told.add(
          said(
              desk,
              "quote",
              "make",
              "--job",
              "quotes/" + JOBS.get(random.nextInt(JOBS.size())) + ".yaml",
              "--customer",
              BUYERS.get(random.nextInt(BUYERS.size()))));
      if (random.nextInt(3) == 0) {
        told.add(said(desk, "quote", "revise", number, "--quantity", "1=12", "--reason", "more"));
      }
      told.add(said(desk, "quote", "issue", number));
      if (random.nextInt(4) == 0) {
        told.add(said(desk, "quote", "decline", number, "--reason", "too slow"));
      } else {
        told.add(said(desk, "quote", "accept", number, "--note", "yes"));
        told.add(said(desk, "order", "raise", number));
      }
      if (random.nextInt(5) == 0) {
        told.add(said(desk, "catalogue", "load", "catalogue"));
      }
    }
    for (List<String> last :
        List.of(List.of("quote", "list"), List.of("order", "list"), List.of("order", "stock"))) {
      told.add(said(desk, last.toArray(String[]::new)));
    }
    return told;
  }

  private static String said(CommandTrial desk, String... words) {
    Ended ended =
        desk.run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
    assertThat(ended.exitCode()).as(String.join(" ", words) + ": " + ended.err()).isIn(0, 2, 3);
    return ended.out();
  }
}
