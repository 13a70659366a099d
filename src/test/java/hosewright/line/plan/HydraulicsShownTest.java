package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.working.Working;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Check;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.OtherCoefficient;
import hosewright.line.model.LinePlan;
import hosewright.line.water.FittingLoss;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a plan shows of its hydraulics, and the cautions that follow from them. */
class HydraulicsShownTest {

  private static LinePlan plan(String... more) {
    List<String> answers =
        new ArrayList<>(
            List.of(
                "from", "2.5 NH male pump",
                "to", "1.5 NH nozzle",
                "length", "400 ft",
                "section", "50 ft",
                "size", "1.75 in",
                "flow", "150 gpm",
                "need", "50 psi"));
    answers.addAll(List.of(more));
    return DemoCatalogue.plan(answers.toArray(String[]::new));
  }

  // City of Rohnert Park training slides teach C = 10 for 1-3/4 in hose; Renton Fire Department
  // hydraulics training teaches 15.5. Loss goes with C.
  @Test
  void the_other_coefficient_taught_for_a_hose_stands_beside_the_one_used() {
    Hydraulics shown = plan().hydraulics();
    assertThat(shown.frictionBasis()).isEqualTo("coefficient C = 15.5 from the catalogue's hose");
    OtherCoefficient other = shown.otherCoefficients().get(0);
    assertThat(shown.otherCoefficients()).hasSize(1);
    assertThat(other.c()).isEqualTo(10);
    assertThat(other.howSure()).contains("disputed");
    assertThat(other.source()).contains("Rohnert Park");
    assertThat(other.frictionLossPsi())
        .isCloseTo(shown.frictionLossPsi() * 10 / 15.5, within(1e-9));
    assertThat(shown.requiredSourcePsi() - other.requiredSourcePsi())
        .isCloseTo(shown.frictionLossPsi() - other.frictionLossPsi(), within(1e-9));
  }

  @Test
  void a_coefficient_stated_in_the_job_shows_the_catalogues_own_first() {
    Hydraulics shown = plan("friction-coefficient", "12").hydraulics();
    assertThat(shown.frictionBasis()).isEqualTo("coefficient C = 12 as stated in the job");
    assertThat(shown.otherCoefficients())
        .extracting(OtherCoefficient::c)
        .containsExactly(15.5, 10.0);
    assertThat(shown.otherCoefficients().get(0).source()).isEqualTo("the catalogue's hose");
  }

  @Test
  void the_working_ends_in_the_figures_of_the_plan() {
    LinePlan plan = plan("source-pressure", "230 psi", "rise", "10 ft");
    Hydraulics shown = plan.hydraulics();
    assertThat(result(shown, "pressure at the source"))
        .isCloseTo(shown.requiredSourcePsi(), within(1e-9));
    assertThat(result(shown, "the source gives")).isEqualTo(230);
    assertThat(result(shown, "velocity in the hose"))
        .isCloseTo(shown.velocityFtPerS(), within(1e-9));
    assertThat(result(shown, "hose full of water"))
        .isCloseTo(shown.chargedWeightLb(), within(1e-9));
    assertThat(result(shown, "rise on sudden closure, at most"))
        .isCloseTo(shown.surgeHighPsi(), within(1e-9));
    assertThat(result(shown, "nozzle reaction"))
        .isCloseTo(shown.reactionLbf().orElseThrow(), within(1e-9));
    assertThat(shown.working()).allSatisfy(step -> assertThat(step.source()).isNotBlank());
  }

  private static double result(Hydraulics shown, String what) {
    return shown.working().stream()
        .filter(step -> step.what().equals(what))
        .mapToDouble(Working.Step::result)
        .findFirst()
        .orElseThrow();
  }

  private static boolean cautions(LinePlan plan, String words) {
    return plan.cautions().stream().anyMatch(sentence -> sentence.contains(words));
  }

  @Test
  void a_plan_near_a_limit_names_it_and_defers_to_codes_and_licences() {
    LinePlan near = plan("source-pressure", "265 psi");
    assertThat(near.cautions())
        .filteredOn(sentence -> sentence.startsWith("This plan works close to a limit"))
        .singleElement()
        .asString()
        .contains("hose working pressure (265.0 against 272.0 psi)")
        .contains("local codes and a licensed engineer");
    LinePlan far =
        plan("flow", "95 gpm", "need", "40 psi", "source-pressure", "180 psi", "size", "1.75 in");
    assertThat(cautions(far, "close to a limit")).isFalse();
  }

  @Test
  void an_unstated_source_is_not_called_near() {
    LinePlan plan = plan("flow", "95 gpm", "need", "40 psi");
    assertThat(cautions(plan, "delivered pressure (")).isFalse();
  }

  // RMA IP-2 Hose Handbook 2003, p.50: 3 to 1 up to 150 psi working pressure, 4 to 1 above.
  @Test
  void industrial_water_hose_names_the_burst_its_design_ratio_asks_for() {
    LinePlan discharge =
        DemoCatalogue.plan(
            "from", "2 cam plug pump",
            "to", "2 cam socket tank",
            "length", "100 ft",
            "flow", "60 gpm",
            "need", "5 psi",
            "source-pressure", "40 psi",
            "use", "water");
    double rated =
        discharge.checks().stream()
            .filter(check -> check.name().equals("hose working pressure"))
            .findFirst()
            .orElseThrow()
            .limit();
    String ratio = rated <= 150 ? "3 times that, " : "4 times that, ";
    assertThat(cautions(discharge, ratio + Math.round(rated * (rated <= 150 ? 3 : 4)) + " psi"))
        .isTrue();
    assertThat(cautions(plan("use", "fire"), "times that")).isFalse();
  }

  @Test
  void a_line_that_holds_water_says_how_much_there_is_to_drain() {
    LinePlan plan = plan();
    // NWCG Fire Math 3.2: 12.49 gal in 100 ft of 1.75 in bore, so 56 in 450 ft.
    assertThat(cautions(plan, "holds 56 gal of water: drain it")).isTrue();
  }

  @Test
  void a_hydrant_test_that_hardly_moved_the_main_is_warned_of() {
    LinePlan plan = plan("static", "150 psi", "residual", "145 psi", "at", "1500 gpm");
    assertThat(plan.checks())
        .anySatisfy(
            check -> {
              assertThat(check.name()).isEqualTo("hydrant test");
              assertThat(check.outcome()).isEqualTo(Check.Outcome.WARN);
            });
  }

  // The Engineering ToolBox, minor loss coefficients: 0.08 for a threaded union.
  @Test
  void a_part_without_a_stated_loss_takes_the_usual_coefficient_and_its_change_of_bore() {
    End large = End.parse("2.5 NH female");
    End small = End.parse("1.5 NH male");
    double beta = 1.5 / 2.5;
    Fitting reducer =
        (Fitting) FittingLoss.of(Placed.toSource(large, small, OptionalDouble.empty(), 1));
    assertThat(reducer.lossCoefficient()).isCloseTo(0.08 + 0.5 * (1 - beta * beta), within(1e-12));
    assertThat(reducer.source()).contains("union, threaded").contains("change of bore");
  }
}
