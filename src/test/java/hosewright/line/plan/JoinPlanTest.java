package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.network.Shares;
import hosewright.intake.JobText;
import hosewright.job.layout.LayoutForm;
import hosewright.line.model.LinePlan;
import hosewright.line.model.LinePlan.OfLeg;
import hosewright.line.model.LinePlan.Unthrottled;
import hosewright.thread.LocalThreads;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/**
 * Lines that meet again, planned from the demo catalogue: flows divide by equal loss, as is taught
 * of pipes in parallel.
 */
class JoinPlanTest {
  private static final LinePlan PLAN =
      plan(
          """
          use: fire
          from: 2.5 NH male pump
          pump-curve: 215 psi at 0 gpm; 200 psi at 250 gpm; 180 psi at 700 gpm
          legs:
            - { leg: left, length: 200 ft, size: 3 in, section: 50 ft }
            - { leg: right, length: 300 ft, size: 3 in, section: 50 ft }
            - { leg: monitor, behind: [left, right], length: 25 ft, size: 3 in, section: 50 ft, to: 2.5 NH female monitor, flow: 500 gpm, need: 80 psi }
          """);

  @Test
  void each_line_carries_what_makes_both_lose_alike() {
    double[] shares = Shares.gpm(List.of(gpm -> 250 * gpm * gpm, gpm -> 350 * gpm * gpm), 500);

    assertThat(PLAN.layout().legs())
        .extracting(leg -> leg.name())
        .containsExactly("left", "right", "monitor");
    for (int line = 0; line < 2; line++) {
      assertThat(PLAN.layout().legs().get(line).water().flowGpm())
          .isCloseTo(shares[line], within(1e-3));
    }
    assertThat(PLAN.layout().legs().get(0).water().outletPsi())
        .isCloseTo(PLAN.layout().legs().get(1).water().outletPsi(), within(1e-6));
  }

  @Test
  void one_siamese_is_bought_and_both_lines_end_at_it() {
    assertThat(PLAN.items())
        .filteredOn(item -> item.item().startsWith("S-"))
        .singleElement()
        .satisfies(item -> assertThat(item.quantity()).isEqualTo(1));
    assertThat(PLAN.layout().into(PLAN.layout().node("siamese behind left and right"))).hasSize(2);
    assertThat(PLAN.layout().outlets()).isEqualTo(2);
  }

  @Test
  void the_one_appliance_gets_as_much_with_all_open_as_alone_and_more_than_planned() {
    OfLeg monitor = PLAN.asked().ofLegs().get(0);
    Unthrottled open = monitor.unthrottled().orElseThrow();

    assertThat(open.flowGpm()).isCloseTo(open.aloneGpm(), within(1e-6)).isGreaterThan(500);
    assertThat(monitor.throttlePsi()).isGreaterThan(0);
    // Through the same appliance flow goes by the root of pressure.
    assertThat(open.flowGpm() / 500).isCloseTo(Math.sqrt(open.psi() / 80), within(1e-6));
  }

  @Test
  void no_siamese_that_joins_so_many_is_told_with_the_most_there_is() {
    StringBuilder text =
        new StringBuilder("from: 2.5 NH male pump\nsource-pressure: 150 psi\nlegs:\n");
    for (String leg : List.of("a", "b", "c", "d", "e")) {
      text.append("  - { leg: ").append(leg).append(", ends: x, length: 50 ft }\n");
    }
    text.append(
        "  - { leg: last, begins: x, length: 25 ft, to: 2.5 NH female monitor, flow: 500 gpm, need:"
            + " 80 psi }\n");

    assertThat(plan(text.toString()).limitedBy())
        .hasValueSatisfying(
            limit ->
                assertThat(limit)
                    .contains("legs a and b and c and d and e", "5 inlets", "are 4 (S4-"));
  }

  private static LinePlan plan(String text) {
    return new Planner(
            DemoCatalogue.get(),
            DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
            DemoCatalogue.DATE,
            CurrencyUnit.USD,
            LocalThreads.none())
        .plan(LayoutForm.read(JobText.layout(text)));
  }
}
