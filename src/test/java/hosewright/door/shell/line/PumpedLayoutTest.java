package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Layouts that a pump of the buyer's pumps on, or draws for, from the job file to the answer. */
final class PumpedLayoutTest {
  private static final String RELAY = "quotes/layouts/relay-to-two-monitors.yaml";
  private static final String POND = "quotes/layouts/pond-suction-pump-tank.yaml";

  /** One set of books for all: questions do not change them. */
  @TempDir private static Path data;

  @TempDir private Path folder;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell =
        CommandTrial.of(
            data,
            trial ->
                List.of(
                    new LinePlanCommand(DemoBooks.of(trial)),
                    new LineFlowCommand(DemoBooks.of(trial))));
  }

  @Test
  void a_relay_pump_adds_its_curve_to_what_its_intake_keeps() {
    JsonNode plan = shell.run("line", "plan", "--job", RELAY, "--json").json();

    assertThat(plan.path("feasible").asBoolean()).isTrue();
    JsonNode relay = leg(plan, "from the hydrant");
    JsonNode left = leg(plan, "left");
    assertThat(relay.path("ends").asString()).isEqualTo("pumper");
    assertThat(left.path("begins").asString()).isEqualTo("pumper");
    assertThat(relay.path("flowGpm").asDouble()).isEqualTo(600);
    // Coefficient law, C from the catalogue's rows: 0.08 (6)² 9 = 25.9 psi.
    assertThat(relay.path("frictionLossPsi").asDouble()).isCloseTo(25.9, within(0.1));
    // At 600 gpm the curve lies a fifth of the way from 145 to 120 psi: 140.
    assertThat(left.path("inletPsi").asDouble())
        .isCloseTo(relay.path("outletPsi").asDouble() + 140, within(0.1));
    assertThat(check(plan, "pump-intake").path("limit").asDouble()).isEqualTo(20);
    assertThat(plan.path("cautions").toString())
        .contains("Set pumper to give")
        .contains("relief valve at the intake");
  }

  @Test
  void what_arrives_across_a_relay_pump_is_found_with_everything_open_and_each_alone() {
    JsonNode flow = shell.run("line", "flow", "--job", RELAY, "--json").json();

    JsonNode left = flow.path("appliances").get(0);
    JsonNode right = flow.path("appliances").get(1);
    double leftGpm = left.path("flowGpm").asDouble();
    assertThat(flow.path("flowGpm").asDouble())
        .isCloseTo(leftGpm + right.path("flowGpm").asDouble(), within(0.1));
    // Flow goes with the root of pressure: 300 gpm at 80 psi.
    assertThat(left.path("deliveredPsi").asDouble())
        .isCloseTo(80 * Math.pow(leftGpm / 300, 2), within(0.1));
    // The nearer one gets more, and each alone more than beside the other.
    assertThat(leftGpm).isGreaterThan(right.path("flowGpm").asDouble());
    assertThat(left.path("aloneGpm").asDouble()).isGreaterThan(leftGpm);
    assertThat(flow.path("pumps").get(0).path("dischargePsi").asDouble())
        .isLessThanOrEqualTo(200.01);
  }

  @Test
  void a_pump_that_starves_its_intake_is_no_plan() throws Exception {
    String starved = Files.readString(Path.of(RELAY)).replace("at: 1500 gpm", "at: 500 gpm");
    Path job = Files.writeString(folder.resolve("starved.yaml"), starved);

    CommandTrial.Ended ended = shell.run("line", "plan", "--job", job.toString());

    assertThat(ended.exitCode()).isEqualTo(3);
    assertThat(ended.out().replaceAll("\\s+", " "))
        .contains("from the hydrant: pump intake")
        .contains("must keep 20.0 psi");
  }

  @Test
  void open_water_is_drawn_through_suction_hose_behind_a_strainer() {
    JsonNode plan = shell.run("line", "plan", "--job", POND, "--json").json();

    assertThat(plan.path("feasible").asBoolean()).isTrue();
    assertThat(plan.path("items"))
        .extracting(item -> item.path("description").asString())
        .anyMatch(text -> text.contains("strainer"))
        .anyMatch(text -> text.startsWith("Suction hose"))
        .anyMatch(text -> !text.startsWith("Suction hose") && text.contains("hose, "));
    JsonNode lift = check(plan, "suction-lift");
    assertThat(lift.path("value").asDouble()).isGreaterThan(10);
    assertThat(lift.path("note").asString()).contains("it needs 12.0 ft").contains("up to a lift");
    assertThat(check(plan, "suction-vacuum").path("outcome").asString()).isEqualTo("pass");
    assertThat(leg(plan, "suction").path("outletPsi").asDouble()).isLessThan(-10 * 0.433);
  }

  @Test
  void a_foot_valve_that_is_asked_for_stands_at_the_water() throws Exception {
    String small =
        Files.readString(Path.of(POND))
            .replace("intake: 4 NH male", "intake: 2 NPSH male")
            .replace("size: 4 in", "buy: foot valve")
            .replace("flow: 200 gpm", "flow: 50 gpm");
    Path job = Files.writeString(folder.resolve("small.yaml"), small);

    JsonNode plan = shell.run("line", "plan", "--job", job.toString(), "--json").json();

    assertThat(plan.path("feasible").asBoolean()).isTrue();
    assertThat(plan.path("items"))
        .extracting(item -> item.path("item").asString())
        .contains("ST-FOOT-2NPSH")
        .anyMatch(number -> number.startsWith("H2-") && number.contains("SU-"));
  }

  @Test
  void too_high_a_lift_says_what_lift_still_works() throws Exception {
    String high = Files.readString(Path.of(POND)).replace("lift: 10 ft", "lift: 19.8 ft");
    Path job = Files.writeString(folder.resolve("high.yaml"), high);

    CommandTrial.Ended ended = shell.run("line", "plan", "--job", job.toString());

    assertThat(ended.exitCode()).isEqualTo(3);
    assertThat(ended.out().replaceAll("\\s+", " ")).contains("it works up to a lift of");
  }

  private static JsonNode leg(JsonNode plan, String name) {
    return named(plan.path("legs"), "leg", name);
  }

  private static JsonNode check(JsonNode plan, String id) {
    return named(plan.path("checks"), "id", id);
  }

  private static JsonNode named(JsonNode all, String by, String name) {
    for (JsonNode one : all) {
      if (one.path(by).asString().equals(name)) {
        return one;
      }
    }
    throw new AssertionError("none called " + name);
  }
}
