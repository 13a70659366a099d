package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.AllCommands;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** What is asked for besides a line, asked as a dealer would ask; all goods are invented. */
final class AccessoryTradeTest {
  /** From the discharge of a fire pump. */
  private static final String PUMP = "line plan --from '2.5 NH male pump' --use fire";

  /** Two hand lines behind a wye. */
  private static final String TWO_HAND_LINES =
      PUMP
          + " --to '1.5 NH nozzle' --length 200ft --size 2.5in --attack-lines 2"
          + " --attack-length 150ft --attack-size 1.75in --section 50ft";

  @TempDir private static Path data;

  private static CommandTrial shell;

  @BeforeAll
  static void open() {
    shell = CommandTrial.of(data, AllCommands::of);
  }

  @Test
  void the_nozzle_bought_gives_the_flow_at_the_pressure_asked_for() {
    JsonNode plan =
        plan(
            PUMP
                + " --to '1.5 NH nozzle' --length 200ft --flow 150gpm --need 50psi"
                + " --source-pressure 160psi --size 1.75in --accessories nozzle");

    // Not the plastic rack nozzle of 100 gpm at 100 psi, cheap as it is.
    assertThat(bought(plan)).containsEntry("N-FOG-15NH-150L", 1);
    assertThat(plan.get("unpriced")).isEmpty();
  }

  @Test
  void the_nozzle_bought_has_the_thread_of_the_appliance_and_no_hose_is_chosen_to_go_without() {
    JsonNode plan =
        plan(
            PUMP
                + " --to '2.5 NH female nozzle' --length 300ft --flow 250gpm --need 50psi"
                + " --source-pressure 160psi --accessories nozzle");

    assertThat(bought(plan)).containsEntry("N-FOG-25NH-250L", 1);
    assertThat(bought(plan).keySet()).noneMatch(item -> item.contains("NPSH"));
    assertThat(plan.get("unpriced")).isEmpty();
  }

  @Test
  void a_nozzle_that_nobody_sells_stands_beside_the_total() {
    JsonNode plan =
        plan(
            PUMP
                + " --to '1.5 NH nozzle' --length 100ft --flow 60gpm --need 50psi"
                + " --source-pressure 160psi --size 1.75in --accessories nozzle");

    assertThat(plan.get("feasible").asBoolean()).isTrue();
    assertThat(plan.get("unpriced").get(0).asString())
        .contains(
            "nozzle with a 1.5 NH female end that gives 60 gpm at 50 psi, of which none is sold");
    assertThat(plan.get("headline").asString()).endsWith("and 1 part without price");
  }

  @Test
  void a_nozzle_named_that_gives_another_flow_is_sold_with_a_caution() {
    JsonNode plan =
        plan(
            PUMP
                + " --to '1.5 NH nozzle' --length 100ft --flow 150gpm --need 50psi"
                + " --source-pressure 160psi --size 1.75in --accessories N-FOG-15NH-150");

    // 150 gpm at 100 psi is 150 x sqrt(50 / 100) = 106 gpm at 50 psi.
    assertThat(sentences(plan, "cautions"))
        .anyMatch(
            care ->
                care.equals(
                    "N-FOG-15NH-150 gives 106 gpm at 50 psi, and 150 gpm at 50 psi is asked"
                        + " for."));
  }

  @Test
  void each_hand_line_gets_a_nozzle_at_its_end() {
    JsonNode plan =
        plan(
            TWO_HAND_LINES
                + " --flow 150gpm --need 50psi --source-pressure 190psi"
                + " --accessories N-FOG-15NH-150L");

    assertThat(bought(plan)).containsEntry("N-FOG-15NH-150L", 2);
    assertThat(stands(plan, "N-FOG-15NH-150L")).isEqualTo("at the end of each of 2 lines");
  }

  @Test
  void a_second_shutoff_is_refused_where_the_nozzle_has_one() {
    Ended ended =
        run(
            TWO_HAND_LINES
                + " --flow 150gpm --need 50psi --source-pressure 190psi"
                + " --accessories N-FOG-15NH-150L,V-SHUT-15NH");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("V-SHUT-15NH")
        .contains("the nozzle N-FOG-15NH-150L has one of its own");
  }

