package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.OpenDesk;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.shell.core.command.Command;

/**
 * Every command that writes, with values at the edges of what is legal: what cannot be kept is
 * refused in words, and no rule of the store is what refuses it.
 */
final class LegalValuesTest {
  private static final Path LINES =
      Path.of("src/test/resources/hosewright/door/shell/legal-values.txt");

  /** Commands that put nothing into the store. */
  private static final Set<String> READING =
      Set.of(
          ("end identify, end list, end local, end show, end strip, joint bridge, joint check,"
                  + " kit show, line compare, line flow, line plan, quote diff, quote export,"
                  + " quote history, quote list, quote open, quote show, order list, order pick,"
                  + " order purchase, order shortages, order show, order stock,"
                  + " catalogue check, catalogue find, catalogue history, catalogue show,"
                  + " customer list, customer show, rate list, fleet status, fleet trace,"
                  + " data check, data where")
              .split(", "));

  /**
   * Options of which nothing goes into a row: how a text is read, what is shown, where papers go.
   */
  private static final Set<String> NOT_KEPT =
      Set.of(
          ("out, overwrite, paper, export, report, mapping, map, notes, terms, parts, ask-parts")
              .split(", "));

  @TempDir private Path folder;
  private final Map<String, Integer> done = new TreeMap<>();
  private List<ShellCommand> table;
  private CommandTrial desk;
  private SplittableRandom random;

  @BeforeEach
  void open() throws IOException {
    OpenDesk.putDemoInto(folder.resolve("data"));
    desk =
        CommandTrial.of(
            folder.resolve("data"),
            trial -> {
              List<Command> all = AllCommands.of(trial);
              table = all.stream().map(ShellCommand.class::cast).toList();
              return all;
            });
    Files.createDirectory(folder.resolve("out"));
    List<String> tender = Files.readAllLines(Path.of("quotes/tender-example.csv"));
    Files.write(folder.resolve("tender.csv"), tender.subList(0, 2));
    few(folder.resolve("few"));
  }

  @Test
  void every_command_of_the_table_and_every_value_it_keeps_is_tried_or_named() throws IOException {
    Map<String, List<String>> tried =
        lines().stream().collect(Collectors.groupingBy(this::command, Collectors.toList()));
    Set<String> ofJobs =
        table.stream()
            .filter(command -> command.spec().name().equals("line plan"))
            .flatMap(command -> command.spec().options().stream().map(OptionSpec::name))
            .collect(Collectors.toSet());
    Set<String> known = new TreeSet<>(READING);
    known.addAll(tried.keySet());

    assertThat(known).isEqualTo(new TreeSet<>(table.stream().map(c -> c.spec().name()).toList()));
    assertThat(tried.keySet()).doesNotContainAnyElementsOf(READING);
    for (ShellCommand command : table) {
      String lines = String.join(" ", tried.getOrDefault(command.spec().name(), List.of()));
      if (!lines.isEmpty()) {
        assertThat(command.spec().options().stream().map(OptionSpec::name))
            .as(command.spec().name())
            .allMatch(
                name ->
                    ofJobs.contains(name)
                        || NOT_KEPT.contains(name)
                        || (" " + lines + " ").matches(".*[ \\[{|]--" + name + "[ \\]}|].*"));
      }
    }
  }

  @Test
  void legal_values_are_kept_or_refused_in_words() throws IOException {
    rounds(1);
    assertThat(done.size()).as(done.toString()).isGreaterThan(15);
  }

  @Test
  @Tag("long")
  void two_hundred_rounds_of_legal_values_are_too() throws IOException {
    rounds(200);
    Set<String> never = table.stream().map(one -> one.spec().name()).collect(Collectors.toSet());
    never.removeAll(READING);
    never.removeAll(done.keySet());
    // Books are moved to a server only.
    assertThat(never).as(done.toString()).containsExactly("data move");
  }

  @Test
  void cells_of_a_catalogue_and_of_a_fleet_at_the_edges_are_kept_or_refused_in_words()
      throws IOException {
    edges(30);
  }

  @Test
  @Tag("long")
  void every_cell_at_every_edge_is_too() throws IOException {
    edges(Integer.MAX_VALUE);
  }

  private void rounds(int count) throws IOException {
    List<String> rules = StoreRules.names();
    List<String> lines = lines();
    for (int round = 0; round < count; round++) {
      random = new SplittableRandom(round);
      // What is done with the books as a whole needs them for itself.
      try (Database held = Database.open(folder.resolve("data"))) {
        for (String line : lines) {
          if (!line.startsWith("data ")) {
            tried(line, rules);
          }
        }
      }
      for (String line : lines) {
        if (line.startsWith("data ")) {
          tried(line, rules);
        }
      }
    }
  }

