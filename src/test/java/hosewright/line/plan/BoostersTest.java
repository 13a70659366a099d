package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.intake.JobText;
import hosewright.job.layout.LayoutForm;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Role;
import hosewright.problem.BadInputException;
import hosewright.thread.LocalThreads;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Pumps from the demo catalogue on the way of a line too long for its source. */
class BoostersTest {
  private static final String BYPASS =
      """
      from: 5 Storz pump
      pump-curve: 180 psi at 0 gpm; 165 psi at 1000 gpm
      legs:
        - { leg: bypass, length: 3000 ft, size: 5 in, section: 100 ft, WISH to: 5 Storz tank, flow: 1000 gpm, need: 5 psi }
      """;

  /** 0.08 x 10² is 8 psi for 100 ft, 252 psi for 3,150 ft of hose: one pump of 160 psi does. */
  @Test
  void as_many_pumps_as_are_needed_stand_where_their_intakes_keep_what_they_must() {
    LinePlan alone = plan("");
    LinePlan boosted = plan("boosters: as needed,");

    assertThat(alone.feasible()).isFalse();
    assertThat(boosted.feasible()).isTrue();
    assertThat(pumps(boosted)).hasSize(1);
    Check intake =
        boosted.checks().stream()
            .filter(check -> check.id() == CheckId.PUMP_INTAKE)
            .findFirst()
            .orElseThrow();
    assertThat(intake.value()).isGreaterThanOrEqualTo(20);
    assertThat(boosted.items()).extracting(item -> item.item()).contains("BP-5-DSL");
    // What pumps add stands in the balance: need and losses less that come to what is required.
    assertThat(boosted.hydraulics().pumpedPsi()).isPresent();
  }

  @Test
  void a_line_that_needs_none_has_none() {
    LinePlan plan = plan("boosters: as needed,", "length: 1000 ft");

    assertThat(plan.feasible()).isTrue();
    assertThat(pumps(plan)).isEmpty();
  }

  @Test
  void a_pump_nobody_sells_is_told_with_the_nearest() {
    assertThatThrownBy(() -> plan("pump: BP-5-DLS at 1500 ft,"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("BP-5-DSL");
  }

  /** The big one passes 1,800 gpm at the most, the biggest 2,500. */
  @Test
  void a_flow_that_no_pump_passes_is_an_answer_that_names_the_leg() {
    LinePlan plan = plan("pump: booster at 1500 ft,", "flow: 2600 gpm");

    assertThat(plan.feasible()).isFalse();
    assertThat(plan.limitedBy().orElseThrow()).contains("bypass, part 1").contains("no pump");
  }

  private static List<Node> pumps(LinePlan plan) {
    return plan.layout().nodes().stream().filter(node -> node.role() == Role.PUMP).toList();
  }

  private static LinePlan plan(String wish, String... other) {
    String text = BYPASS.replace("WISH", wish);
    for (String answer : other) {
      String word = answer.substring(0, answer.indexOf(':'));
      text = text.replaceFirst(word + ": [^,]*", answer);
    }
    return new Planner(
            DemoCatalogue.get(),
            DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
            DemoCatalogue.DATE,
            CurrencyUnit.USD,
            LocalThreads.none())
        .plan(LayoutForm.read(JobText.layout(text)));
  }
}
