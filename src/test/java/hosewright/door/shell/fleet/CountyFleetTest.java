package hosewright.door.shell.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.fleet.budget.CountyFleet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** An invented county of 40 stations through load, status, tests, budget and quote. */
final class CountyFleetTest {
  @TempDir private Path data;
  @TempDir private Path files;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell =
        CommandTrial.of(
            data,
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

  @Test
  void a_county_goes_from_inventory_to_quote() throws IOException {
    wholeYear(1_200, 1);
  }

  @Test
  @Tag("long")
  void a_county_of_twelve_thousand_sections_goes_from_inventory_to_quote() throws IOException {
    wholeYear(12_000, 2);
  }

  @Test
  @Tag("long")
  void a_million_sections_load_and_are_budgeted() throws IOException {
    long began = System.nanoTime();
    CountyFleet.Truth truth = CountyFleet.write(files, 400, 1_000_000, 3);
    report("invented", began);
    began = System.nanoTime();
    assertThat(json("fleet", "load", files.toString(), "--json").get("sections").asInt())
        .isEqualTo(1_000_000);
    report("loaded", began);
    began = System.nanoTime();
    JsonNode budget = json("fleet", "budget", "--escalation", "3%", "--json").get("budget");
    report("budgeted", began);
    assertThat(budget.get("survival").get("failures").asInt()).isEqualTo(truth.worn());
    assertThat(budget.get("survival").get("shape").asDouble())
        .isCloseTo(CountyFleet.LAW.shape(), within(0.1));
  }

  /** Said and not asserted: how long it takes is the machine's business. */
  private void report(String what, long began) throws IOException {
    Runtime runtime = Runtime.getRuntime();
    long store =
        Files.exists(data.resolve("store.mv.db")) ? Files.size(data.resolve("store.mv.db")) : 0;
    System.out.printf(
        "%s in %.0f s; heap %,d MB in use of %,d MB; store %,d MB%n",
        what,
        (System.nanoTime() - began) / 1e9,
        (runtime.totalMemory() - runtime.freeMemory()) >> 20,
        runtime.totalMemory() >> 20,
        store >> 20);
  }

  private void wholeYear(int sections, long seed) throws IOException {
    CountyFleet.Truth truth = CountyFleet.write(files, 40, sections, seed);
    assertThat(json("fleet", "load", files.toString(), "--json").get("sections").asInt())
        .isEqualTo(sections);

    JsonNode status = json("fleet", "status", "--json");
    int out = truth.worn() + truth.lost();
    assertThat(status.get("usable").asInt()).isEqualTo(sections - out);
    assertThat(status.get("byLocation")).hasSize(40);
    assertThat(status.get("odd").valueStream().map(odd -> odd.get("ends").toString()))
        .singleElement()
        .asString()
        .contains("2.5 NPSH");
    assertThat(status.get("gaps")).hasSizeGreaterThan(0);

    String overdue = status.get("overdue").get(0).get("section").asString();
    JsonNode tested = test(overdue, "coupling-slip");
    assertThat(tested.get("changes").get(0).get("retirement").get("rule").asString())
        .isEqualTo("coupling-slip");

    JsonNode retired = json("fleet", "retire", "--by-rules", "--json").get("changes");
    assertThat(retired).isNotEmpty();
    JsonNode left =
        json("fleet", "trace", retired.get(0).get("section").asString(), "--json").get("left");
    assertThat(left.get("rule").asString()).isEqualTo("age-limit");

    JsonNode made =
        json(
            "fleet",
            "budget",
            "--age-limit",
            "12",
            "--escalation",
            "3%",
            "--overdue",
            "25",
            "--quote",
            "HARLOW-FD",
            "--json");
    JsonNode survival = made.get("budget").get("survival");
    assertThat(survival.get("scaleYears").asDouble())
        .isCloseTo(CountyFleet.LAW.scaleYears(), within(1.5));
    // 2.5 NPSH hose of 50 ft is in the catalogue as all else is.
    assertThat(made.get("budget").get("unpriced")).isEmpty();
    assertThat(made.get("quote").asString()).isEqualTo("Q-000001");
  }

  private JsonNode test(String section, String outcome) throws IOException {
    Path day = Files.createDirectories(files.resolve("day"));
    Files.writeString(
        day.resolve("records.csv"),
        "section,date,outcome,test_psi,hold_min,length_ft,note\n"
            + section
            + ",2026-11-02,"
            + outcome
            + ",300,,,\n");
    return json("fleet", "test", day.toString(), "--json");
  }

  private JsonNode json(String... words) {
    Ended ended = shell.run(words);
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    return ended.json();
  }
}