  private void tried(String line, List<String> rules) throws IOException {
    String typed = filledIn(line);
    if (typed.startsWith("quote answers")) {
      answer();
    }
    if (run(typed, rules).exitCode() == 0) {
      done.merge(command(line), 1, Integer::sum);
    }
  }

  private Ended run(String typed, List<String> rules) {
    Ended ended = desk.typed(typed);
    String said = ended.out() + ended.err();
    assertThat(ended.exitCode()).as(typed + "\n" + said).isIn(0, 2, 3);
    assertThat(rules).as(typed + "\n" + said).noneMatch(said::contains);
    return ended;
  }

  /** One way to say a line. */
  private String filledIn(String line) {
    String kept =
        Pattern.compile("\\[([^\\]]*)\\]")
            .matcher(line)
            .replaceAll(part -> random.nextBoolean() ? part.group(1) : "");
    return Pattern.compile("\\{([^}]*)\\}")
        .matcher(kept)
        .replaceAll(this::one)
        .replaceAll("\\bOUT\\b", folder.resolve("out").toString())
        .replaceAll("\\bTENDER\\b", folder.resolve("tender.csv").toString())
        .replaceAll("\\bCATALOGUE\\b", "catalogue")
        .replaceAll("\\bFLEET\\b", folder.resolve("few").toString());
  }

  private String one(MatchResult part) {
    String[] among = part.group(1).split("\\|");
    return among[random.nextInt(among.length)];
  }

  /** Fills in what suppliers were asked, at the edges. */
  private void answer() throws IOException {
    for (String supplier : List.of("COUPL", "BRASS")) {
      Path sheet = folder.resolve("out/Q-000001-ask-" + supplier + ".csv");
      if (Files.exists(sheet)) {
        List<String> rows = new ArrayList<>(Files.readAllLines(sheet));
        for (int i = 1; i < rows.size(); i++) {
          String row = rows.get(i);
          int end = row.lastIndexOf("," + supplier + ",") + supplier.length() + 1;
          rows.set(
              i,
              row.substring(0, end)
                  + filledIn(",{0|0.01|999999999.99},{USD|CAD},{|0|999999999.99},{0|3650},x"));
        }
        Files.write(sheet, rows);
      }
    }
  }

  /** Loads folders in which one cell says something at the edge of what cells may say. */
  private void edges(int count) throws IOException {
    List<String> rules = StoreRules.names();
    List<CellAtTheEdge> all = new ArrayList<>();
    all.addAll(CellAtTheEdge.in(smallCatalogue(), "catalogue load "));
    all.addAll(CellAtTheEdge.in(folder.resolve("few"), "fleet load "));
    random = new SplittableRandom(20261201);
    Set<Integer> chosen = new HashSet<>();
    while (chosen.size() < Math.min(count, all.size())) {
      chosen.add(count < all.size() ? random.nextInt(all.size()) : chosen.size());
    }
    int kept = 0;
    try (Database held = Database.open(folder.resolve("data"))) {
      for (int index : chosen) {
        CellAtTheEdge cell = all.get(index);
        cell.put();
        kept += run(cell.command() + cell.file().getParent(), rules).exitCode() == 0 ? 1 : 0;
        cell.putBack();
      }
    }
    assertThat(kept).as("of " + chosen.size()).isGreaterThan(chosen.size() / 5);
  }

  /** The demo catalogue with four of its goods, one of each sort. */
  private Path smallCatalogue() throws IOException {
    Path small = Files.createDirectory(folder.resolve("small"));
    try (Stream<Path> files = Files.list(Path.of("catalogue"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        List<String> rows = Files.readAllLines(file);
        boolean ofItems = rows.get(0).matches("(number|.*\\bitem),.*");
        Files.write(
            small.resolve(file.getFileName()),
            rows.stream()
                .filter(
                    row ->
                        !ofItems
                            || row.equals(rows.get(0))
                            || row.matches(
                                "(HARLOW-FD,)?(H175-DJ-50-15NH|A-25NHF-15NHM|W-HYD|SVC-FLUSH),.*"))
                .toList());
      }
    }
    return small;
  }

  /** Three sections of the demo fleet, with their records and a day of tests. */
  private static void few(Path to) throws IOException {
    Files.createDirectories(to.resolve("test-day"));
    Path fleet = Path.of("catalogue/fleet");
    for (String name :
        List.of(
            "inventory.csv", "outlets.csv", "limits.csv", "records.csv", "test-day/records.csv")) {
      List<String> rows = Files.readAllLines(fleet.resolve(name));
      Files.write(
          to.resolve(name),
          rows.stream()
              .filter(row -> !row.startsWith("PH-") || row.matches("PH-00(01|02|24),.*"))
              .toList());
    }
  }

  private String command(String line) {
    String[] words = line.split(" ");
    return words[0] + " " + words[1];
  }

  private static List<String> lines() throws IOException {
    return Files.readAllLines(LINES).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .toList();
  }
}
