package hosewright.door.shell.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Questions about the demo catalogue; none of them changes the books. */
final class CatalogueCommandsTest {
  private static final Path DEMO = Path.of("catalogue");

  @TempDir private static Path data;
  @TempDir private Path folder;
  private static CommandTrial shell;

  @BeforeAll
  static void open() {
    shell = trial(data);
  }

  private static CommandTrial trial(Path data) {
    return CommandTrial.of(
        data,
        trial -> {
          var books = DemoBooks.of(trial);
          return List.of(
              new CatalogueLoadCommand(books, trial.notices()),
              new CatalogueCheckCommand(trial.notices()),
              new CatalogueFindCommand(books),
              new CatalogueShowCommand(books),
              new CatalogueHistoryCommand(books));
        });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          2.5 nh female swivel 1.5 nh male | A-25NHFS-15NHM
          1.5 nst m 2-1/2 nst fs adapter   | A-25NHFS-15NHM
          attack hose 50 1-3/4             | H175-DJ-50-15NH
          attack hose 50' 1.75"            | H175-DJ-50-15NH
          attack hose 1 3/4 50ft nh        | H175-DJ-50-15NH
          atack hoses 1¾ 50 ft             | H175-DJ-50-15NH
          h175-dj-50-15nh                  | H175-DJ-50-15NH
          175-DJ-50-15NP                   | H175-DJ-50-15NPSH
          spaner wrench forestry           | W-SPAN-1
          """)
  void what_somebody_remembers_of_an_item_finds_it_first(String words, String item) {
    JsonNode found = shell.run("catalogue", "find", words, "--json").json();

    assertThat(found.get("whole").asBoolean()).isTrue();
    assertThat(found.get("items").get(0).get("item").asString()).isEqualTo(item);
  }

  @Test
  void every_item_found_for_two_ends_has_both() {
    JsonNode found =
        find("2.5", "nh", "female", "swivel", "1.5", "nh", "male", "--kind", "adapter");

    assertThat(found.get("count").asInt()).isEqualTo(found.get("items").size());
    assertThat(found.get("items"))
        .allSatisfy(
            item ->
                assertThat(item.get("ends").toString()).contains("2.5 NH female", "1.5 NH male"));
  }

  @Test
  void an_end_asked_for_twice_must_be_there_twice() {
    JsonNode found = find("2.5 NH male 2.5 NH male");

    assertThat(found.get("items"))
        .isNotEmpty()
        .allSatisfy(
            item ->
                assertThat(item.get("ends").valueStream().map(JsonNode::asString))
                    .filteredOn("2.5 NH male"::equals)
                    .hasSizeGreaterThan(1));
  }

  @Test
  void a_count_is_said_with_the_best_few_and_more_can_be_asked_for() {
    Ended few = shell.run("catalogue", "find", "hose", "--most", "3");
    JsonNode more = find("hose", "--most", "1000");

    assertThat(few.out()).contains("The best 3 of").contains("--most N shows more");
    assertThat(more.get("items")).hasSize(more.get("count").asInt()).hasSizeGreaterThan(100);
  }

  @Test
  void when_no_item_has_everything_those_with_most_are_shown_and_said_to_be_so() {
    Ended ended = shell.run("catalogue", "find", "attack", "hose", "77ft");

    assertThat(ended.out()).contains("No item has all of attack + hose + 77 ft");
    assertThat(find("zzzzqqq").get("count").asInt()).isZero();
  }

  @Test
  void a_kind_nobody_knows_and_a_count_that_is_none_are_refused_together() {
    Ended ended = shell.run("catalogue", "find", "x", "--kind", "adaptor", "--most", "0");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("Did you mean 'adapter'?").contains("most cannot be '0'");
  }

  @Test
  void cost_and_margin_are_shown_only_to_those_who_ask_for_them() {
    Ended plain = shell.run("catalogue", "show", "A-25NHF-15NHM");
    JsonNode plainJson = shell.run("catalogue", "show", "A-25NHF-15NHM", "--json").json();
    JsonNode internal =
        shell.run("catalogue", "show", "a-25nhf-15nhm", "--internal", "--json").json();

    assertThat(plain.out()).doesNotContain("15.05").doesNotContainIgnoringCase("margin");
    assertThat(plainJson.get("costs").isNull()).isTrue();
    assertThat(plainJson.get("prices")).hasSize(3);
    // (22.25 - 15.05) / 22.25 by hand.
    assertThat(internal.get("costs").get(0).get("margin").asDouble()).isEqualTo(0.323595);
  }

  @Test
  void a_cost_in_another_currency_gives_no_margin_but_says_why() throws IOException {
    String item =
        Files.readAllLines(DEMO.resolve("costs.csv")).stream()
            .filter(row -> row.endsWith(",CAD") && row.contains(",2026-01-01,,"))
            .map(row -> row.substring(0, row.indexOf(',')))
            .findFirst()
            .orElseThrow();

    JsonNode cost =
        shell.run("catalogue", "show", item, "--internal", "--json").json().get("costs").get(0);

    assertThat(cost.get("margin").isNull()).isTrue();
    assertThat(cost.get("unknownBecause").get(0).asString())
        .isEqualTo("the cost is in CAD and the price in USD");
  }

  @Test
  void an_item_nobody_knows_is_refused_with_the_nearest() {
    Ended ended = shell.run("catalogue", "show", "A-25NHF-15NHN");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("Did you mean 'A-25NHF-15NHM'?");
  }

  @Test
  void a_dry_run_shows_the_difference_and_writes_nothing_and_the_load_then_makes_it()
      throws IOException {
    CommandTrial own = trial(folder.resolve("data"));
    Path next = copy();
    change(
        next,
        "prices.csv",
        "A-25NHF-15NHM,2026-01-01,,1,22.25",
        "A-25NHF-15NHM,2026-01-01,,1,24.03");
    change(next, "items.csv", "W-SPAN-1,", "W-SPAN-1B,");
    change(next, "prices.csv", "W-SPAN-1,", "W-SPAN-1B,");
    change(next, "costs.csv", "W-SPAN-1,", "W-SPAN-1B,");
    own.run("catalogue", "load", DEMO.toString());

    JsonNode dry = own.run("catalogue", "load", next.toString(), "--dry-run", "--json").json();
    JsonNode again = own.run("catalogue", "load", next.toString(), "--dry-run", "--json").json();
    Ended text = own.run("catalogue", "load", next.toString(), "--dry-run");

    assertThat(dry).isEqualTo(again);
    assertThat(dry.get("written").asBoolean()).isFalse();
    assertThat(dry.get("changed").get("added").get(0).asString()).isEqualTo("W-SPAN-1B");
    assertThat(dry.get("changed").get("dropped").get(0).asString()).isEqualTo("W-SPAN-1");
    JsonNode price = dry.get("changed").get("prices").get(0);
    // 24.03 is 8 % more than 22.25.
    assertThat(price.get("percent").asDouble()).isEqualTo(8.0);
    assertThat(text.out()).contains("+8.0 %").contains("1 added, 1 no longer listed");
    own.run("catalogue", "load", next.toString());
    JsonNode history = own.run("catalogue", "history", "A-25NHF-15NHM", "--json").json();
    assertThat(history.get("prices"))
        .anySatisfy(
            row -> {
              assertThat(row.get("price").get("unitPrice").asString()).isEqualTo("22.25 USD");
              assertThat(row.get("replacedBy").get("number").asInt()).isEqualTo(2);
            })
        .anySatisfy(
            row -> {
              assertThat(row.get("price").get("unitPrice").asString()).isEqualTo("24.03 USD");
              assertThat(row.get("broughtBy").get("source").asString()).isEqualTo(next.toString());
            });
    assertThat(own.run("catalogue", "history", "W-SPAN-1").out()).contains("no longer listed");
    assertThat(own.run("catalogue", "show", "W-SPAN-1").exitCode()).isEqualTo(2);
  }

  @Test
  void a_check_reads_as_a_load_would_and_makes_no_books() {
    Path untouched = folder.resolve("none");

    Ended ended = trial(untouched).run("catalogue", "check", DEMO.toString());

    assertThat(ended.exitCode()).isZero();
    assertThat(ended.out()).startsWith("Nothing is wrong: 950 items");
    assertThat(ended.out()).doesNotContain("Not said");
    assertThat(untouched).doesNotExist();
  }

  @Test
  void a_check_of_a_file_from_before_the_later_columns_counts_what_it_does_not_say()
      throws IOException {
    Path old = folder.resolve("old");
    Files.createDirectories(old);
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, old.resolve(file.getFileName()));
      }
    }
    Files.writeString(
        old.resolve("items.csv"),
        """
        number,kind,description,ends,unit,weight_lb,material,fluids,working_psi,service_test_psi,\
        derating,vacuum_inhg,hose_size_in,length_ft,series,friction_coefficient,bore_in,bowl_in,\
        wave_speed_ft_s,loss_k,appliance_loss_psi,opening_in,k_factor,drinking_water,discontinued,\
        marked_to,gaskets_fitted,supplier,pack,lead_days,on_hand
        Y-25-15-G,wye,Gated wye,2.5 NH female swivel x 1.5 NH male x 1.5 NH male,each,7,,water,300,,\
        ,,,,,,,,,,10,,,no,no,NFPA 1963,yes,COUPL,1,14,3
        """);
    for (String table : List.of("prices.csv", "costs.csv", "contract-prices.csv")) {
      List<String> rows = Files.readAllLines(old.resolve(table));
      Files.write(
          old.resolve(table),
          Stream.concat(
                  rows.stream().limit(1),
                  rows.stream().skip(1).filter(row -> row.contains("Y-25-15-G,")))
              .toList());
    }

    Ended ended = trial(folder.resolve("none")).run("catalogue", "check", old.toString());

    assertThat(ended.exitCode()).isZero();
    assertThat(ended.out())
        .startsWith("Nothing is wrong: 1 items")
        .contains("Not said, and what that costs:")
        .contains("gated: 1 of 1 (wye, siamese) leave it empty");
  }

  @Test
  void of_very_many_bad_rows_the_first_are_shown_with_a_count() throws IOException {
    Path next = copy();
    change(next, "items.csv", ",water,", ",water;,");

    Ended capped = shell.run("catalogue", "check", next.toString());
    Ended all = shell.run("catalogue", "check", next.toString(), "--all");

    assertThat(capped.err().lines()).hasSize(51);
    assertThat(capped.err()).contains("more problems: --all shows them, --report FILE writes them");
    assertThat(all.err().lines()).hasSizeGreaterThan(500);
  }

  private Path copy() throws IOException {
    Path next = Files.createDirectories(folder.resolve("next"));
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.toList()) {
        Files.copy(file, next.resolve(file.getFileName()));
      }
    }
    return next;
  }

  private static void change(Path folder, String file, String piece, String replacement)
      throws IOException {
    Path changed = folder.resolve(file);
    String text = Files.readString(changed);
    assertThat(text).contains(piece);
    Files.writeString(changed, text.replace(piece, replacement));
  }

  private static JsonNode find(String... words) {
    return shell
        .run(
            Stream.of(Stream.of("catalogue", "find"), Stream.of(words), Stream.of("--json"))
                .flatMap(all -> all)
                .toArray(String[]::new))
        .json();
  }
}
