package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.PostgresCluster;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Books kept by the version before a plan knew its parts: a data folder and a server's dump with
 * thirteen quotes and three orders, and what that version showed and exported of them.
 */
final class KeptBooksTest {
  private static final String KEPT = "/hosewright/kept/form1/";
  private static final List<String> QUOTES =
      IntStream.rangeClosed(1, 13).mapToObj(String::valueOf).toList();
  private static final List<String> WATER =
      List.of(
          "flowGpm",
          "needPsi",
          "requiredSourcePsi",
          "deliveredPsi",
          "frictionLossPsi",
          "elevationLossPsi",
          "adapterLossPsi",
          "applianceLossPsi");

  @TempDir Path data;
  @TempDir Path out;
  private CommandTrial desk;

  @BeforeEach
  void open() throws IOException {
    for (Map.Entry<String, byte[]> file : unzipped("books.zip").entrySet()) {
      Files.write(data.resolve(file.getKey()), file.getValue());
    }
    desk = desk(Map.of());
  }

  private CommandTrial desk(Map<String, String> environment) {
    WallClock clock = new WallClock("2026-11-30");
    return CommandTrial.of(data, environment, trial -> AllCommands.of(trial, clock));
  }

  @Test
  void every_quote_kept_before_shows_what_it_showed_then() throws IOException {
    showsWhatItShowed(desk);
  }

  @Test
  void on_a_server_too() throws IOException {
    PostgresCluster server = PostgresCluster.shared();
    String database = "kept_form1";
    server.execute(
        "CREATE DATABASE " + database + " TEMPLATE template0 ENCODING 'UTF8' LOCALE 'C'");
    try (InputStream in =
        new GZIPInputStream(KeptBooksTest.class.getResourceAsStream(KEPT + "books.sql.gz"))) {
      server.executeIn(database, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    showsWhatItShowed(desk(server.environment(database)));
  }

  private static void showsWhatItShowed(CommandTrial desk) throws IOException {
    Map<String, byte[]> shown = unzipped("shown.zip");
    for (String quote : QUOTES) {
      JsonNode then = JsonMapper.shared().readTree(shown.get("show-" + quote + ".json"));
      JsonNode now = done(desk, "quote", "show", quote);
      // A name added since: the group that a line belongs to, of which these quotes have one.
      now.path("lines")
          .forEach(line -> assertThat(((ObjectNode) line).remove("group")).hasToString("1"));
      for (String name : List.of("number", "revision", "status", "lines", "subtotal", "total")) {
        assertThat(now.path(name)).as(quote + " " + name).isEqualTo(then.path(name));
      }
      samePlan(quote, now.path("plan"), then.path("plan"));
    }
  }

  private static void samePlan(String quote, JsonNode now, JsonNode then) {
    assertThat(now.path("form").asInt()).isEqualTo(2);
    for (String name : List.of("feasible", "limitedBy", "summary", "total", "profile", "items")) {
      assertThat(now.path(name)).as(quote + " " + name).isEqualTo(then.path(name));
    }
    for (String name : WATER) {
      assertThat(now.path(name).asDouble())
          .as(quote + " " + name)
          .isEqualTo(then.path(name).asDouble());
    }
    assertThat(figures(now.path("checks"), "name", "outcome", "value", "limit"))
        .isEqualTo(figures(then.path("checks"), "name", "outcome", "value", "limit"));
    assertThat(figures(now.path("joints"), "upstream", "downstream", "count", "verdict", "seal"))
        .isEqualTo(
            figures(then.path("joints"), "upstream", "downstream", "count", "verdict", "seal"));
    assertThat(laidFt(now)).as(quote + " hose").isEqualTo(laidThenFt(then), within(1e-9));
    // What flows into the first leg is what the profile shows at the source.
    assertThat(now.path("legs").path(0).path("inletPsi").asDouble())
        .isEqualTo(then.path("profile").path(0).path("flowingPsi").asDouble());
  }

  private static List<String> figures(JsonNode rows, String... names) {
    return rows.valueStream()
        .map(
            row ->
                Arrays.stream(names).map(name -> row.path(name).asString("")).toList().toString())
        .toList();
  }

  private static double laidFt(JsonNode plan) {
    return plan.path("legs")
        .valueStream()
        .mapToDouble(
            leg ->
                leg.path("lines").asInt()
                    * leg.path("parts")
                        .valueStream()
                        .mapToDouble(p -> p.path("lengthFt").asDouble() * p.path("count").asInt())
                        .sum())
        .sum();
  }

  private static double laidThenFt(JsonNode plan) {
    return Stream.of(
            plan.path("sections"), plan.path("layout").path("attackLines").path("sections"))
        .flatMap(JsonNode::valueStream)
        .mapToDouble(s -> s.path("lengthFt").asDouble() * s.path("count").asInt())
        .sum();
  }

  @Test
  void every_quote_kept_before_exports_the_lines_it_exported_then() throws IOException {
    Map<String, byte[]> shown = unzipped("shown.zip");
    for (String quote : QUOTES) {
      JsonNode exported =
          done(desk, "quote", "export", quote, "--as", "csv,workbook", "--out", "" + out);
      assertThat(exported.path("files").size()).as(quote).isEqualTo(2);
    }
    shown.forEach(
        (name, bytes) -> {
          if (name.endsWith(".csv")) {
            assertThat(out.resolve(name)).as(name).hasBinaryContent(bytes);
          }
        });
  }

  @Test
  void one_is_revised_issued_accepted_and_ordered_without_being_planned_anew() {
    JsonNode revised =
        done(desk, "quote", "revise", "9", "--note", "by the quay", "--reason", "a note");
    JsonNode quote = revised.path("quote");
    assertThat(quote.path("revision").asInt()).isEqualTo(2);
    assertThat(quote.path("total").asString()).isEqualTo("5653.76 USD");
    done(desk, "quote", "issue", "9");
    done(desk, "quote", "accept", "9");
    assertThat(done(desk, "order", "raise", "9").toString()).contains("O-000004");
  }

  @Test
  void the_bench_makes_what_the_order_sells_and_leaves_the_customers_hose_alone() {
    JsonNode picked = done(desk, "order", "pick", "1");
    JsonNode make = picked.path("bench").path("makes").path(0);
    assertThat(make.path("count").asInt()).isEqualTo(1);
    assertThat(make.path("cutFt").asInt()).isEqualTo(101);
    assertThat(picked.path("bench").path("labels").size()).isEqualTo(1);
    assertThat(picked.path("slip").toString()).doesNotContain("bought in");
  }

  @Test
  void labels_follow_a_quantity_set_by_hand_and_the_paper_says_where_the_drawing_does_not() {
    JsonNode picked = done(desk, "order", "pick", "2");
    assertThat(picked.path("bench").path("labels").size()).isEqualTo(30);
    assertThat(picked.path("slip").toString()).contains("30 sold, 9 planned");
  }

  private static JsonNode done(CommandTrial desk, String... words) {
    Ended ended =
        desk.run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
    assertThat(ended.exitCode()).as(String.join(" ", words) + ": " + ended.err()).isZero();
    return ended.json();
  }

  private static Map<String, byte[]> unzipped(String name) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (ZipInputStream in =
        new ZipInputStream(KeptBooksTest.class.getResourceAsStream(KEPT + name))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        files.put(entry.getName(), in.readAllBytes());
      }
    }
    return files;
  }
}
