package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.LoadedBooks;
import hosewright.door.shell.run.OneDocument;
import hosewright.door.shell.run.RealProgram;
import hosewright.door.shell.run.RealProgram.Ended;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The main job through the built program: from an empty data folder to a priced workbook. */
final class MainJobIT {
  private static final Path JOBS = Path.of("quotes").toAbsolutePath();
  private static final Path DEMO = Path.of("catalogue").toAbsolutePath();

  @TempDir private Path temporary;
  private RealProgram program;
  private Path work;

  @BeforeEach
  void stand_in_an_empty_folder() throws IOException {
    work = Files.createDirectory(temporary.resolve("work"));
    program = RealProgram.installed(work);
  }

  private static String[] counterJob(String... more) {
    return Stream.concat(
            Stream.of(
                "line",
                "plan",
                "--json",
                "--from",
                "2.5 NH male hydrant",
                "--to",
                "1.5 NH nozzle",
                "--length",
                "400ft",
                "--flow",
                "150gpm",
                "--need",
                "50psi",
                "--section",
                "50ft",
                "--size=1.75in",
                "--friction-coefficient",
                "15.5"),
            Stream.of(more))
        .toArray(String[]::new);
  }

  @Test
  void every_demo_job_becomes_a_workbook_and_the_numbers_run_without_a_gap() throws IOException {
    List<Path> jobs;
    try (Stream<Path> files = Files.list(JOBS)) {
      jobs = files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
    assertThat(jobs).hasSizeGreaterThanOrEqualTo(6);
    StringBuilder script = new StringBuilder();
    for (int i = 0; i < jobs.size(); i++) {
      script.append("quote make --customer COUNTER --job \"").append(jobs.get(i)).append("\"\n");
      script.append("quote export Q-00000").append(i + 1).append(" --out .\n");
    }
    Ended ended = program.runWith(script.toString());
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    for (int i = 1; i <= jobs.size(); i++) {
      byte[] workbook = Files.readAllBytes(work.resolve("Q-00000" + i + "-r1.xlsx"));
      assertThat(new String(workbook, 0, 2, StandardCharsets.US_ASCII)).isEqualTo("PK");
    }
  }

  @Test
  void a_plan_answers_with_the_names_scripts_rely_on() {
    LoadedBooks.putInto(program);
    Ended ended = program.run(counterJob());
    assertThat(ended.exitCode()).isZero();
    JsonNode plan = OneDocument.in(ended.out());
    assertThat(plan.path("feasible").asBoolean()).isTrue();
    assertThat(plan.path("limitedBy").isNull()).isTrue();
    assertThat(plan.path("form").asInt()).isEqualTo(2);
    JsonNode leg = plan.path("legs").path(0);
    assertThat(leg.path("sizeIn").asDouble()).isEqualTo(1.75);
    assertThat(leg.path("couplingSizeIn").asDouble()).isEqualTo(1.5);
    assertThat(leg.path("parts").path(0).path("role").asString()).isEqualTo("adapter");
    assertThat(leg.path("parts").path(1).path("lengthFt").asDouble()).isEqualTo(50);
    assertThat(plan.path("appliances").path(0).path("flowGpm").asDouble()).isEqualTo(150);
    assertThat(plan.path("checks").path(0).path("id").asString()).isEqualTo("joints-mate");
    assertThat(plan.path("sections").path(0).path("count").asInt()).isEqualTo(9);
    assertThat(plan.path("joints").path(0).path("upstream").asString()).isEqualTo("2.5 NH male");
    assertThat(plan.path("joints").path(0).path("verdict").asString()).isEqualTo("mates");
    assertThat(plan.path("joints").path(0).path("seal").asString()).isEqualTo("gasket");
    assertThat(plan.path("frictionLossPsi").asDouble()).isBetween(156.9, 156.95);
    assertThat(plan.path("total").asString()).matches("\\d+\\.\\d\\d USD");
    assertThat(plan.path("items").path(0).path("unitPrice").asString()).matches("\\d+\\.\\d\\d");
    for (String name :
        List.of(
            "instead",
            "cautions",
            "summary",
            "sources",
            "nodes",
            "allowed",
            "gaskets",
            "unpriced",
            "flowGpm",
            "sourcePsi",
            "crossCheck",
            "elevationLossPsi",
            "adapterLossPsi",
            "applianceLossPsi",
            "requiredSourcePsi",
            "deliveredPsi",
            "profile",
            "checks")) {
      assertThat(plan.has(name)).as(name).isTrue();
    }
  }

  @Test
  void no_safe_plan_is_an_answer_with_exit_code_three() throws IOException {
    LoadedBooks.putInto(program);
    Ended ended = program.run(counterJob("--source-pressure", "150psi"));
    assertThat(ended.exitCode()).isEqualTo(3);
    JsonNode plan = OneDocument.in(ended.out());
    assertThat(plan.path("feasible").asBoolean()).isFalse();
    assertThat(plan.path("limitedBy").asString()).contains("psi at the source");
    assertThat(plan.path("instead").size()).isPositive();
  }

  @Test
  void flow_and_sizes_answer_with_the_names_scripts_rely_on() throws IOException {
    LoadedBooks.putInto(program);
    String[] flow = counterJob("--source-pressure", "150psi");
    flow[1] = "flow";
    Ended ended = program.run(flow);
    assertThat(ended.exitCode()).isZero();
    JsonNode answer = OneDocument.in(ended.out());
    assertThat(answer.path("flowGpm").asDouble()).isBetween(100.0, 150.0);
    assertThat(answer.path("deliveredPsi").asDouble()).isPositive();
    assertThat(answer.path("limitedBy").asString()).isNotBlank();
    String[] compare = counterJob();
    compare[1] = "compare";
    assertThat(OneDocument.in(program.run(compare).out()).path("sizes").size()).isEqualTo(1);
  }

  @Test
  void joints_and_ends_answer_in_both_modes() {
    Ended json =
        program.runWith(
            "joint check --a \"1.5 NPSH male\" --b \"1.5 NPT female\"\nend list NH\n", "--json");
    assertThat(json.exitCode()).isZero();
    List<JsonNode> answers = OneDocument.each(json.out());
    assertThat(answers.get(0).path("verdict").asString()).isEqualTo("jams");
    assertThat(answers.get(1).path("ends").size()).isGreaterThan(8);
    Ended script = program.runWith("end list\njoint check --a \"2.5 NH male\" --b \"2.5 NH F\"\n");
    assertThat(script.exitCode()).isZero();
    assertThat(script.out()).contains("NPSH").contains("2.5 NH male to 2.5 NH female: joins");
  }

  @Test
  void options_beside_a_job_file_win() throws IOException {
    LoadedBooks.putInto(program);
    Ended ended =
        program.run(
            "line",
            "plan",
            "--json",
            "--job",
            JOBS.resolve("hydrant-to-nozzle.yaml").toString(),
            "--length",
            "200 ft");
    assertThat(ended.exitCode()).isZero();
    JsonNode sections = OneDocument.in(ended.out()).path("sections");
    assertThat(sections.path(0).path("count").asInt()).isEqualTo(5);
  }

  @Test
  void a_bad_answer_names_field_value_and_what_is_allowed_and_nothing_is_written() {
    Ended ended = program.run(counterJob("--rise", "400 psi", "--use", "fyre"));
    assertThat(ended.exitCode()).isEqualTo(2);
    JsonNode problems = OneDocument.in(ended.out()).path("error").path("problems");
    assertThat(problems.path(0).path("field").asString()).isEqualTo("rise");
    assertThat(problems.path(0).path("value").asString()).isEqualTo("400 psi");
    assertThat(problems.path(1).path("nearest").asString()).isEqualTo("fire");
    assertThat(program.data()).doesNotExist();
    assertThat(program.leftBehind()).isEmpty();
  }

  @Test
  void a_half_written_job_file_is_refused_by_its_line() throws IOException {
    LoadedBooks.putInto(program);
    Path half = Files.writeString(work.resolve("half.yaml"), "from: 2.5 NH male\nto: \"1.5 N");
    Ended ended = program.run("quote", "make", "--job", half.toString(), "--customer", "COUNTER");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("line 2").doesNotContain("Exception");
  }

  @Test
  void a_catalogue_with_one_bad_price_changes_nothing() throws IOException {
    LoadedBooks.putInto(program);
    String before = program.run(counterJob()).out();
    Path copy = Files.createDirectory(work.resolve("copy"));
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.toList()) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
    }
    Path prices = copy.resolve("prices.csv");
    String text = Files.readString(prices).replaceFirst(",1,\\d+\\.\\d\\d,", ",1,-5,");
    Files.writeString(prices, text);
    Ended ended = program.run("catalogue", "load", copy.toString());
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("prices.csv line 2").contains("unit_price").contains("'-5'");
    assertThat(program.run(counterJob()).out()).isEqualTo(before);
  }

  @Test
  void a_customer_nobody_knows_is_refused_with_the_nearest() throws IOException {
    LoadedBooks.putInto(program);
    Ended ended =
        program.run(
            "quote",
            "make",
            "--job",
            JOBS.resolve("wash-down.yaml").toString(),
            "--customer",
            "COUNTR");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("There is no customer COUNTR")
        .contains("Did you mean 'COUNTER'?");
    assertThat(program.run("quote", "list").out()).startsWith("No quotes yet");
  }

  @Test
  void an_export_never_replaces_a_file_unasked_nor_writes_where_it_may_not() throws IOException {
    LoadedBooks.putInto(program);
    program.run(
        "quote",
        "make",
        "--job",
        JOBS.resolve("wash-down.yaml").toString(),
        "--customer",
        "COUNTER");
    Files.writeString(work.resolve("Q-000001-r1.xlsx"), "mine");
    Ended clash = program.run("quote", "export", "Q-000001", "--as", "csv,workbook");
    assertThat(clash.exitCode()).isEqualTo(2);
    assertThat(Files.readString(work.resolve("Q-000001-r1.xlsx"))).isEqualTo("mine");
    assertThat(program.leftBehind()).containsExactly("Q-000001-r1.xlsx");
    Ended missing = program.run("quote", "export", "Q-000001", "--out", "nowhere");
    assertThat(missing.exitCode()).isEqualTo(2);
    assertThat(missing.err()).contains("nowhere");
    assertThat(program.run("quote", "export", "Q-000001", "--overwrite").exitCode()).isZero();
    assertThat(Files.size(work.resolve("Q-000001-r1.xlsx"))).isGreaterThan(1000);
  }
}
