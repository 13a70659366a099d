package hosewright.fault;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.LoadedBooks;
import hosewright.door.shell.run.OneDocument;
import hosewright.door.shell.run.RealProgram;
import hosewright.door.shell.run.RealProgram.Ended;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built program is killed while it writes a backup or puts one back. */
final class KilledBackupIT {
  private static final long SEED = 20261130;
  private static final Path JOB = Path.of("quotes/hydrant-to-nozzle.yaml").toAbsolutePath();

  @TempDir private Path temporary;
  private RealProgram program;
  private String one;
  private String two;

  @BeforeEach
  void keep_books_of_one_quote_and_of_two() throws IOException {
    program = RealProgram.installed(Files.createDirectory(temporary.resolve("work")));
    LoadedBooks.putInto(program);
    one = quoteAndBackUp("one.zip");
    two = quoteAndBackUp("two.zip");
  }

  @Test
  void books_and_backups_are_whole_after_four_kills() throws Exception {
    kill(4);
  }

  @Test
  @Tag("long")
  void books_and_backups_are_whole_after_three_hundred_kills() throws Exception {
    kill(300);
  }

  private void kill(int times) throws Exception {
    SplittableRandom random = new SplittableRandom(SEED);
    int inTheMiddle = 0;
    for (int round = 0; round < times; round++) {
      List<String> words =
          switch (round % 3) {
            case 0 -> List.of("data", "restore", "one.zip");
            case 1 -> List.of("data", "restore", "two.zip");
            default -> List.of("data", "backup");
          };
      Process running = program.begin(words.toArray(String[]::new));
      while (running.isAlive() && !atWork()) {
        Thread.sleep(2);
      }
      boolean ended = running.waitFor(random.nextInt(700), TimeUnit.MILLISECONDS);
      running.destroyForcibly().waitFor();
      inTheMiddle += ended ? 0 : 1;
      everythingHolds("seed %d, round %d: %s".formatted(SEED, round, words));
    }
    assertThat(inTheMiddle).as("kills that met a program at work").isPositive();
  }

  /** Whether a file lies there that is not finished. */
  private boolean atWork() throws IOException {
    return Files.exists(program.data().resolve(".restoring")) || unfinished();
  }

  private boolean unfinished() throws IOException {
    try (Stream<Path> files = Files.walk(program.data())) {
      return files.anyMatch(file -> file.getFileName().toString().startsWith(".hosewright-"));
    } catch (UncheckedIOException e) {
      // It was finished while we looked.
      return true;
    }
  }

  private void everythingHolds(String round) throws IOException {
    Ended quotes = program.run("quote", "list", "--json");
    assertThat(quotes.exitCode()).as(round + quotes.err()).isZero();
    assertThat(quotes.out()).as(round).isIn(one, two);
    assertThat(program.data().toFile().list())
        .as(round)
        .noneMatch(name -> name.startsWith(".rest"));
    assertThat(unfinished()).as(round).isFalse();
    Path backups = program.data().resolve("backups");
    if (Files.exists(backups)) {
      try (Stream<Path> files = Files.list(backups)) {
        for (Path file : files.toList()) {
          try (ZipFile zip = new ZipFile(file.toFile())) {
            assertThat(zip.getEntry("manifest.txt")).as(round + file).isNotNull();
          }
        }
      }
    }
  }

  private String quoteAndBackUp(String file) {
    Ended quoted =
        program.run(
            "quote",
            "make",
            "--job",
            JOB.toString(),
            "--customer",
            "COUNTER",
            "--size",
            "1.75in",
            "--hose-thread",
            "NH",
            "--json");
    assertThat(quoted.exitCode()).as(quoted.err()).isZero();
    assertThat(OneDocument.in(quoted.out()).get("number").asString()).startsWith("Q-");
    assertThat(program.run("data", "backup", file).exitCode()).isZero();
    return program.run("quote", "list", "--json").out();
  }
}