  @ParameterizedTest
  @ValueSource(strings = {"N-TIP-15NH-078,V-SHUT-15NH", "nozzle,shutoff"})
  void tips_without_a_shutoff_get_one_each_at_the_nozzle(String asked) {
    JsonNode plan =
        plan(
            TWO_HAND_LINES
                + " --flow 160gpm --need 50psi --source-pressure 190psi --accessories "
                + asked);

    // 29.7 x 0.875 x 0.875 x sqrt(50) = 161 gpm.
    assertThat(bought(plan)).containsEntry("N-TIP-15NH-078", 2).containsEntry("V-SHUT-15NH", 2);
    assertThat(stands(plan, "V-SHUT-15NH")).isEqualTo("at the end of each of 2 lines");
    assertThat(bought(plan).keySet()).noneMatch(item -> item.startsWith("A-15NHFS"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Y-25-15-G", "wye"})
  void a_wye_that_is_asked_for_is_the_lines_own(String asked) {
    JsonNode plan =
        plan(
            TWO_HAND_LINES
                + " --flow 150gpm --need 50psi --source-pressure 190psi --accessories "
                + asked);

    Map<String, Integer> wyes = new TreeMap<>(bought(plan));
    wyes.keySet().removeIf(item -> !item.startsWith("Y-"));
    assertThat(wyes.values()).containsExactly(1);
    if (asked.startsWith("Y-")) {
      assertThat(wyes).containsOnlyKeys(asked);
      assertThat(stands(plan, asked)).isEqualTo("where the lines divide");
    }
  }

  @Test
  void a_wye_that_cannot_divide_so_many_lines_is_refused() {
    Ended ended =
        run(
            TWO_HAND_LINES.replace("--attack-lines 2", "--attack-lines 3")
                + " --flow 100gpm --need 50psi --source-pressure 190psi"
                + " --accessories Y-25-15-G");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("3 like outlets");
  }

  @Test
  void restraints_are_one_a_joint_and_the_ends() {
    JsonNode plan =
        plan(
            PUMP
                + " --to '1.5 NH nozzle' --length 500ft --flow 95gpm --need 75psi"
                + " --source-pressure 200psi --size 1.75in --section 50ft"
                + " --accessories restraint");

    // 500 ft and a tenth for bends are 11 sections of 50 ft: 10 joints between them and two ends.
    assertThat(bought(plan)).containsEntry("RST-3", 10).containsEntry("RST-TOOL-3", 2);
  }

  @Test
  void lugs_take_two_spanners_and_a_hydrant_its_wrench() {
    JsonNode plan =
        plan(
            "line plan --from '5 Storz hydrant' --to '5 Storz' --use fire --length 600ft"
                + " --flow 800gpm --need 20psi --source-pressure 60psi --size 5in"
                + " --accessories wrench");

    assertThat(bought(plan)).containsEntry("W-STZ-4-5", 2).containsEntry("W-HYD", 1);
    assertThat(stands(plan, "W-HYD")).isEqualTo("at the hydrant");
  }

  @Test
  void a_spanner_that_turns_couplings_of_several_sizes_is_carried_once() {
    JsonNode plan =
        plan(
            "line plan --from '4 Storz pump' --to '2.5 NH female monitor' --use fire --length 590ft"
                + " --rise 20ft --flow 317gpm --need 87psi --source-pressure 145psi"
                + " --accessories wrench");

    assertThat(bought(plan)).containsEntry("W-STZ-4-5", 2).containsEntry("W-SPAN-15-3", 2);
  }

  /** Shutoff, meter, then what keeps water from running back (common practice, no source). */
  @ParameterizedTest
  @ValueSource(strings = {"backflow, meter, gate valve", "meter, gate valve, backflow"})
  void what_stands_at_a_main_stands_in_the_trades_order_however_it_was_asked(String asked) {
    JsonNode plan =
        plan(
            "line plan --from '2.5 NH male hydrant' --to '2 NPT female pipe' --length 350ft"
                + " --flow 80gpm --need 35psi --source-pressure 70psi --accessories '"
                + asked
                + "'");

    assertThat(plan.path("legs").path(0).path("parts"))
        .filteredOn(part -> part.path("role").asString().equals("device"))
        .extracting(part -> part.path("item").asString().replaceFirst("-.*", ""))
        .containsExactly("V", "MTR", "BF");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # asked                      | item      | pairs
          ramp                         | RMP-3-ONE | 1
          ramp over 2 lanes            | RMP-3-ONE | 2
          ramp over 2 lanes at 50 ft   | RMP-3-ONE | 2
          5 x ramp                     | RMP-3-ONE | 5
          3 x RMP-3-PAIR               | RMP-3-PAIR| 3
          """)
  void ramps_are_one_a_lane_unless_they_are_counted(String asked, String item, int pairs) {
    JsonNode plan =
        plan(
            PUMP
                + " --to '2.5 NH female' --length 200ft --flow 250gpm --need 50psi --size 2.5in"
                + " --source-pressure 160psi --accessories '"
                + asked
                + "'");

    assertThat(bought(plan)).containsEntry(item, pairs);
  }

  @Test
  void a_ramp_takes_as_many_hoses_as_it_has_channels() {
    JsonNode plan =
        plan(
            "line plan --from '2.5 NH male pump' --outlets 2 --to '4 NH female monitor'"
                + " --use fire --length 200ft --flow 500gpm --need 80psi --size 3in"
                + " --source-pressure 175psi --accessories 'ramp over 2 lanes'");

    // Two hoses in two lanes: 4 pairs of one channel at 176.00 are dearer than 2 of two at 262.00.
    assertThat(bought(plan)).containsEntry("RMP-3-PAIR", 2);
  }

  @Test
  void a_device_asked_for_by_its_kind_is_of_full_size() {
    JsonNode plan =
        plan(
            "line plan --from '2 NPSH male pump' --to '2 NPSH female pipe' --length 100ft"
                + " --flow 60gpm --need 30psi --source-pressure 80psi --size 2in"
                + " --accessories valve,meter");

    assertThat(bought(plan)).containsEntry("V-GATE-2NPSH", 1).containsEntry("MTR-2NPSH", 1);
    assertThat(bought(plan).keySet()).noneMatch(item -> item.startsWith("A-"));
  }

  @Test
  void backflow_under_constant_pressure_takes_a_device_for_it() {
    String asked =
        "line plan --from '0.75 GHT male outlet' --to '0.75 GHT female nozzle' --use drinking"
            + " --length 100ft --flow 5gpm --need 20psi --source-pressure 60psi --accessories ";

    assertThat(bought(plan(asked + "backflow"))).containsEntry("BF-RPZ-075GHT", 1);
    Ended ended = run(asked + "BF-VB-075GHT");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("constant pressure");
  }

  @ParameterizedTest
  @ValueSource(strings = {"H2-RSU-20-2NPSH", "ST-FOOT-2NPSH", "'foot valve'"})
  void suction_goods_have_no_place_in_a_line_under_pressure(String asked) {
    Ended ended =
        run(
            "line plan --from '2 NPSH male pump' --to '2 NPSH female tank' --length 90ft"
                + " --flow 100gpm --need 20psi --source-pressure 80psi --accessories "
                + asked);

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("suction goods have no place in it");
  }

  @Test
  void a_strainer_in_a_line_under_pressure_is_a_line_strainer_that_is_sold() {
    JsonNode plan =
        plan(
            "line plan --from '1 NPSH male outlet' --to '1.5 NPSH female nozzle' --length 385ft"
                + " --flow 45gpm --need 70psi --rise -40ft --source-pressure 150psi"
                + " --accessories strainer");

    assertThat(bought(plan)).containsEntry("ST-L-15NPSH", 1);
    assertThat(plan.get("unpriced")).isEmpty();
  }

  @Test
  void where_each_thing_stands_and_why_is_said_on_the_screen() {
    assertThat(
            run(PUMP
                    + " --to '1.5 NH nozzle' --length 200ft --flow 150gpm --need 50psi"
                    + " --source-pressure 160psi --size 1.75in --accessories nozzle,wrench --full")
                .out())
        .contains("Accessories, where each stands and why")
        .containsPattern("1 x N-FOG-15NH-150L: at the end of the line, because each line\\s+ends");
  }

  @Test
  void a_word_for_nothing_is_refused_with_the_nearest() {
    Ended ended =
        run(
            PUMP
                + " --to '1.5 NH nozzle' --length 200ft --flow 150gpm --need 50psi"
                + " --accessories 'gaet valve'");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("Did you mean 'gate valve'?");
  }

  private static JsonNode plan(String typed) {
    Ended ended = run(typed + " --json");
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    return ended.json();
  }

  private static Map<String, Integer> bought(JsonNode plan) {
    Map<String, Integer> bought = new TreeMap<>();
    plan.get("items")
        .forEach(item -> bought.put(item.get("item").asString(), item.get("quantity").asInt()));
    return bought;
  }

  private static String stands(JsonNode plan, String item) {
    for (JsonNode accessory : plan.get("accessories")) {
      if (accessory.get("item").asString("").equals(item)) {
        return accessory.get("where").asString();
      }
    }
    return "nowhere";
  }

  private static List<String> sentences(JsonNode plan, String name) {
    List<String> sentences = new ArrayList<>();
    plan.get(name).forEach(one -> sentences.add(one.asString()));
    return sentences;
  }

  /** Words as a person types them, some in quotes. */
  private static Ended run(String typed) {
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
