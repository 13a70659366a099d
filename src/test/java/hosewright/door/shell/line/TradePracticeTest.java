package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.door.shell.AllCommands;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What a master of the trade would lay, asked as a dealer would ask. */
final class TradePracticeTest {
  @TempDir private static Path data;

  private static CommandTrial shell;

  @BeforeAll
  static void open() {
    shell = CommandTrial.of(data, AllCommands::of);
  }

  @Test
  void a_rule_that_the_buyer_lifts_is_said_with_the_plan() {
    String asked =
        "line plan --from '2.5 NH male pump' --to '1.5 NH nozzle' --use fire --length 200ft"
            + " --flow 150gpm --need 50psi --source-pressure 160psi --size 1.75in"
            + " --allow narrow-fitting";
    assertThat(run(asked).out())
        .containsPattern("The buyer\\s+allows\\s+a\\s+part\\s+narrower[^.]*\\(narrow-fitting\\)");
    assertThat(run(asked + " --json").json().get("allowed").get(0).asString())
        .isEqualTo("narrow-fitting");
  }

  @Test
  void a_rule_that_nobody_knows_or_may_lift_is_refused() {
    String asked =
        "line plan --from '2.5 NH male pump' --to '1.5 NH nozzle' --length 200ft --flow 150gpm"
            + " --need 50psi --allow ";
    Ended unknown = run(asked + "plain-why");
    assertThat(unknown.exitCode()).isEqualTo(2);
    assertThat(unknown.err()).contains("plain-why").contains("Did you mean 'plain-wye'?");
    Ended never = run(asked + "part-to-source");
    assertThat(never.exitCode()).isEqualTo(2);
    assertThat(never.err()).contains("never lifted");
  }

  private static final String PUMP = "line plan --from '2.5 NH male pump' --use fire ";

  /** A pump, 200 ft of supply line, and two hand lines behind a wye. */
  private static final String WYED =
      PUMP
          + "--to '1.5 NH nozzle' --length 200ft --size 2.5in --attack-lines 2"
          + " --attack-length 150ft --attack-size 1.75in --section 50ft --flow 150gpm"
          + " --need 50psi ";

  @Test
  void two_outlets_to_a_monitor_meet_in_a_siamese_as_wide_as_their_couplings() {
    String asked =
        PUMP
            + "--to '4 NH female swivel monitor' --length 200ft --flow 800gpm --need 80psi"
            + " --source-pressure 175psi --outlets 2 --size 3in --section 50ft --json";
    JsonNode plan = run(asked).json();
    assertThat(plan.get("feasible").asBoolean()).isTrue();
    assertThat(fittings(plan)).contains("S-25-25-C").doesNotContain("S-15-25");
    assertThat(narrowestIn(plan)).isGreaterThanOrEqualTo(2.5);
    assertThat(outcome(plan, "narrow-fitting")).isEqualTo("pass");
  }

  @Test
  void a_pump_too_weak_for_two_hand_lines_is_told_what_would_do_and_that_does() {
    Ended ended = run(WYED + "--source-pressure 150psi --json");
    assertThat(ended.exitCode()).isEqualTo(3);
    JsonNode plan = ended.json();
    assertThat(narrowestIn(plan)).isGreaterThanOrEqualTo(1.5);
    double requiredPsi = plan.get("requiredSourcePsi").asDouble();
    // C (Q/100)^2 (L/100) with the catalogue's C: 300 gpm through 5 x 50 ft of 2.5 in hose, C 2;
    // 150 gpm through 4 x 50 ft of 1.75 in hose, C 15.5; wye and couplings take the rest.
    double frictionPsi = 2 * 9 * 2.5 + 15.5 * 2.25 * 2;
    assertThat(plan.get("frictionLossPsi").asDouble()).isCloseTo(frictionPsi, within(0.05));
    assertThat(requiredPsi).isBetween(50 + frictionPsi, 50 + frictionPsi + 10);
    String advised = advised(plan, "a source that holds ([0-9.]+) psi at 300 gpm");
    assertThat(Double.parseDouble(advised)).isCloseTo(requiredPsi, within(0.1));
    assertThat(run(WYED + "--source-pressure " + advised + "psi").exitCode()).isZero();
  }

