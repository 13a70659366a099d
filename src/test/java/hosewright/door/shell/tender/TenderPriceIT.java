package hosewright.door.shell.tender;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.LoadedBooks;
import hosewright.door.shell.run.OneDocument;
import hosewright.door.shell.run.RealProgram;
import hosewright.door.shell.run.RealProgram.Ended;
import hosewright.tender.TenderJobs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Tenders through the built program, which is really killed while it works. */
final class TenderPriceIT {
  private static final long SEED = 20_261_125;

  @TempDir private Path temporary;
  private Path work;
  private RealProgram program;

  @BeforeEach
  void stand_where_books_are_kept() throws IOException {
    work = Files.createDirectory(temporary.resolve("work"));
    Files.createDirectory(work.resolve("straight"));
    Files.createDirectory(work.resolve("killed"));
    program = RealProgram.installed(work);
    LoadedBooks.putInto(program);
  }

  @Test
  void a_killed_run_goes_on_where_it_was_and_its_workbook_has_the_bytes_of_a_run_left_alone()
      throws Exception {
    Files.writeString(work.resolve("jobs.csv"), TenderJobs.of(16, SEED));
    Ended straight = program.run(priced("straight", "--threads", "1", "--json"));
    assertThat(straight.exitCode()).as(straight.err()).isZero();
    assertThat(OneDocument.in(straight.out()).path("jobs").asInt()).isEqualTo(16);

    kill_once_it_has_done(3, priced("killed"));

    Files.writeString(work.resolve("jobs.csv"), TenderJobs.of(16, SEED + 1));
    Ended changed = program.run(priced("killed"));
    assertThat(changed.exitCode()).isEqualTo(2);
    assertThat(changed.err()).contains("file cannot be 'jobs.csv'").contains("--restart");

    Files.writeString(work.resolve("jobs.csv"), TenderJobs.of(16, SEED));
    Ended resumed = program.run(priced("killed", "--json", "--threads", "3"));
    assertThat(resumed.exitCode()).as(resumed.err()).isZero();
    JsonNode answer = OneDocument.in(resumed.out());
    assertThat(answer.path("resumedAfter").asInt()).isGreaterThanOrEqualTo(3);
    assertThat(work.resolve("killed/jobs-priced.xlsx"))
        .hasSameBinaryContentAs(work.resolve("straight/jobs-priced.xlsx"));
    assertThat(work.resolve("killed/jobs-priced.journal")).doesNotExist();
  }

  @Test
  @Tag("long")
  void quotes_of_a_run_killed_again_and_again_are_each_kept_once_and_their_numbers_have_no_gap()
      throws Exception {
    int rows = 400;
    Files.writeString(work.resolve("jobs.csv"), TenderJobs.of(rows, SEED));
    String[] words = priced("killed", "--quotes", "--customer", "COUNTER");
    Random random = new Random(SEED);
    for (int done = 25; done < rows; done += 50 + random.nextInt(50)) {
      kill_once_it_has_done(done, words);
    }
    Ended ended =
        program.run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
    assertThat(ended.exitCode()).as("seed %s: %s", SEED, ended.err()).isZero();
    JsonNode answer = OneDocument.in(ended.out());
    JsonNode quotes = OneDocument.in(program.run("quote", "list", "--json").out()).path("quotes");
    List<String> numbers = quotes.valueStream().map(q -> q.path("number").asString()).toList();
    int feasible = answer.path("feasible").asInt();
    assertThat(numbers).hasSize(feasible).doesNotHaveDuplicates();
    assertThat(numbers).contains("Q-000001", String.format("Q-%06d", feasible));
    assertThat(quotes.valueStream().map(q -> q.path("title").asString())).doesNotHaveDuplicates();
  }

  private static String[] priced(String folder, String... more) {
    return Stream.concat(
            Stream.of("tender", "price", "jobs.csv", "--out", folder, "--date", "2026-11-02"),
            Stream.of(more))
        .toArray(String[]::new);
  }

  /** Kills as a power cut would: the process gets no chance to put anything in order. */
  private void kill_once_it_has_done(int rows, String... words) throws Exception {
    Process process = program.begin(words);
    try {
      Path journal = work.resolve("killed/jobs-priced.journal");
      while (lines(journal) <= rows) {
        assertThat(process.isAlive()).as("still at work").isTrue();
        Thread.sleep(5);
      }
    } finally {
      process.destroyForcibly().waitFor();
    }
  }

  private static long lines(Path file) throws IOException {
    if (!Files.exists(file)) {
      return 0;
    }
    try (Stream<String> lines = Files.lines(file)) {
      return lines.count();
    }
  }
}
