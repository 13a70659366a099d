package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Unlike lines behind one supply line, planned from the legs that a job file lists. */
final class LayoutPlanTest {
  private static final String MILL = "quotes/layouts/unlike-hand-lines.yaml";

  /** One set of books for all: questions do not change them. */
  @TempDir private static Path data;

  @TempDir private Path folder;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell = CommandTrial.of(data, trial -> List.of(new LinePlanCommand(DemoBooks.of(trial))));
  }

  @Test
  void unlike_hand_lines_hang_on_a_gated_wye_and_are_throttled_to_what_each_needs() {
    JsonNode plan = shell.run("line", "plan", "--job", MILL, "--json").json();

    assertThat(plan.path("feasible").asBoolean()).isTrue();
    assertThat(plan.path("legs"))
        .extracting(leg -> leg.path("leg").asString())
        .containsExactly("yard", "ground floor", "roof");
    assertThat(plan.path("legs"))
        .extracting(leg -> leg.path("begins").asString())
        .containsExactly("source", "wye behind yard", "wye behind yard");
    // A wye passes on what it gets: 150 + 95 gpm.
    assertThat(leg(plan, "yard").path("flowGpm").asDouble()).isEqualTo(245);
    // Coefficient law, C from the catalogue's rows: 2 (2.45)² 2.5 = 30.0 psi; 15.5 (1.5)² 2 for
    // 200 ft of 1.75 in; 24 (0.95)² 2.5 for 250 ft of 1.5 in.
    assertThat(leg(plan, "yard").path("frictionLossPsi").asDouble()).isCloseTo(30.0, within(0.1));
    assertThat(leg(plan, "ground floor").path("frictionLossPsi").asDouble())
        .isCloseTo(15.5 * 2.25 * 2, within(0.1));
    assertThat(leg(plan, "roof").path("frictionLossPsi").asDouble())
        .isCloseTo(24 * 0.9025 * 2.5, within(0.1));
    assertThat(plan.path("joints"))
        .allMatch(joint -> joint.path("verdict").asString().length() > 0);
    assertThat(plan.path("items"))
        .extracting(item -> item.path("item").asString())
        .contains("Y-25-15-G", "N-FOG-15NH-150L", "N-FOG-15NH-95L");
    // The pump could give 200.3 psi at 245 gpm; set to what the worse off needs, it leaves less
    // than
    // a psi too much for the other, so that no gate need be closed.
    assertThat(plan.path("cautions").toString())
        .contains("Set the pump at the source to 156 psi")
        .doesNotContain("Throttle");
    // Whoever holds a nozzle alone is pushed with 0.0505 Q √P lbf (common practice, no source).
    JsonNode alone = plan.path("appliances").path(0).path("unthrottled");
    double lbf =
        0.0505 * alone.path("aloneGpm").asDouble() * Math.sqrt(alone.path("alonePsi").asDouble());
    assertThat(lbf).isGreaterThan(75);
    assertThat(plan.path("checks"))
        .filteredOn(check -> check.path("id").asString().equals("other-nozzles-shut"))
        .extracting(check -> check.path("leg").asString() + " " + check.path("outcome").asString())
        .containsExactly("ground floor warn", "roof pass");
  }

  /** Its narrowest outlet says nothing of the wide one, which the stair line hangs on. */
  @Test
  void lines_of_unlike_size_hang_on_a_water_thief_where_it_has_an_outlet_for_each() {
    JsonNode plan =
        shell
            .run("line", "plan", "--job", "quotes/layouts/two-storey-nested-wye.yaml", "--json")
            .json();

    assertThat(plan.path("items"))
        .extracting(item -> item.path("item").asString())
        .contains("TH-25-25-15-G")
        .noneMatch(item -> item.startsWith("MF-"));
  }

  @Test
  void the_short_answer_says_what_comes_to_each_appliance() {
    assertThat(flat(shell.run("line", "plan", "--job", MILL)))
        .contains("Arrives: ground floor 150 gpm at 94.4 psi (50 psi needed); roof 95 gpm at")
        .contains("the source must hold 155.9 psi, and it gives 200.3 psi");
  }

  @Test
  void a_source_too_weak_for_the_worst_off_is_told_with_what_would_do() throws IOException {
    Ended ended =
        plan(
            """
            use: fire
            from: 2.5 NH male pump
            source-pressure: 100 psi
            legs:
              - { leg: yard, length: 200 ft, size: 2.5 in }
              - { leg: left, behind: yard, length: 150 ft, size: 1.75 in, to: 1.5 NH nozzle, flow: 150 gpm, need: 50 psi }
              - { leg: right, behind: yard, length: 100 ft, size: 1.75 in, to: 1.5 NH nozzle, flow: 95 gpm, need: 50 psi }
            """);

    assertThat(ended.exitCode()).isEqualTo(3);
    assertThat(flat(ended))
        .contains("left: delivered pressure")
        .containsPattern("a source that gives 1[0-9]{2}\\.[0-9] psi at 245 gpm would feed")
        // The second line is drawn from the wye it leaves, not from the first line's nozzle.
        .containsPattern("right: \\[> <\\] Gated wye[^|]*, the same as before \\| 1\\.5 NH male")
        .doesNotContain("Set the pump", "brings more than the line needs");
  }

  @Test
  void a_ring_an_orphan_and_an_end_that_goes_on_are_each_named_with_their_leg() throws IOException {
    Ended ended =
        plan(
            """
            from: 2.5 NH male pump
            legs:
              - { leg: yard, length: 200 ft, to: 1.5 NH nozzle }
              - { leg: left, behind: yrad, length: 150 ft }
              - { leg: east, behind: west, length: 10 ft }
              - { leg: west, behind: east, length: 10 ft }
              - { leg: right, behind: yard, length: 100 ft, flow: 95 gpm, need: 50 psi, to: 1.5 NH nozzle }
            """);

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("leg left: behind cannot be 'yrad'")
        .contains("yard")
        .contains("leg east: behind cannot be 'west'")
        .contains("runs in a ring")
        .contains("leg yard: to cannot be '1.5 NH nozzle'")
        .contains("other legs begin where this one ends (right)");
  }

  @Test
  void what_nothing_sold_divides_is_an_answer_that_names_the_leg() throws IOException {
    Ended ended =
        plan(
            """
            use: fire
            from: 2.5 NH male pump
            source-pressure: 150 psi
            legs:
              - { leg: yard, length: 100 ft, size: 2.5 in }
              - { leg: lines, behind: yard, copies: 6, length: 50 ft, size: 1.5 in, to: 1.5 NH nozzle, flow: 30 gpm, need: 50 psi }
            """);

    assertThat(ended.exitCode()).isEqualTo(3);
    assertThat(flat(ended)).contains("leg yard: nothing that is sold").contains("6 x lines");
  }

  @Test
  void a_leg_that_begins_where_none_ends_is_named_with_the_point_meant() throws IOException {
    Ended ended =
        plan(
            """
            from: 2.5 NH male pump
            legs:
              - { leg: yard, length: 200 ft, ends: tree }
              - { leg: left, begins: tee, length: 150 ft, flow: 95 gpm, need: 50 psi, to: 1.5 NH nozzle }
            """);

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("leg left: begins cannot be 'tee'")
        .contains("a point where a leg ends: tree");
  }

  @Test
  void a_pump_without_an_intake_is_refused_by_its_point() throws IOException {
    Ended ended =
        plan(
            """
            from: 4.5 NH male hydrant
            source-pressure: 60 psi
            points:
              - { point: engine, is: pump, discharges: 2.5 NH male, pump-curve: 190 psi at 0 gpm; 150 psi at 1000 gpm }
            legs:
              - { leg: relay, ends: engine, length: 500 ft }
              - { leg: hand line, begins: engine, length: 150 ft, flow: 95 gpm, need: 50 psi, to: 1.5 NH nozzle }
            """);

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("point engine: intake");
  }

  private Ended plan(String job) throws IOException {
    Path file = Files.writeString(folder.resolve("job.yaml"), job);
    return shell.run("line", "plan", "--job", file.toString(), "--full");
  }

  private static JsonNode leg(JsonNode plan, String name) {
    for (JsonNode leg : plan.path("legs")) {
      if (leg.path("leg").asString().equals(name)) {
        return leg;
      }
    }
    throw new AssertionError("no leg " + name);
  }

  private static String flat(Ended ended) {
    return ended.out().replaceAll("\\s+", " ");
  }
}
