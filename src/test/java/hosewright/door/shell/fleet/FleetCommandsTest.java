package hosewright.door.shell.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The invented hose of Port Harlow, from inventory to quote. */
final class FleetCommandsTest {
  private static final String DEMO = "catalogue/fleet";

  /** Books with the demo hose and the demo catalogue, made once and copied for each test. */
  @TempDir private static Path template;

  @TempDir private Path data;
  @TempDir private Path papers;
  private CommandTrial shell;

  private static CommandTrial shell(Path folder) {
    return CommandTrial.of(
        folder,
        trial -> {
          var books = DemoBooks.of(trial);
          return List.of(
              new FleetLoadCommand(books),
              new FleetStatusCommand(books),
              new FleetTestCommand(books),
              new FleetRetireCommand(books),
              new FleetTraceCommand(books),
              new FleetBudgetCommand(books));
        });
  }

  @BeforeAll
  static void loadOnce() {
    CommandTrial first = shell(template);
    Ended loaded = first.run("fleet", "load", DEMO, "--json");
    assertThat(loaded.json().get("sections").asInt()).as(loaded.err()).isEqualTo(164);
    assertThat(first.run("fleet", "budget", "--json").exitCode()).isZero();
  }

  @BeforeEach
  void copyBooks() throws IOException {
    try (Stream<Path> files = Files.list(template)) {
      for (Path file : files.toList()) {
        Files.copy(file, data.resolve(file.getFileName()));
      }
    }
    shell = shell(data);
  }

  private JsonNode json(String... words) {
    Ended ended = shell.run(words);
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    return ended.json();
  }

  @Test
  void the_demo_agency_s_day_from_inventory_to_quote() {
    JsonNode status = json("fleet", "status", "--json");
    assertThat(status.get("sections").asInt()).isEqualTo(164);
    assertThat(sum(status.get("byStatus"))).isEqualTo(164);
    assertThat(sum(status.get("byLocation"))).isEqualTo(status.get("usable").asLong());
    assertThat(status.get("odd").valueStream().map(odd -> odd.get("ends").toString()))
        .singleElement()
        .asString()
        .contains("1.5 NPSH");
    assertThat(status.get("gaps").valueStream().map(gap -> gap.get("apparatus").asString()))
        .contains("Brush 3", "Engine 1");

    JsonNode tested = json("fleet", "test", DEMO + "/test-day", "--json");
    assertThat(tested.get("records").asInt()).isEqualTo(7);
    JsonNode change = tested.get("changes").get(0);
    assertThat(change.get("section").asString()).isEqualTo("PH-0092");
    assertThat(change.get("retirement").get("rule").asString()).isEqualTo("leak");
    assertThat(json("fleet", "test", DEMO + "/test-day", "--json").get("alreadyOnFile").asInt())
        .isEqualTo(7);

    JsonNode trace = json("fleet", "trace", "PH-0092", "--json");
    assertThat(trace.get("left").get("date").asString()).isEqualTo("2026-10-30");
    assertThat(trace.get("left").get("source").asString()).contains("NFPA 1962");

    JsonNode made =
        json(
            "fleet",
            "budget",
            "--escalation",
            "4%",
            "--overdue",
            "10",
            "--quote",
            "HARLOW-FD",
            "--workbook",
            "--out",
            papers.toString(),
            "--json");
    JsonNode first = made.get("budget").get("ageLimit").get("years").get(0);
    assertThat(made.get("quote").asString()).isEqualTo("Q-000001");
    assertThat(made.get("budget").get("unpriced")).isEmpty();
    assertThat(papers.resolve("hose-budget-2026-11-02.xlsx")).isNotEmptyFile();
    assertThat(first.get("sections").asDouble()).isPositive();
    assertThat(made.get("budget").get("survival").get("reason").asString()).isEmpty();
    assertThat(made.get("budget").get("level").get("years").valueStream())
        .allMatch(year -> year.get("overdue").asInt() <= 10);
  }

  private static long sum(JsonNode counts) {
    return counts.valueStream().mapToLong(count -> count.get("sections").asLong()).sum();
  }

