package hosewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.intake.JobText;
import hosewright.thread.End;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Random texts to the two readers a user types for, led by coverage: a text that reaches a place
 * none reached before is kept and changed further.
 */
final class ReaderFuzzTest {
  private static final long SEED = 20261102;

  private static final List<String> ENDS =
      List.of(
          "2.5 NH male",
          "1½ NPSH F swivel",
          "2 NPT female",
          "3/4 GHT male",
          "5 Storz",
          "2 cam plug",
          "DN65 male",
          "1-1/2 NST rocker lug female",
          "38 mm G 1 1/2 female",
          "");

  @Test
  void whatever_is_typed_for_an_end_is_an_end_or_a_problem_in_words() throws Exception {
    fuzz(End.class, ENDS, 4_000);
  }

  @Test
  void whatever_stands_in_a_job_file_is_a_job_or_a_problem_in_words() throws Exception {
    fuzz(JobText.class, jobs(), 1_000);
  }

  @Test
  @Tag("long")
  void two_million_ends() throws Exception {
    fuzz(End.class, ENDS, 2_000_000);
  }

  @Test
  @Tag("long")
  void two_hundred_thousand_job_files() throws Exception {
    fuzz(JobText.class, jobs(), 200_000);
  }

  private static void fuzz(Class<?> type, List<String> seeds, int count) throws Exception {
    Watchdog.watch(dog -> run(new Covered(type, "parse"), seeds, count, dog));
  }

  private static void run(Covered reader, List<String> seeds, int count, Watchdog dog) {
    List<String> corpus = new ArrayList<>(seeds);
    seeds.forEach(reader::call);
    assertThat(reader.foundNew()).as("the seeds reach something").isTrue();
    int reachedBySeeds = reader.placesReached();
    SplittableRandom random = new SplittableRandom(SEED);
    Mutation mutation = new Mutation(random);
    for (int i = 0; i < count; i++) {
      String text = mutation.of(corpus.get(random.nextInt(corpus.size())), corpus);
      Throwable thrown = reader.call(text);
      if (thrown != null) {
        // Another loader's class: only its name is the same.
        assertThat(thrown.getClass().getName())
            .as("seed %d, text %d: <%s> gave %s", SEED, i, text, thrown)
            .isEqualTo("hosewright.problem.BadInputException");
        assertThat(thrown.getMessage()).isNotBlank();
      }
      if (text.length() < 4_000 && reader.foundNew()) {
        corpus.add(text);
      }
      dog.feed();
    }
    assertThat(reader.placesReached())
        .as("led further than the seeds")
        .isGreaterThan(reachedBySeeds);
  }

  private static List<String> jobs() {
    try (Stream<Path> files = Files.list(Path.of("quotes"))) {
      List<String> jobs = new ArrayList<>(List.of("", "from: 2.5 NH male"));
      for (Path file : files.filter(name -> name.toString().endsWith(".yaml")).sorted().toList()) {
        jobs.add(Files.readString(file));
      }
      return jobs;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
