package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.AllCommands;
import hosewright.door.shell.run.CommandTrial;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What a master lays first, and what he says with it, asked as a dealer would ask. */
final class LaidByAMasterTest {
  private static final String PUMP = "line plan --from '2.5 NH male pump' --use fire ";

  /** Two outlets of a pump that could give more than any fitting here loses. */
  private static final String MONITOR =
      PUMP
          + "--to '4 NH female swivel monitor' --length 200ft --flow 800gpm --need 80psi"
          + " --source-pressure 260psi --outlets 2 --size 3in --section 50ft ";

  private static final String HAND_LINE =
      PUMP + "--to '1.5 NH nozzle' --length 150ft --flow 150gpm --need 50psi ";

  @TempDir private static Path data;

  private static CommandTrial shell;

  @BeforeAll
  static void open() {
    shell = CommandTrial.of(data, AllCommands::of);
  }

  private static JsonNode plan(String asked) {
    JsonNode plan = shell.typed(asked + " --json").json();
    assertThat(plan.get("feasible").asBoolean()).isTrue();
    return plan;
  }

  /** What some items of a plan come to. */
  private static BigDecimal cost(JsonNode plan, String... items) {
    BigDecimal cost = BigDecimal.ZERO;
    for (JsonNode item : plan.get("items")) {
      if (List.of(items).contains(item.get("item").asString())) {
        cost =
            cost.add(
                new BigDecimal(item.get("unitPrice").asString())
                    .multiply(BigDecimal.valueOf(item.get("quantity").asInt())));
      }
    }
    return cost;
  }

  private static BigDecimal total(JsonNode plan) {
    return new BigDecimal(plan.get("total").asString().replaceAll("[^0-9.]", ""));
  }

  private static List<String> cautions(JsonNode plan) {
    List<String> cautions = new ArrayList<>();
    plan.get("cautions").forEach(caution -> cautions.add(caution.asString()));
    return cautions;
  }

  private static List<String> checks(JsonNode plan) {
    List<String> checks = new ArrayList<>();
    plan.get("checks")
        .forEach(
            check ->
                checks.add(check.get("id").asString() + " " + check.get("outcome").asString()));
    return checks;
  }

  /** A weaker pump, of 175 psi, would not do with the narrow one: it takes 176.8. */
  @Test
  void a_siamese_as_wide_as_its_couplings_is_21_50_dearer_than_a_narrow_one_with_two_reducers() {
    BigDecimal wide = cost(plan(MONITOR), "S-25-25-C");
    BigDecimal narrow =
        cost(plan(MONITOR + "--allow narrow-fitting,fitting-velocity"), "S-15-25", "A-25NHF-15NHM");

    assertThat(wide).isEqualByComparingTo("224.00");
    assertThat(wide.subtract(narrow)).isEqualByComparingTo("21.50");
  }

  @Test
  void fire_hose_is_bought_coupled_though_the_bench_would_be_cheaper() {
    JsonNode bought = plan(MONITOR);
    JsonNode benched = plan(MONITOR + "--allow made-up-hose");

    assertThat(checks(bought)).noneMatch(check -> check.startsWith("made-up-hose"));
    assertThat(checks(benched)).contains("made-up-hose pass");
    assertThat(total(benched)).isLessThan(total(bought));
  }

  @Test
  void more_than_125_gpm_take_larger_hose_than_one_and_a_half_inch_to_a_hand_nozzle() {
    assertThat(plan(HAND_LINE).at("/legs/0/sizeIn").asDouble()).isEqualTo(1.75);
    assertThat(plan(HAND_LINE.replace("150gpm", "125gpm")).at("/legs/0/sizeIn").asDouble())
        .isEqualTo(1.5);

    JsonNode named = plan(HAND_LINE + "--size 1.5in");
    assertThat(checks(named)).contains("small-hand-line warn");
    assertThat(plan(HAND_LINE + "--allow small-hand-line").at("/legs/0/sizeIn").asDouble())
        .isEqualTo(1.5);
  }

  @Test
  void a_pump_that_could_give_more_is_told_where_to_be_set() {
    JsonNode plan = plan(HAND_LINE + "--size 1.75in --source-pressure 200psi");

    long set = (long) Math.ceil(plan.get("requiredSourcePsi").asDouble());
    assertThat(cautions(plan))
        .anyMatch(said -> said.startsWith("Set the pump at " + set + " psi"))
        .anyMatch(said -> said.contains("up to the 200 psi it can give"));
    assertThat(cautions(plan(HAND_LINE + "--size 1.75in")))
        .as("no more is stated than what the line needs")
        .noneMatch(said -> said.startsWith("Set the pump"));
  }

  /** What line flow finds for the same line. */
  @Test
  void a_hydrant_that_brings_more_says_what_the_nozzle_then_gets() {
    String asked =
        "--from '2.5 NH male hydrant' --use fire --to '1.5 NH nozzle' --length 150ft"
            + " --flow 125gpm --need 50psi --source-pressure 120psi --size 1.75in";
    double flowGpm = shell.typed("line flow " + asked + " --json").json().get("flowGpm").asDouble();

    assertThat(cautions(plan("line plan " + asked)))
        .anyMatch(said -> said.contains("fully open, %.0f gpm flow".formatted(flowGpm)));
  }

  @Test
  void hose_called_by_its_length_takes_no_slack() {
    String asked = HAND_LINE + "--size 1.75in --section 50ft ";

    assertThat(cautions(plan(asked))).anyMatch(said -> said.contains("say slack 0"));
    assertThat(plan(asked).at("/sections/0/count").asInt()).isEqualTo(4);
    JsonNode called = plan(asked + "--slack 0");
    assertThat(cautions(called)).noneMatch(said -> said.contains("say slack 0"));
    assertThat(called.at("/sections/0/count").asInt()).isEqualTo(3);
  }

  @Test
  void an_air_gap_is_asked_for_where_a_tank_is_filled_from_a_main() {
    String filled = " --to '2 NPT female tank' --length 90ft --flow 50gpm --need 5psi --use water";

    assertThat(checks(plan("line plan --from '2.5 NH male hydrant'" + filled)))
        .contains("air-gap warn");
    assertThat(checks(plan("line plan --from '2.5 NH male pump'" + filled)))
        .noneMatch(check -> check.startsWith("air-gap"));
  }

  @Test
  void lines_that_meet_in_a_siamese_are_not_said_to_go_on_to_the_monitor() {
    assertThat(shell.typed(MONITOR + " --full").out())
        .contains("From the source to the siamese lie 2 such lines")
        .doesNotContain("lines like this one");
  }

  /** Common practice, no source: it kinks, and is made to lie on the ground. */
  @Test
  void nobody_holds_a_nozzle_on_lay_flat_discharge_hose_and_a_tank_is_filled_through_it() {
    String washDown =
        "line plan --from '1.5 NPSH male pump' --length 200ft --flow 60gpm --need 40psi"
            + " --source-pressure 100psi --use wash-down --size 1.5in ";

    assertThat(hoses(plan(washDown + "--to '1.5 NPSH nozzle'")))
        .isNotEmpty()
        .noneMatch(hose -> hose.contains("-LF-"));
    assertThat(hoses(plan(washDown + "--to '1.5 NPSH female tank'")))
        .isNotEmpty()
        .allMatch(hose -> hose.contains("-LF-"));
  }

  private static List<String> hoses(JsonNode plan) {
    List<String> hoses = new ArrayList<>();
    for (JsonNode item : plan.get("items")) {
      if (item.get("item").asString().matches("H\\d.*")) {
        hoses.add(item.get("item").asString());
      }
    }
    return hoses;
  }
}
