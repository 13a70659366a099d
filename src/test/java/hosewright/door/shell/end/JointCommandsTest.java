package hosewright.door.shell.end;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

final class JointCommandsTest {
  /** One set of books for all: questions do not change them, and making them takes far longer. */
  @TempDir private static Path data;

  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell =
        CommandTrial.of(
            data,
            trial ->
                List.of(
                    new JointBridgeCommand(DemoBooks.of(trial)),
                    new JointCheckCommand(DemoBooks.of(trial))));
  }

  @Test
  void a_pipe_male_goes_to_a_fire_hose_by_one_gasketed_adapter_that_comes_apart() {
    // The issue's own case; NPSH female on NPT male: ASME B1.20.1-2013 section 1.2.
    JsonNode found = bridge("2 NPT male", "1.5 NH female swivel").json();

    assertThat(found.get("chain")).hasSize(1);
    JsonNode step = found.get("chain").get(0);
    assertThat(step.get("in").asString()).isEqualTo("2 NPSH female swivel");
    assertThat(step.get("out").asString()).isEqualTo("1.5 NH male");
    assertThat(step.get("item").asString()).isNotBlank();
    assertThat(found.get("cost").asString()).matches("\\d+\\.\\d\\d USD");
    assertThat(found.get("missing")).isEmpty();
    assertThat(found.get("removable").asBoolean()).isTrue();
    assertThat(found.get("workingPsi").asDouble()).isPositive();
    assertThat(found.get("joints").get(0).get("verdict").get("seal").asString())
        .isEqualTo("gasket");
  }

  @Test
  void a_bridge_is_as_wide_as_the_narrower_end_and_the_narrow_one_is_only_mentioned() {
    JsonNode found = bridge("2 cam plug", "2.5 NH male").json();
    assertThat(found.get("neckIn").isNull()).isTrue();
    for (JsonNode step : found.get("chain")) {
      assertThat(step.get("in").asString() + step.get("out").asString()).doesNotContain("1.5");
    }
    assertThat(run("joint", "bridge", "--from", "2 cam plug", "--to", "2.5 NH male").out())
        .contains("Necked to 1.5 in it would cost");
  }

  @Test
  void a_permanent_joint_that_saves_money_is_mentioned_but_not_chosen() {
    String text = run("joint", "bridge", "--from", "2 NPT male", "--to", "1.5 NH fs").out();

    assertThat(text)
        .contains("Every joint comes apart again.")
        .containsPattern("With a permanent joint it would cost USD [0-9.]+: A-2NPTF-15NHM")
        .containsPattern("square, burr-free\\s+end face");
  }

  @Test
  void a_female_pipe_end_needs_a_permanent_joint_and_is_told_why() {
    Ended ended = run("joint", "bridge", "--from", "2 NPT female", "--to", "1.5 NH male");

    assertThat(ended.exitCode()).isZero();
    assertThat(ended.out())
        .contains("2 NPT female to 2 NPT male is permanent.")
        .contains("sealant");
    JsonNode found = bridge("2 NPT female", "1.5 NH male").json();
    assertThat(found.get("removable").asBoolean()).isFalse();
    assertThat(found.get("joints").get(0).get("verdict").get("seal").asString())
        .isEqualTo("thread");
  }

  @Test
  void the_next_best_are_shown_on_request() {
    JsonNode found =
        run("joint", "bridge", "--from", "2 NPT male", "--to", "1.5 NH fs", "--show", "3", "--json")
            .json();

    assertThat(found.get("alternatives")).hasSize(2);
    assertThat(bridge("2 NPT male", "1.5 NH fs").json().get("alternatives")).isEmpty();
  }

  @Test
  void a_customer_with_terms_pays_those_for_a_bridge() {
    // HARLOW-FD has a percentage off list in the demo catalogue's customers.csv.
    String list = bridge("2 NPT male", "1.5 NH female swivel").json().get("cost").asString();
    String net =
        run(
                "joint",
                "bridge",
                "--from",
                "2 NPT male",
                "--to",
                "1.5 NH female swivel",
                "--json",
                "--customer",
                "HARLOW-FD")
            .json()
            .get("cost")
            .asString();

    assertThat(Money.parse("USD " + net.replace(" USD", "")))
        .isLessThan(Money.parse("USD " + list.replace(" USD", "")));
  }

  @Test
  void ends_that_mate_need_nothing_between_them() {
    Ended ended = bridge("2.5 NH male", "2.5 NH female swivel");

    assertThat(ended.exitCode()).isZero();
    assertThat(ended.json().get("chain")).isEmpty();
    assertThat(ended.json().get("cost").asString()).isEqualTo("0.00 USD");
  }

  @Test
  void where_the_catalogue_has_nothing_the_adapter_to_find_is_named_by_its_two_ends() {
    Ended ended = bridge("2.5 QST male", "4 Storz");

    assertThat(ended.exitCode()).isEqualTo(3);
    JsonNode found = ended.json();
    assertThat(found.get("chain")).isEmpty();
    assertThat(found.get("cost").isNull()).isTrue();
    assertThat(found.get("missing")).hasSize(1);
    assertThat(found.get("missing").get(0).get("in").asString()).isEqualTo("2.5 QST female swivel");
    assertThat(found.get("missing").get(0).get("out").asString()).isEqualTo("4 Storz");
    JsonNode byNh = found.get("alternatives").get(0);
    assertThat(byNh.get("missing").get(0).get("out").asString()).isEqualTo("2.5 NH male");
    assertThat(byNh.get("chain")).isNotEmpty();
  }

  @Test
  void one_thread_known_by_name_only_is_measured_and_not_bridged() {
    Ended ended = bridge("2.5 QST male", "2.5 QST female");

    assertThat(ended.exitCode()).isEqualTo(3);
    assertThat(ended.json().get("missing")).isEmpty();
    assertThat(ended.json().get("notes").get(0).asString()).contains("measure both");
  }

  @Test
  void every_wrong_end_is_named_by_its_option() {
    Ended ended = run("joint", "bridge", "--from", "1.5 NG male", "--to", "2 NPS", "--show", "0");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("from cannot be '1.5 NG male'")
        .contains("Did you mean '1.5 NH male'?")
        .contains("to cannot be '2 NPS'")
        .contains("show cannot be '0'");
  }

  @Test
  void a_pair_that_does_not_mate_is_told_what_to_buy_instead() {
    JsonNode checked = check("2 NPT male", "1.5 NH female swivel").json();

    assertThat(checked.propertyNames())
        .containsExactly(
            "verdict", "seal", "removable", "engagement", "reason", "source", "instead", "picture");
    assertThat(checked.get("verdict").asString()).isEqualTo("no");
    assertThat(checked.get("instead").get("chain").get(0).get("in").asString())
        .isEqualTo("2 NPSH female swivel");
    assertThat(
            run("joint", "check", "--a", "2 NPT male", "--b", "1.5 NH female swivel")
                .out()
                .replaceAll("\\s+", " "))
        .contains("instead: an adapter 2 NPSH female swivel x 1.5 NH male");
  }

  @Test
  void a_pair_that_mates_needs_nothing_and_opens_no_books(@TempDir Path untouched) {
    CommandTrial elsewhere =
        CommandTrial.of(untouched, t -> List.of(new JointCheckCommand(DemoBooks.of(t))));

    JsonNode checked =
        elsewhere
            .run("joint", "check", "--a", "1.5 NH male", "--b", "1.5 NH female", "--json")
            .json();

    assertThat(checked.get("verdict").asString()).isEqualTo("mates");
    assertThat(checked.get("instead").isNull()).isTrue();
    assertThat(untouched).isEmptyDirectory();
  }

  @Test
  void the_verdict_is_given_even_where_the_books_are_out_of_reach(@TempDir Path barred)
      throws Exception {
    Path unusable = Files.writeString(barred.resolve("file"), "").resolve("folder");
    CommandTrial elsewhere =
        CommandTrial.of(unusable, t -> List.of(new JointCheckCommand(DemoBooks.of(t))));

    Ended ended = elsewhere.run("joint", "check", "--a", "2 NPSH male", "--b", "2 NPT female");

    assertThat(ended.exitCode()).isZero();
    assertThat(ended.out()).contains("jams").contains("the catalogue cannot be read");
  }

  private Ended bridge(String from, String to) {
    return run("joint", "bridge", "--from", from, "--to", to, "--json");
  }

  private Ended check(String a, String b) {
    return run("joint", "check", "--a", a, "--b", b, "--json");
  }

  private Ended run(String... words) {
    return shell.run(words);
  }
}
