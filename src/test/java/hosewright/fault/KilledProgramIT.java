package hosewright.fault;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.LoadedBooks;
import hosewright.door.shell.run.OneDocument;
import hosewright.door.shell.run.RealProgram;
import hosewright.door.shell.run.RealProgram.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * The built program is killed, without a chance to tidy up, in the middle of loading, quoting,
 * ordering and exporting, and started again on the same books.
 */
final class KilledProgramIT {
  private static final long SEED = 20261105;
  private static final Path JOB = Path.of("quotes/hydrant-to-nozzle.yaml").toAbsolutePath();
  private static final Path DEMO = Path.of("catalogue").toAbsolutePath();
  private static final Pattern TOLD = Pattern.compile("Quote (Q-\\d{6}) revision 1, draft");
  private static final Pattern RAISED = Pattern.compile("(O-\\d{6})");

  @TempDir private Path temporary;
  private RealProgram program;
  private Path work;
  private Path dearer;
  private int kept;
  private final Set<String> told = new HashSet<>();
  private final Set<String> ordered = new HashSet<>();

  @BeforeEach
  void load_the_books() throws IOException {
    work = Files.createDirectory(temporary.resolve("work"));
    program = RealProgram.installed(work);
    dearer = Files.createDirectory(temporary.resolve("dearer"));
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String text = Files.readString(file);
        Files.writeString(
            dearer.resolve(file.getFileName()),
            file.endsWith("items.csv") ? text.replace("Attack", "Assault") : text);
      }
    }
    LoadedBooks.putInto(program);
  }

  @Test
  void what_was_told_is_kept_and_nothing_is_half_done_after_two_kills() throws Exception {
    kill(2);
  }

  @Test
  @Tag("long")
  void what_was_told_is_kept_and_nothing_is_half_done_after_three_hundred_kills() throws Exception {
    kill(300);
  }

  private void kill(int times) throws Exception {
    SplittableRandom random = new SplittableRandom(SEED);
    int inTheMiddle = 0;
    for (int round = 0; round < times; round++) {
      Path script = script(random);
      Path said = temporary.resolve("said");
      Process running = program.start(said, "@" + script);
      // Counted from the first answer on, so that the kill meets work and not the start.
      awaitFirstAnswer(running, said);
      boolean ended = running.waitFor(random.nextInt(2_000), TimeUnit.MILLISECONDS);
      running.destroyForcibly().waitFor();
      inTheMiddle += ended ? 0 : 1;
      String text = Files.readString(said);
      assertThat(text).as("seed %d, round %d", SEED, round).doesNotContain("Hosewright failed");
      collect(TOLD, text, told);
      collect(RAISED, text, ordered);
      everythingHolds("seed %d, round %d: %s".formatted(SEED, round, text));
    }
    assertThat(inTheMiddle).as("kills that met a running program").isPositive();
    assertThat(told).as("quotes that somebody was told of").isNotEmpty();
  }

  /** Looks at the books after a start of their own, as the next person would. */
  private void everythingHolds(String round) throws IOException {
    List<JsonNode> answers = answers();
    List<String> numbers = numbers(answers.get(0).get("quotes"));
    assertThat(numbers).as(round).containsAll(told);
    assertThat(numbers)
        .as(round)
        .containsExactlyInAnyOrderElementsOf(
            IntStream.rangeClosed(1, numbers.size()).mapToObj("Q-%06d"::formatted).toList());
    assertThat(numbers(answers.get(1).get("orders"))).as(round).containsAll(ordered);
    assertThat(answers.get(2).get("balanced").asBoolean()).as(round).isTrue();
    // Every item is of one and the same load.
    String items = answers.get(3).toString();
    assertThat(items.contains("Attack")).as(round).isNotEqualTo(items.contains("Assault"));
    kept = numbers.size();
    papersAreWhole();
  }

  private List<JsonNode> answers() throws IOException {
    Path questions =
        Files.write(
            temporary.resolve("questions"),
            List.of("quote list", "order list", "order stock", "catalogue find attack assault"));
    Ended ended = program.run("@" + questions, "--json");
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    return OneDocument.each(ended.out());
  }

  private static List<String> numbers(JsonNode list) {
    return list.valueStream().map(one -> one.get("number").asString()).toList();
  }

  private void papersAreWhole() throws IOException {
    try (Stream<Path> files = Files.list(work)) {
      for (Path file : files.filter(name -> name.toString().endsWith(".xlsx")).toList()) {
        try (ZipFile workbook = new ZipFile(file.toFile())) {
          assertThat(workbook.getEntry("xl/workbook.xml")).isNotNull();
        }
      }
    }
  }

  private Path script(SplittableRandom random) throws IOException {
    List<String> lines = new ArrayList<>();
    for (int i = 1; i <= 6; i++) {
      String number = "Q-%06d".formatted(kept + i);
      lines.add(
          "quote make --job '%s' --customer COUNTER --size 1.75in --hose-thread NH".formatted(JOB)
              + (random.nextBoolean() ? " --export workbook" : ""));
      lines.add("quote issue " + number);
      lines.add("quote accept " + number + " --note yes");
      lines.add("order raise " + number);
      lines.add("quote export " + number + " --as workbook --overwrite");
      lines.add("catalogue load '%s'".formatted(random.nextBoolean() ? dearer : DEMO));
    }
    return Files.write(temporary.resolve("script"), lines);
  }

  private static void awaitFirstAnswer(Process running, Path said) throws Exception {
    while (running.isAlive() && Files.size(said) == 0) {
      Thread.sleep(10);
    }
  }

  private static void collect(Pattern pattern, String text, Set<String> found) {
    Matcher matcher = pattern.matcher(text.substring(0, text.lastIndexOf('\n') + 1));
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
  }
}