  @Test
  void two_lines_side_by_side_are_never_fed_through_a_garden_hose_wye() {
    JsonNode plan =
        run("line plan --from '2.5 NH male hydrant' --to '1.5 NH nozzle' --length 120m"
                + " --flow 400lpm --need '5 bar' --source-pressure '10 bar' --size 1.75in --lines 2"
                + " --json")
            .json();
    assertThat(fittings(plan)).doesNotContain("Y-075GHT-G");
    assertThat(narrowestIn(plan)).isGreaterThanOrEqualTo(1.5);
  }

  @Test
  void no_hose_is_chosen_so_that_the_nozzle_need_not_be_priced() {
    JsonNode plan =
        run(PUMP
                + "--to '2.5 NH female nozzle' --length 300ft --flow 250gpm --need 50psi"
                + " --source-pressure 160psi --accessories nozzle --json")
            .json();
    assertThat(plan.get("unpriced")).isEmpty();
    assertThat(plan.get("joints").toString()).doesNotContain("NPSH");
    assertThat(fittings(plan)).isEmpty();
  }

  @Test
  void hand_lines_divide_at_gates() {
    JsonNode plan = run(WYED + "--source-pressure 190psi --json").json();
    assertThat(plan.get("feasible").asBoolean()).isTrue();
    assertThat(fittings(plan)).contains("Y-25-15-G").doesNotContain("Y-25-25-P");
    assertThat(outcome(plan, "plain-wye")).isEqualTo("pass");
    JsonNode plain = run(WYED + "--source-pressure 190psi --allow plain-wye --json").json();
    assertThat(fittings(plain)).contains("Y-25-25-P");
    assertThat(outcome(plain, "plain-wye")).isEqualTo("warn");
  }

  @Test
  void a_hand_line_for_fire_is_attack_hose_and_one_for_wildland_may_be_forestry_hose() {
    String asked =
        "line plan --from '2.5 NH male pump' --to '1.5 NH nozzle' --length 150ft --flow 150gpm"
            + " --need 50psi --source-pressure 220psi --json --use ";
    assertThat(note(run(asked + "fire").json(), "hose-type"))
        .contains("is attack hose, which fire use takes");
    assertThat(note(run(asked + "wildland").json(), "hose-type")).contains("is forestry hose");
    // No supply hose is as small, so a named make of it fails by its type alone.
    Ended supply = run(asked + "supply --size 1in");
    assertThat(supply.exitCode()).isEqualTo(3);
    assertThat(supply.json().get("limitedBy").asString()).startsWith("hose type: ");
  }

  @Test
  void three_outlets_meet_in_a_three_inlet_siamese() {
    JsonNode plan =
        run("line plan --from '2.5 NH male hydrant' --to '2.5 NH female swivel sprinkler'"
                + " --use fire --outlets 3 --length 100ft --flow 600gpm --need 50psi"
                + " --source-pressure 120psi --json")
            .json();
    assertThat(plan.get("feasible").asBoolean()).isTrue();
    assertThat(fittings(plan)).anyMatch(item -> item.startsWith("S3-25-"));
  }

  @Test
  void the_nearest_line_for_a_long_supply_is_two_lines_of_large_hose() {
    String asked =
        "line plan --from '4.5 NH male hydrant' --to '5 Storz' --length 1000ft --flow 1000gpm"
            + " --need 20psi --json";
    Ended ended = run(asked + " --static 70psi --residual 55psi --at 1200gpm");
    assertThat(ended.exitCode()).isEqualTo(3);
    JsonNode plan = ended.json();
    assertThat(side(plan).get("lines").asInt()).isEqualTo(2);
    assertThat(side(plan).get("sizeIn").asDouble()).isEqualTo(5);
    // N 1.85: 55 psi at 1200 gpm of 70 leave 70 - 15 (1000/1200)^1.85 psi at 1000 gpm.
    double givenPsi = 70 - 15 * Math.pow(1000.0 / 1200, 1.85);
    assertThat(plan.get("sourcePsi").asDouble()).isCloseTo(givenPsi, within(0.1));
    // C 0.08: each line carries 500 gpm through 1050 ft, 21 psi; wye and siamese take the rest.
    assertThat(plan.get("frictionLossPsi").asDouble()).isCloseTo(0.08 * 25 * 10.5, within(0.05));
    double requiredPsi = plan.get("requiredSourcePsi").asDouble();
    assertThat(requiredPsi).isBetween(givenPsi, givenPsi + 10);
    String advised = advised(plan, "a source that holds ([0-9.]+) psi at 1000 gpm");
    assertThat(Double.parseDouble(advised)).isCloseTo(requiredPsi, within(0.1));
    assertThat(run(asked + " --source-pressure " + advised + "psi").exitCode()).isZero();
  }