  @Test
  void what_the_rules_retire_is_shown_first_and_kept_with_its_rule() {
    JsonNode shown = json("fleet", "retire", "--by-rules", "--dry-run", "--json");
    JsonNode done = json("fleet", "retire", "--by-rules", "--json");
    assertThat(done.get("changes")).isEqualTo(shown.get("changes"));
    assertThat(done.get("done").asBoolean()).isTrue();
    assertThat(json("fleet", "retire", "--by-rules", "--json").get("changes")).isEmpty();
    for (JsonNode change : done.get("changes")) {
      JsonNode left =
          json("fleet", "trace", change.get("section").asString(), "--json").get("left");
      assertThat(left.get("rule").asString()).isIn("age-limit", "made-before-1987");
      assertThat(left.get("date").asString()).isEqualTo("2026-11-02");
    }
  }

  @Test
  void a_workbook_says_the_same_as_the_text_files() throws IOException {
    JsonNode fromText = json("fleet", "status", "--json");
    Path workbook = papers.resolve("harlow.xlsx");
    writeWorkbook(workbook);
    json("fleet", "load", workbook.toString(), "--replace", "--json");
    assertThat(json("fleet", "status", "--json")).isEqualTo(fromText);
  }

  private static void writeWorkbook(Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      for (String table : List.of("inventory", "records", "outlets", "limits")) {
        var sheet = workbook.createSheet(table);
        int number = 0;
        for (String line : Files.readAllLines(Path.of(DEMO, table + ".csv"))) {
          XSSFRow row = sheet.createRow(number++);
          String[] cells = line.split(",", -1);
          for (int i = 0; i < cells.length; i++) {
            row.createCell(i).setCellValue(cells[i]);
          }
        }
      }
      workbook.write(out);
    }
  }

  @Test
  void loading_the_same_again_changes_nothing() {
    JsonNode before = json("fleet", "status", "--json");
    assertThat(json("fleet", "load", DEMO, "--json").get("records").asInt()).isZero();
    assertThat(json("fleet", "status", "--json")).isEqualTo(before);
  }

  @Test
  void one_bad_row_keeps_everything_out() throws IOException {
    Path folder = copyOfDemo();
    Path inventory = folder.resolve("inventory.csv");
    Files.writeString(
        inventory, Files.readString(inventory).replaceFirst("PH-0002,1.75,", "PH-0002,wide,"));
    CommandTrial empty = shell(Files.createDirectories(papers.resolve("empty")));
    Ended ended = empty.run("fleet", "load", folder.toString());
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("inventory.csv line 3 column size_in").contains("'wide'");
    assertThat(empty.run("fleet", "status").err()).contains("has no hose on record yet");
  }

  private Path copyOfDemo() throws IOException {
    for (String table : List.of("inventory", "records", "outlets", "limits")) {
      Files.copy(Path.of(DEMO, table + ".csv"), papers.resolve(table + ".csv"));
    }
    return papers;
  }

  @Test
  void wrong_options_are_all_named_at_once() {
    Ended ended =
        shell.run("fleet", "budget", "--years", "99", "--escalation", "4", "--overdue", "few");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("years").contains("escalation").contains("overdue");
    assertThat(shell.run("fleet", "trace", "PH-92").err()).contains("Did you mean");
  }

  @Test
  void without_a_limit_and_with_little_history_it_says_what_is_missing() throws IOException {
    Path folder = copyOfDemo();
    Files.delete(folder.resolve("limits.csv"));
    Files.delete(folder.resolve("records.csv"));
    json("fleet", "load", folder.toString(), "--replace", "--json");
    JsonNode budget = json("fleet", "budget", "--json").get("budget");
    assertThat(budget.get("ageLimit").isNull()).isTrue();
    assertThat(budget.get("survival").get("reason").asString()).contains("0 failures");
    assertThat(budget.get("needs")).isEmpty();
    String said = shell.run("fleet", "budget").out().replaceAll("\\s+", " ");
    assertThat(said)
        .contains("No age limit is set")
        .contains("10 years are often advised, which is no rule");
  }

  @Test
  void every_location_s_need_adds_up_to_the_whole() {
    JsonNode budget = json("fleet", "budget", "--years", "6", "--json").get("budget");
    Map<String, Double> whole = new TreeMap<>();
    for (JsonNode need : budget.get("needs")) {
      need.get("sections")
          .valueStream()
          .forEach(n -> whole.merge(need.get("item").asString(), n.asDouble(), Double::sum));
    }
    Map<String, Double> parts = new TreeMap<>();
    for (JsonNode need : budget.get("locations")) {
      need.get("sections")
          .valueStream()
          .forEach(n -> parts.merge(need.get("item").asString(), n.asDouble(), Double::sum));
    }
    assertThat(parts).isEqualTo(whole);
  }
}
