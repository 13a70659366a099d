package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.catalogue.ItemKind;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.LinePlan;
import hosewright.line.search.SmallShop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What becomes of a plan under what others teach of the same hose and appliances. */
class TaughtChecksTest {

  private static LinePlan plan(String... more) {
    List<String> answers =
        new ArrayList<>(
            List.of(
                "from", "1.5 NH male pump",
                "to", "1.5 NH nozzle",
                "length", "400 ft",
                "section", "50 ft",
                "size", "1.75 in",
                "flow", "150 gpm",
                "need", "50 psi"));
    answers.addAll(List.of(more));
    return DemoCatalogue.plan(answers.toArray(String[]::new));
  }

  private static Optional<Check> check(LinePlan plan, CheckId id) {
    return plan.checks().stream().filter(check -> check.id() == id).findFirst();
  }

  // C (Q/100)² (L/100) over 9 x 50 ft at 150 gpm: 15.5 x 2.25 x 4.5 = 156.9 psi; 10 x 2.25 x 4.5 =
  // 101.2 psi. 1.75 in hose is taught as both (Renton Fire Department; City of Rohnert Park).
  @Test
  void a_line_that_holds_with_both_coefficients_taught_for_its_hose_says_so() {
    Check both =
        check(plan("source-pressure", "230 psi"), CheckId.FRICTION_COEFFICIENTS).orElseThrow();
    assertThat(both.outcome()).isEqualTo(Check.Outcome.PASS);
    assertThat(both.note())
        .isEqualTo(
            "holds under every coefficient taught for the hose, C = 15.5 and 10: it takes 206.9"
                + " psi, and the source gives 230.0");
  }

  @Test
  void a_line_planned_with_the_lower_one_is_warned_of_where_the_higher_would_take_too_much() {
    Check lower =
        check(
                plan("friction-coefficient", "10", "source-pressure", "180 psi"),
                CheckId.FRICTION_COEFFICIENTS)
            .orElseThrow();
    assertThat(lower.outcome()).isEqualTo(Check.Outcome.WARN);
    assertThat(lower.value()).isCloseTo(50 + 156.94, within(0.1));
    assertThat(lower.note())
        .startsWith(
            "holds under some of the coefficients taught for the hose, C = 10 and 15.5, and not"
                + " under all");
  }

  @Test
  void a_line_that_none_of_them_saves_says_that() {
    LinePlan plan = plan("source-pressure", "120 psi", "lines", "1");
    assertThat(plan.feasible()).isFalse();
    assertThat(check(plan, CheckId.FRICTION_COEFFICIENTS).orElseThrow().note())
        .startsWith("holds under none");
  }

  @Test
  void hose_of_which_one_coefficient_is_taught_has_no_such_check() {
    LinePlan plan = plan("size", "2.5 in", "source-pressure", "230 psi");
    assertThat(check(plan, CheckId.FRICTION_COEFFICIENTS)).isEmpty();
  }

  // Wye of 2.5 in throughout at 200 gpm: K 0.9 (LMNO Engineering, tee in its line) on v = 0.4085 x
  // 200/6.25 = 13.07 ft/s, head 1.152 psi: 1.04 psi. Forestry counts 5 psi for it (NWCG Fire Math
  // 3.4), 3.96 more. Hose: 2 x 2² x 1 + 2 x 1² x 1 = 10 psi, so 61.04 in all, and 65.00 by
  // forestry.
  @Test
  void what_forestry_counts_for_a_wye_below_350_gpm_stands_beside_and_is_tried() {
    Check holds = check(wyed("66 psi"), CheckId.APPLIANCE_LOSS).orElseThrow();
    assertThat(holds.outcome()).isEqualTo(Check.Outcome.PASS);
    assertThat(holds.value()).isCloseTo(65.0, within(0.01));
    assertThat(holds.note()).contains("4.0 psi more").contains("holds all the same");
    assertThat(holds.source()).contains("NWCG");

    LinePlan tight = wyed("64 psi");
    assertThat(tight.feasible()).isTrue();
    assertThat(tight.hydraulics().requiredSourcePsi()).isCloseTo(61.04, within(0.01));
    Check fails = check(tight, CheckId.APPLIANCE_LOSS).orElseThrow();
    assertThat(fails.outcome()).isEqualTo(Check.Outcome.WARN);
    assertThat(fails.note()).contains("it would not hold");
  }

  private static LinePlan wyed(String sourcePressure) {
    SmallShop shop = new SmallShop();
    shop.part("H", ItemKind.HOSE, "2.5 NH female swivel", "2.5 NH male").hose(2.5, 100, "H").at(99);
    shop.part("Y", ItemKind.WYE, "2.5 NH female swivel", "2.5 NH male", "2.5 NH male").at(100);
    return shop.plan(
        "from", "2.5 NH male pump",
        "to", "2.5 NH female nozzle",
        "length", "90 ft",
        "attack-lines", "2",
        "attack-length", "90 ft",
        "flow", "100 gpm",
        "need", "50 psi",
        "source-pressure", sourcePressure);
  }
}