  /** The leg that has hose. */
  private static JsonNode side(JsonNode plan) {
    for (JsonNode leg : plan.get("legs")) {
      if (leg.get("laidFt").asDouble() > 0) {
        return leg;
      }
    }
    throw new AssertionError("no hose in " + plan.get("legs"));
  }

  @Test
  void owned_sections_with_too_weak_a_source_are_answered() {
    Ended ended =
        run(
            "line plan --from '1.5 NPT male pipe' --to '3 NPT female pipe' --length 695ft"
                + " --flow 90gpm --need 45psi --source-pressure 105psi --rise 20ft --size 1.5in"
                + " --section 50ft --owned '6 x 50 ft 1.5 NPSH tested 250 psi' --json");
    assertThat(ended.exitCode()).isEqualTo(3);
    JsonNode plan = ended.json();
    assertThat(plan.get("limitedBy").asString()).startsWith("delivered pressure");
    // 695 ft and a twentieth more take 15 sections; the rise takes 0.433 psi a foot.
    assertThat(plan.get("legs").get(0).get("laidFt").asDouble()).isEqualTo(750);
    assertThat(plan.get("elevationLossPsi").asDouble()).isCloseTo(20 * 0.433, within(0.02));
    assertThat(advised(plan, "([23]) lines of 1.5 in hose side by side")).isEqualTo("2");
  }

  private static List<String> fittings(JsonNode plan) {
    List<String> items = new ArrayList<>();
    for (JsonNode part : parts(plan)) {
      if (FITTINGS.contains(part.get("role").asString())) {
        items.add(part.get("item").asString());
      }
    }
    return items;
  }

  private static double narrowestIn(JsonNode plan) {
    return parts(plan).stream()
        .filter(part -> FITTINGS.contains(part.get("role").asString()))
        .mapToDouble(part -> part.get("waterwayIn").asDouble())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static final Set<String> FITTINGS = Set.of("adapter", "device", "split", "join");

  /** Those of the legs, and what stands where legs meet. */
  private static List<JsonNode> parts(JsonNode plan) {
    List<JsonNode> parts = new ArrayList<>();
    plan.get("legs").forEach(leg -> leg.get("parts").forEach(parts::add));
    plan.get("nodes").forEach(node -> parts.add(node));
    return parts;
  }

  private static String outcome(JsonNode plan, String check) {
    return check(plan, check).get("outcome").asString();
  }

  private static String note(JsonNode plan, String check) {
    return check(plan, check).get("note").asString();
  }

  private static JsonNode check(JsonNode plan, String id) {
    for (JsonNode check : plan.get("checks")) {
      if (check.get("id").asString().equals(id)) {
        return check;
      }
    }
    throw new AssertionError("no check " + id + " in " + plan.get("checks"));
  }

  private static String advised(JsonNode plan, String pattern) {
    for (JsonNode instead : plan.get("instead")) {
      Matcher found = Pattern.compile(pattern).matcher(instead.asString());
      if (found.find()) {
        return found.group(1);
      }
    }
    throw new AssertionError("nothing like " + pattern + " in " + plan.get("instead"));
  }

  /** Words as a person types them, some in quotes. */
  static Ended run(String typed) {
    List<String> words = new ArrayList<>();
    String[] parts = typed.split("'", -1);
    for (int i = 0; i < parts.length; i++) {
      if (i % 2 == 1) {
        words.add(parts[i]);
      } else {
        words.addAll(List.of(parts[i].strip().split("\\s+")));
      }
    }
    words.removeIf(String::isEmpty);
    return shell.run(words.toArray(String[]::new));
  }
}
