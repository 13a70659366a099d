package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Questions as a dealer types them, whose answer a master of the trade would not accept before. */
final class AtTheCounterTest {
  /** One set of books for all: questions do not change them. */
  @TempDir private static Path data;

  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell = CommandTrial.of(data, trial -> List.of(new LinePlanCommand(DemoBooks.of(trial))));
  }

  private Ended plan(String options) {
    return shell.run(words("line plan " + options));
  }

  private JsonNode planJson(String options) {
    return shell.run(words("line plan " + options + " --json")).json();
  }

  /** What is typed, apart at blanks but for what stands between single quote marks. */
  private static String[] words(String typed) {
    return Pattern.compile("'([^']*)'|(\\S+)")
        .matcher(typed)
        .results()
        .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
        .toArray(String[]::new);
  }

  @Test
  void a_tip_that_contradicts_flow_and_need_is_refused_with_both_readings() {
    Ended ended =
        plan(
            "--from '2.5 NH male pump' --to '1.5 NH nozzle' --length 150ft --size 1.75in --tip"
                + " 15/16in --flow 95gpm --need 75psi --source-pressure 120psi");

    // Q = 29.7 d² √p (City of Rohnert Park training slides): 29.7 x 0.9375² x √75 = 226.1 gpm;
    // (95/(29.7 x 0.9375²))² = 13.24 psi; √(95/(29.7 x √75)) = 0.608 in.
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("tip cannot be '15/16in'")
        .contains("flow and need")
        .contains("flows 226 gpm at the 75.0 psi of need")
        .contains("takes 13.2 psi for the 95 gpm of flow")
        .contains("0.61 in");
  }

  @Test
  void a_total_without_two_parts_says_so_wherever_it_stands() {
    String asked =
        "--from '3 cam plug pump' --to '2.5 NH female nozzle' --length 200ft --flow 300gpm"
            + " --need 50psi --source-pressure 120psi --accessories V-CHECK-2NPT";
    assertThat(flat(plan(asked + " --full").out()))
        .containsPattern("This line does it: .* for [0-9.]+ USD and 2 parts without price\\.")
        .containsPattern("Total [0-9.]+ USD and 2 parts without price before freight and tax\\.");
    JsonNode document = planJson(asked);
    assertThat(document.get("unpriced")).hasSize(2);
    assertThat(document.get("headline").asString())
        .isEqualTo(document.get("total").asString() + " and 2 parts without price");
  }

  @Test
  void an_appliance_whose_own_end_is_too_narrow_is_refused_for_that() {
    String asked =
        "--from '4.5 NH male hydrant' --to '1.5 NH nozzle' --length 100ft --flow 673gpm"
            + " --need 75psi --source-pressure 120psi";
    Ended ended = plan(asked);
    // v = 0.4085 Q/d²: 0.4085 x 673/2.25 = 122.2 ft/s; 60 ft/s is 60 x 2.25/0.4085 = 330 gpm.
    assertThat(ended.exitCode()).isEqualTo(3);
    assertThat(flat(ended.out()))
        .contains("Limited by end velocity: 673 gpm in the 1.50 in waterway of the appliance's own")
        .contains("run at 122.2 ft/s")
        .contains("more than 330 gpm");
    JsonNode document = planJson(asked);
    assertThat(failed(document)).first().isEqualTo("end-velocity");
    // Nothing else is judged by what no other part could mend.
    assertThat(failed(document)).doesNotContain("fitting-velocity");
    assertThat(planJson(asked + " --allow end-velocity").get("allowed").get(0).asString())
        .isEqualTo("end-velocity");
  }

  @Test
  void what_the_trade_runs_through_a_coupling_every_day_is_fine() {
    // 0.4085 x 150/2.25 = 27.2 ft/s; 0.4085 x 500/6.25 = 32.7 ft/s.
    JsonNode hand =
        planJson(
            "--from '1.5 NH male pump' --to '1.5 NH nozzle' --length 150ft --flow 150gpm"
                + " --need 50psi --source-pressure 180psi --size 1.75in --use fire");
    assertThat(check(hand, "fitting-velocity").get("value").asDouble()).isBetween(27.1, 27.3);
    JsonNode supply =
        planJson(
            "--from '2.5 NH male pump' --to '2.5 NH female appliance' --length 300ft --flow 500gpm"
                + " --need 20psi --source-pressure 150psi --size 3in --coupling-size 2.5in");
    assertThat(check(supply, "fitting-velocity").get("value").asDouble()).isBetween(32.6, 32.8);
    for (JsonNode document : List.of(hand, supply)) {
      assertThat(document.get("feasible").asBoolean()).isTrue();
      assertThat(check(document, "fitting-velocity").get("outcome").asString()).isEqualTo("pass");
      assertThat(check(document, "end-velocity").get("outcome").asString()).isEqualTo("pass");
    }
  }

  @Test
  void eight_hundred_gpm_from_two_outlets_goes_through_the_full_size_siamese() {
    JsonNode document =
        planJson(
            "--from '2.5 NH male pump' --use fire --to '4 NH female swivel monitor' --length 200ft"
                + " --flow 800gpm --need 80psi --source-pressure 175psi --outlets 2 --size 3in"
                + " --section 50ft");
    assertThat(document.get("feasible").asBoolean()).isTrue();
    for (JsonNode leg : document.get("legs")) {
      for (JsonNode part : leg.get("parts")) {
        assertThat(part.get("waterwayIn").asDouble()).as(part.toString()).isGreaterThan(2);
        // 0.4085 x 800/6.25 = 52.3 ft/s in the siamese's outlet is the most there is.
        assertThat(part.get("velocityFtPerS").asDouble()).as(part.toString()).isLessThan(53);
      }
    }
    // The siamese: K 0.9 on the head of 52.3 ft/s, 0.434 x 52.3²/64.35 = 18.4 psi: 16.6 psi, more
    // than the 10 psi that are taught.
    assertThat(node(document, "join").get("lossPsi").asDouble()).isBetween(16.5, 16.7);
  }

  @Test
  void hot_water_is_asked_for_as_water_and_a_temperature() {
    String line =
        "--from '2 NPSH male outlet' --to '2 NPSH female tank' --length 80ft --flow 40gpm --need"
            + " 10psi";
    for (String field : List.of("use", "fluid")) {
      Ended ended = plan("--" + field + " 'hot water' " + line);
      assertThat(ended.exitCode()).isEqualTo(2);
      assertThat(ended.err())
          .contains(field + " cannot be 'hot water'")
          .contains("temperature 150 F");
    }
  }

  @Test
  void hot_water_scalds_and_the_gaskets_are_shown_with_what_they_bear() {
    String line =
        "--from '2 NPSH male outlet' --to '2 NPSH female tank' --length 80ft --flow 40gpm"
            + " --need 10psi --source-pressure 60psi --temperature ";
    JsonNode hot = planJson(line + "150F");
    assertThat(check(hot, "gaskets").get("outcome").asString()).isEqualTo("pass");
    assertThat(check(hot, "gaskets").get("note").asString()).contains("nitrile up to 180 °F");
    assertThat(check(hot, "gaskets").get("source").asString())
        .contains("common practice, no source");
    assertThat(hot.get("cautions").toString()).contains("Water at 150 °F scalds");
    assertThat(planJson(line + "60F").get("cautions").toString()).doesNotContain("scalds");

    // Of one size the shop has both; nitrile is out at 190 °F, so the dearer EPDM is billed.
    JsonNode hotter = planJson(line + "190F");
    assertThat(items(hotter)).contains("G-2NPSH-DW").doesNotContain("G-2NPSH");
    assertThat(items(hot)).contains("G-2NPSH").doesNotContain("G-2NPSH-DW");
  }

  private static List<String> items(JsonNode document) {
    return document.get("items").valueStream().map(item -> item.get("item").asString()).toList();
  }

  @Test
  void a_meter_passes_no_more_than_it_is_rated_for_unless_the_buyer_says_so() {
    String asked =
        "--from '2.5 NH male hydrant' --to '2.5 NH female appliance' --length 100ft --flow 450gpm"
            + " --need 20psi --source-pressure 120psi --size 3in --accessories MTR-25NH";
    JsonNode refused = planJson(asked);
    assertThat(refused.get("feasible").asBoolean()).isFalse();
    assertThat(refused.get("limitedBy").asString())
        .contains("rated flow: 450 gpm go through")
        .contains("rated for 400");

    JsonNode allowed = planJson(asked + " --allow rated-flow");
    assertThat(allowed.get("feasible").asBoolean()).isTrue();
    assertThat(check(allowed, "rated-flow").get("outcome").asString()).isEqualTo("warn");
    assertThat(allowed.get("allowed").get(0).asString()).isEqualTo("rated-flow");
  }

  @Test
  void the_demo_job_with_a_wye_counts_what_the_wye_takes_at_its_flow() {
    JsonNode document = planJson("--job quotes/wye-to-two-hand-lines.yaml");
    // 250 gpm, 125 in each line. Supply: 2 x 2.5² x 3.5 = 43.75; attack: 15.5 x 1.25² x 2 = 48.44;
    // rise: 20 x 0.434 = 8.68. Gate valve: K 0.2 on v = 0.4085 x 250/6.25 = 16.34 ft/s, head
    // 0.434 x 16.34²/64.35 = 1.80 psi: 0.36. Wye of 2.5 to 1.5 in, no maker's figure: K = 0.9 + 0.5
    // x
    // (1 - 0.36) = 1.22 on v = 0.4085 x 125/2.25 = 22.69 ft/s, head 3.47 psi: 4.24; what is taught
    // begins at 350 gpm. In all 75 + 43.75 + 48.44 + 8.68 + 0.36 + 4.24 = 180.47 psi.
    assertThat(document.get("requiredSourcePsi").asDouble()).isBetween(180.42, 180.52);
    assertThat(node(document, "split").get("lossPsi").asDouble()).isBetween(4.23, 4.25);
    assertThat(document.get("applianceLossPsi").asDouble()).isZero();
    assertThat(document.get("adapterLossPsi").asDouble()).isBetween(4.59, 4.61);
  }

  private static JsonNode node(JsonNode document, String role) {
    return document
        .get("nodes")
        .valueStream()
        .filter(node -> node.get("role").asString().equals(role))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> failed(JsonNode document) {
    return document
        .get("checks")
        .valueStream()
        .filter(check -> check.get("outcome").asString().equals("fail"))
        .map(check -> check.get("id").asString())
        .toList();
  }

  private static JsonNode check(JsonNode document, String id) {
    return document
        .get("checks")
        .valueStream()
        .filter(check -> check.get("id").asString().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static String flat(String wrapped) {
    return wrapped.replaceAll("\\s+", " ");
  }
}
