package hosewright.fault;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.LoadedBooks;
import hosewright.door.shell.run.OneDocument;
import hosewright.door.shell.run.RealProgram;
import hosewright.door.shell.run.RealProgram.Ended;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built program on a disk that will not take, or has not kept, what it is to hold. */
final class DiskTroubleIT {
  private static final Path JOB = Path.of("quotes/hydrant-to-nozzle.yaml").toAbsolutePath();

  @TempDir private static Path shared;
  private static RealProgram quoted;

  @TempDir Path temporary;
  private RealProgram program;

  private static final int MOST_QUOTES_IN_FREE_BLOCKS = 20;

  @BeforeAll
  static void keep_books_with_a_quote() throws IOException {
    quoted = RealProgram.installed(Files.createDirectory(shared.resolve("work")));
    LoadedBooks.putInto(quoted);
    assertThat(quote(quoted).exitCode()).isZero();
  }

  @BeforeEach
  void stand_in_an_empty_folder() throws IOException {
    program = RealProgram.installed(Files.createDirectory(temporary.resolve("work")));
  }

  @Test
  void a_disk_without_room_is_told_and_the_books_stay_as_they_were() {
    haveAQuote();
    // The store may grow by a few blocks of 512 bytes, then the system refuses as a full disk does.
    long blocks = program.data().resolve("store.mv.db").toFile().length() / 512 + 8;

    // What a store closed in haste left free in its file takes some quotes before it has to grow.
    int asked = 0;
    int refused = 0;
    while (asked < 3 || refused == 0 && asked < MOST_QUOTES_IN_FREE_BLOCKS) {
      asked++;
      Ended ended = quote(program.withFilesUpTo(blocks));
      assertThat(ended.exitCode()).as(ended.err()).isIn(0, 2);
      if (ended.exitCode() == 2) {
        refused++;
        assertThat(ended.err()).contains("room left").doesNotContain("\tat ");
      }
    }

    assertThat(refused).isPositive();
    int kept = OneDocument.in(program.run("quote", "list", "--json").out()).get("quotes").size();
    assertThat(kept).isEqualTo(1 + asked - refused);
    assertThat(OneDocument.in(quote(program).out()).get("number").asString())
        .isEqualTo("Q-%06d".formatted(kept + 1));
  }

  @Test
  void a_disk_that_fills_in_the_middle_of_a_backup_leaves_no_backup_and_the_books_whole()
      throws IOException {
    haveAQuote();
    // What does not get smaller: the backup is larger than the store, which stays as it is.
    byte[] noise = new byte[4_000_000];
    new SplittableRandom(20261130).nextBytes(noise);
    Files.write(program.data().resolve("terms.txt"), noise);
    Files.write(program.data().resolve("local-threads.csv"), noise);
    long blocks = program.data().resolve("store.mv.db").toFile().length() / 512 + 8;

    Ended ended = program.withFilesUpTo(blocks).run("data", "backup", "monday.zip");

    assertThat(ended.exitCode()).as(ended.err()).isEqualTo(2);
    assertThat(ended.err()).contains("room left").doesNotContain("\tat ");
    assertThat(program.leftBehind()).isEmpty();
    Ended again = program.run("data", "backup", "monday.zip");
    assertThat(again.exitCode()).as(again.err()).isZero();
    assertThat(program.leftBehind()).containsExactly("monday.zip");
  }

  @Test
  void a_disk_that_fills_in_the_middle_of_a_restore_leaves_what_was_there() throws IOException {
    haveAQuote();
    assertThat(program.run("data", "backup", "monday.zip").exitCode()).isZero();
    Path other = temporary.resolve("other");
    RealProgram elsewhere = program.with(Map.of("HOSEWRIGHT_DATA", other.toString()));

    Ended ended = elsewhere.withFilesUpTo(600).run("data", "restore", "monday.zip");

    assertThat(ended.exitCode()).as(ended.err()).isEqualTo(2);
    assertThat(ended.err()).contains("room left").doesNotContain("\tat ");
    assertThat(other.resolve("store.mv.db")).doesNotExist();
    assertThat(other.toFile().list()).noneMatch(name -> name.startsWith("."));
    assertThat(elsewhere.run("data", "restore", "monday.zip").exitCode()).isZero();
    assertThat(elsewhere.run("quote", "list", "--json").out())
        .isEqualTo(program.run("quote", "list", "--json").out());
  }

  @Test
  void a_backup_into_a_folder_that_cannot_be_written_is_told() {
    haveAQuote();

    Ended ended = program.run("data", "backup", "/proc/monday.zip");

    assertThat(ended.exitCode()).as(ended.err()).isEqualTo(2);
    assertThat(ended.err()).contains("/proc/monday.zip").contains("can be written to");
  }

  @Test
  void a_folder_that_cannot_be_written_is_told() {
    Ended ended = program.run("quote", "list", "--data", "/proc/hosewright");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("/proc/hosewright");
  }

  @Test
  void a_store_damaged_anywhere_is_never_taken_for_another_and_its_backup_is_named()
      throws IOException {
    haveAQuote();
    String whole = program.run("quote", "list", "--json").out();
    assertThat(program.run("data", "backup").exitCode()).isZero();
    byte[] sound = Files.readAllBytes(program.data().resolve("store.mv.db"));
    SplittableRandom random = new SplittableRandom(20261106);

    for (int i = 0; i < 3; i++) {
      damage(sound, random, i);
      Ended ended = program.run("quote", "list", "--json");
      if (ended.exitCode() == 0) {
        assertThat(ended.out()).isEqualTo(whole);
      } else {
        assertThat(ended.exitCode()).as(ended.err()).isEqualTo(2);
        assertThat(ended.err()).contains("data restore");
      }
    }
    String backup =
        OneDocument.in(program.run("data", "where", "--json").out()).get("lastBackup").asString();
    assertThat(program.run("data", "restore", backup).exitCode()).isZero();
    assertThat(program.run("quote", "list", "--json").out()).isEqualTo(whole);
  }

  /** A stretch overwritten, the head overwritten, the tail cut off. */
  private void damage(byte[] sound, SplittableRandom random, int how) throws IOException {
    Path store = Files.write(program.data().resolve("store.mv.db"), sound);
    try (RandomAccessFile file = new RandomAccessFile(store.toFile(), "rw")) {
      byte[] rubbish = new byte[8192];
      random.nextBytes(rubbish);
      switch (how) {
        case 0 -> file.seek(8192 + random.nextInt(sound.length - 16_384));
        case 1 -> file.seek(0);
        default -> {
          file.setLength(sound.length / 2);
          return;
        }
      }
      file.write(rubbish);
    }
  }

  private void haveAQuote() {
    LoadedBooks.copy(quoted, program);
  }

  private static Ended quote(RealProgram program) {
    return program.run(
        "quote",
        "make",
        "--json",
        "--job",
        JOB.toString(),
        "--customer",
        "COUNTER",
        "--size",
        "1.75in",
        "--hose-thread",
        "NH");
  }
}
