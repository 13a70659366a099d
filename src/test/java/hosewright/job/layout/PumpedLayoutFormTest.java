package hosewright.job.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hosewright.intake.JobText;
import hosewright.job.question.SourceKind;
import hosewright.problem.BadInputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class PumpedLayoutFormTest {
  private static final String RELAY =
      """
      from: 4.5 NH male hydrant
      source-pressure: 80 psi
      points:
        - point: pump 2
          is: pump
          intake: 4.5 NH male
          discharges: 2 x 2.5 NH male
          pump-curve: 190 psi at 0 gpm; 150 psi at 1000 gpm
          relief: 200 psi
      legs:
        - { leg: relay, ends: pump 2, length: 600 ft }
        - { leg: left, begins: pump 2, length: 300 ft, to: 2.5 NH female monitor, flow: 300 gpm, need: 80 psi }
        - { leg: right, begins: pump 2, length: 350 ft, to: 2.5 NH female monitor, flow: 300 gpm, need: 80 psi }
      """;

  private static final String POND =
      """
      from: open water
      lift: 10 ft
      points:
        - { point: pump, is: pump, intake: 4 NH male, discharges: 2.5 NH male, pump-curve: 180 psi at 0 gpm; 150 psi at 500 gpm }
      legs:
        - { leg: suction, ends: pump, length: 20 ft }
        - { leg: supply, begins: pump, length: 600 ft, to: 2.5 NH female tank, flow: 300 gpm, need: 10 psi }
      """;

  @Test
  void legs_that_begin_at_a_point_are_behind_the_one_that_ends_there() {
    LayoutJob layout = read(RELAY);

    assertThat(layout.legs()).extracting(LegJob::name).containsExactly("relay", "left", "right");
    LayoutPump pump = layout.pumpBehind(layout.legs().get(0)).orElseThrow();
    assertThat(pump.discharges()).hasSize(2);
    assertThat(pump.reliefPsi()).hasValue(200);
    // What a relay pump is run at where the job says nothing.
    assertThat(pump.leastIntakePsi()).isEqualTo(20);
    assertThat(layout.legs().get(0).flowGpm()).isEqualTo(600);
  }

  @Test
  void a_curve_on_a_leg_behind_another_is_short_for_a_pump_where_it_begins() {
    LayoutJob layout =
        read(
            """
            from: 2.5 NH male hydrant
            source-pressure: 80 psi
            legs:
              - { leg: first, length: 200 ft }
              - { leg: far, behind: first, length: 200 ft, pump-curve: 90 psi at 0 gpm; 60 psi at 300 gpm, intake: 2.5 NH female, discharges: 2.5 NH male, least-intake: 10 psi, to: 1.5 NH nozzle, flow: 95 gpm, need: 75 psi }
            """);

    LayoutPump pump = layout.pumpBehind(layout.legs().get(0)).orElseThrow();
    assertThat(pump.leastIntakePsi()).isEqualTo(10);
    assertThat(pump.reliefPsi()).isEmpty();
    // The source keeps its own pressure: the curve is the pump's alone.
    assertThat(layout.fed().orElseThrow().closedPsi()).isEqualTo(80);
  }

  @Test
  void a_layout_with_points_is_written_as_it_was_read() {
    LayoutText text = JobText.layout(RELAY);

    assertThat(JobText.layout(JobText.write(text))).isEqualTo(text);
    assertThat(JobText.layout(JobText.write(JobText.layout(POND)))).isEqualTo(JobText.layout(POND));
  }

  @Test
  void a_suction_leg_rises_by_the_lift_without_slack_to_an_intake_under_no_pressure() {
    LayoutJob layout = read(POND);

    assertThat(layout.whole().source()).isEqualTo(SourceKind.OPEN_WATER);
    assertThat(layout.whole().run().riseFt()).isEqualTo(10);
    assertThat(layout.whole().run().slack()).isZero();
    assertThat(layout.legs().get(1).job().source()).isEqualTo(SourceKind.PUMP);
    assertThat(layout.legs().get(1).job().run().slack()).isCloseTo(0.05, within(1e-9));
    assertThat(layout.whole().needPsi()).isNegative();
  }

  @Test
  void a_pump_without_intake_is_named_with_its_point() {
    assertThat(problems(RELAY.replace("    intake: 4.5 NH male\n", "")))
        .anyMatch(one -> one.contains("point pump 2: intake") && one.contains("4.5 NH male"));
  }

  @Test
  void a_point_nobody_listed_is_told_with_the_nearest() {
    assertThat(problems(RELAY.replace("ends: pump 2,", "ends: pump2,")))
        .anyMatch(one -> one.contains("leg relay: ends") && one.contains("nearest=pump 2"));
  }

  @Test
  void a_pump_that_no_leg_feeds_or_leaves_is_told() {
    assertThat(problems(RELAY.replace("begins: pump 2", "behind: relax")))
        .anyMatch(one -> one.contains("leg left: behind"))
        .anyMatch(one -> one.contains("point pump 2") && one.contains("begins"));
    assertThat(problems(RELAY.replace("ends: pump 2, ", "")))
        .anyMatch(one -> one.contains("point pump 2") && one.contains("feeds the pump's intake"));
  }

  @Test
  void a_pump_that_its_own_water_comes_back_to_is_a_ring() {
    String ring =
        RELAY.replace("leg: relay, ends: pump 2", "leg: relay, behind: left, ends: pump 2");

    assertThat(problems(ring)).anyMatch(one -> one.contains("runs in a ring"));
  }

  @Test
  void each_line_behind_a_pump_has_a_discharge_of_its_own() {
    assertThat(problems(RELAY.replace("2 x 2.5 NH male", "2.5 NH male")))
        .anyMatch(
            one -> one.contains("point pump 2: discharges") && one.contains("2 x 2.5 NH male"));
  }

  @Test
  void open_water_takes_a_lift_one_suction_leg_and_a_pump_and_no_pressure() {
    assertThat(problems(POND.replace("lift: 10 ft\n", ""))).anyMatch(one -> one.contains("lift"));
    assertThat(problems(POND.replace("lift: 10 ft", "lift: 40 ft")))
        .anyMatch(one -> one.contains("lift") && one.contains("atmosphere"));
    assertThat(problems(POND + "source-pressure: 50 psi\n"))
        .anyMatch(one -> one.contains("source-pressure") && one.contains("open water"));
    assertThat(
            problems(
                """
                from: open water
                lift: 10 ft
                legs:
                  - { leg: suction, length: 20 ft, to: 2.5 NH female tank, flow: 300 gpm, need: 10 psi }
                """))
        .anyMatch(one -> one.contains("leg suction: ends") && one.contains("is: pump"));
    assertThat(problems(POND.replace("is: pump,", "is: pump, least-intake: 20 psi,")))
        .anyMatch(one -> one.contains("npsh"));
    assertThat(problems(RELAY.replace("is: pump\n", "is: pump\n    npsh: 10 ft\n")))
        .anyMatch(one -> one.contains("least-intake instead"));
  }

  private static final String BYPASS =
      """
      from: 5 Storz pump
      source-pressure: 150 psi
      legs:
        - { leg: bypass, length: 4000 ft, rise: 40 ft, pump: BP-5-DSL at 1000 ft; booster at 3000 ft, to: 5 Storz tank, flow: 1000 gpm, need: 5 psi }
      """;

  @Test
  void a_leg_with_pumps_on_its_way_is_laid_in_parts_that_share_length_and_rise() {
    LayoutJob layout = read(BYPASS);

    assertThat(layout.legs())
        .extracting(LegJob::name)
        .containsExactly("bypass, part 1", "bypass, part 2", "bypass");
    assertThat(layout.legs())
        .extracting(leg -> leg.job().run().lengthFt())
        .containsExactly(1000.0, 2000.0, 1000.0);
    assertThat(layout.legs())
        .extracting(leg -> leg.job().run().riseFt())
        .containsExactly(10.0, 20.0, 10.0);
    assertThat(layout.boosterBehind(layout.legs().get(0)).orElseThrow().item())
        .hasValue("BP-5-DSL");
    assertThat(layout.boosterBehind(layout.legs().get(1)).orElseThrow().item()).isEmpty();
    assertThat(layout.legs().get(0).job().needPsi()).isEqualTo(20);
    assertThat(layout.legs().get(2).job().needPsi()).isEqualTo(5);
  }

  @Test
  void pumps_on_the_way_that_cannot_stand_there_are_told() {
    assertThat(problems(BYPASS.replace("booster at 3000 ft", "booster at 4500 ft")))
        .anyMatch(one -> one.contains("leg bypass: pump") && one.contains("before the leg ends"));
    assertThat(problems(BYPASS.replace("booster at 3000 ft", "booster at 500 ft")))
        .anyMatch(one -> one.contains("in the order water meets them"));
    assertThat(problems(BYPASS.replace("; booster at 3000 ft", "; booster")))
        .anyMatch(one -> one.contains("nearest=booster at 1800 ft"));
    String asNeeded =
        BYPASS.replace("pump: BP-5-DSL at 1000 ft; booster at 3000 ft", "boosters: as needed");
    assertThat(read(asNeeded).asNeeded()).containsExactly("bypass");
    assertThat(problems(asNeeded.replace("as needed", "two")))
        .anyMatch(one -> one.contains("leg bypass: boosters") && one.contains("as needed"));
    assertThat(problems(asNeeded.replace("source-pressure: 150 psi\n", "")))
        .anyMatch(one -> one.contains("a source which says what it gives"));
  }

  private static LayoutJob read(String text) {
    return LayoutForm.read(JobText.layout(text));
  }

  private static List<String> problems(String text) {
    BadInputException refused = catchThrowableOfType(BadInputException.class, () -> read(text));
    return refused.problems().stream().map(Object::toString).toList();
  }
}
