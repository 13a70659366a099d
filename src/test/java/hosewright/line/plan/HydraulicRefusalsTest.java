package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hosewright.job.Job;
import hosewright.line.model.Check;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.thread.LocalThreads;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What no line can do is named: as a bad answer, or as the limit of a plan. */
class HydraulicRefusalsTest {

  private static String[] job(String... more) {
    List<String> answers =
        new ArrayList<>(
            List.of(
                "from", "2.5 NH male pump",
                "to", "1.5 NH nozzle",
                "length", "200 ft",
                "size", "1.75 in",
                "section", "50 ft"));
    answers.addAll(List.of(more));
    return answers.toArray(String[]::new);
  }

  private static Problem refused(String... more) {
    BadInputException refused =
        catchThrowableOfType(BadInputException.class, () -> DemoCatalogue.job(job(more)));
    assertThat(refused).as(String.join(" ", more)).isNotNull();
    return refused.problems().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "60 psi,80 psi,900 gpm,residual",
    "60 psi,60 psi,900 gpm,residual",
    "0 psi,20 psi,900 gpm,static",
    "600 psi,20 psi,900 gpm,static",
    "60 psi,40 psi,0 gpm,at"
  })
  void a_hydrant_that_cannot_be_is_refused_by_its_field(
      String statically, String residual, String at, String field) {
    Problem problem =
        refused(
            "flow",
            "100 gpm",
            "need",
            "50 psi",
            "static",
            statically,
            "residual",
            residual,
            "at",
            at);
    assertThat(problem.field()).contains(field);
    assertThat(problem.allowed()).isNotBlank();
  }

  @Test
  void swapped_readings_of_a_hydrant_are_explained() {
    assertThat(
            refused(
                    "flow",
                    "100 gpm",
                    "need",
                    "50 psi",
                    "static",
                    "60 psi",
                    "residual",
                    "80 psi",
                    "at",
                    "900 gpm")
                .allowed())
        .contains("below the static 60 psi")
        .contains("exchange them");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"0 gpm", "-150 gpm", "150", "150 psi", "NaN gpm", "1e400 gpm", "Infinity"})
  void a_flow_that_cannot_be_is_refused(String flow) {
    assertThat(refused("flow", flow, "need", "50 psi").field()).isEqualTo("flow");
  }

  @ParameterizedTest
  @ValueSource(strings = {"length", "rise", "need", "source-pressure", "lift"})
  void a_bare_number_is_refused_where_its_unit_could_be_mistaken(String field) {
    BadInputException refused =
        catchThrowableOfType(
            BadInputException.class, () -> DemoCatalogue.job(job("flow", "100 gpm", field, "50")));
    assertThat(refused.problems())
        .filteredOn(problem -> problem.field().equals(field))
        .singleElement()
        .extracting(Problem::allowed)
        .asString()
        .startsWith("a number needs its unit");
  }

  @Test
  void units_may_be_mixed_in_one_job() {
    Job job =
        DemoCatalogue.job(
            "from", "2.5 NH male pump",
            "to", "1.5 NH nozzle",
            "length", "120 m",
            "rise", "20 ft",
            "flow", "950 lpm",
            "need", "50 psi",
            "source-pressure", "7 bar",
            "section", "15.24 m",
            "temperature", "15 C");
    // NIST SP 811 (2008), Appendix B.8: 0.3048 m, 3.785412 L, 6.894757 kPa.
    assertThat(job.run().lengthFt()).isCloseTo(120 / 0.3048, within(1e-9));
    assertThat(job.flowGpm()).isBetween(950 / 3.78542, 950 / 3.78541);
    assertThat(job.supply().orElseThrow().closedPsi()).isBetween(101.52, 101.53);
    assertThat(job.wishes().sectionFt().orElseThrow()).isCloseTo(50, within(1e-9));
  }

  @Test
  void a_lift_beyond_the_atmosphere_is_refused_with_the_limit_of_the_place() {
    assertThat(refused("flow", "100 gpm", "need", "50 psi", "lift", "35 ft").allowed())
        .contains("no pump lifts water by suction beyond the 33.");
    assertThat(
            refused("flow", "100 gpm", "need", "50 psi", "lift", "9 m", "altitude", "8,000 ft")
                .allowed())
        .contains("at 8000 ft");
    LinePlan plan = plan("flow", "100 gpm", "need", "50 psi", "lift", "26 ft");
    assertThat(check(plan, "suction lift").outcome()).isEqualTo(Check.Outcome.WARN);
    assertThat(plan.cautions()).anyMatch(sentence -> sentence.contains("loses its prime"));
  }

  private static LinePlan plan(String... more) {
    return DemoCatalogue.plan(job(more));
  }

  private static Check check(LinePlan plan, String name) {
    return plan.checks().stream()
        .filter(check -> check.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_tip_larger_than_the_hose_is_the_limit_of_a_plan_and_is_no_flow_at_all() {
    // 29.7 x 2² x √1 = 118.8 gpm: what this tip passes at 1 psi, so the three agree.
    String[] large = {"flow", "119 gpm", "need", "1 psi", "tip", "2 in"};
    LinePlan plan = plan(large);
    assertThat(plan.feasible()).isFalse();
    assertThat(plan.limitedBy().orElseThrow())
        .isEqualTo("tip: a tip of 2.000 in is larger than the hose before it, 1.750 in");
    List<String> flowing = new ArrayList<>(List.of(job(large)));
    flowing.addAll(List.of("source-pressure", "150 psi"));
    Planner planner =
        new Planner(
            DemoCatalogue.get(),
            DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
            DemoCatalogue.DATE,
            CurrencyUnit.USD,
            LocalThreads.none());
    Job job = DemoCatalogue.job(flowing.toArray(String[]::new));
    assertThat(catchThrowableOfType(BadInputException.class, () -> planner.flow(job)).getMessage())
        .contains("tip")
        .contains("no larger than the hose before it, here 1.75 in");
    assertThat(refused("flow", "100 gpm", "need", "50 psi", "tip", "7 in").allowed())
        .isEqualTo("over 0 up to 6 in");
  }

  @Test
  void a_tip_that_contradicts_flow_and_need_is_refused_with_both_readings() {
    // City of Rohnert Park training slides: a 1 in tip flows 210 gpm at 50 psi. For 100 gpm it
    // takes (100/29.7)² = 11.3 psi, and a tip of √(100/(29.7 x √50)) = 0.69 in would agree.
    Problem refused = refused("flow", "100 gpm", "need", "50 psi", "tip", "1 in");
    assertThat(refused.field()).isEqualTo("tip");
    assertThat(refused.allowed())
        .contains("flow and need")
        .contains("it flows 210 gpm at the 50.0 psi of need")
        .contains("takes 11.3 psi for the 100 gpm of flow");
    assertThat(refused.nearest()).isEqualTo("0.69 in");
  }

  @Test
  void a_tip_within_a_tenth_of_flow_and_need_is_taken_and_said() {
    // 29.7 x √50 = 210 gpm; trade cards round it to 200 gpm.
    LinePlan plan = plan("flow", "200 gpm", "need", "50 psi", "tip", "1 in");
    assertThat(check(plan, "tip and flow agree").note()).startsWith("this tip flows 210 gpm");
    assertThat(check(plan, "tip and flow agree").outcome()).isEqualTo(Check.Outcome.PASS);
  }

  @Test
  void a_nozzle_pressure_above_the_hose_rating_is_the_limit_of_a_plan() {
    for (String source : List.of("150 psi", "600 psi")) {
      LinePlan plan = plan("flow", "100 gpm", "need", "400 psi", "source-pressure", source);
      assertThat(plan.feasible()).isFalse();
      assertThat(plan.limitedBy().orElseThrow())
          .matches(
              "pressure needed: the appliance needs 400.0 psi and the hose before it is rated"
                  + " \\d+ psi");
    }
  }
}
