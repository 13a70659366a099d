package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hosewright.job.Job;
import hosewright.line.model.FirstLeg;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.thread.LocalThreads;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

final class FlowingTest {
  private static final Planner PLANNER =
      new Planner(
          DemoCatalogue.get(),
          DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
          DemoCatalogue.DATE,
          CurrencyUnit.USD,
          LocalThreads.none());

  private static Job job(String... more) {
    List<String> answers =
        new ArrayList<>(
            List.of(
                "from", "2.5 NH male hydrant",
                "to", "1.5 NH nozzle",
                "need", "50 psi",
                "size", "1.75 in",
                "section", "50 ft"));
    answers.addAll(List.of(more));
    return DemoCatalogue.job(answers.toArray(String[]::new));
  }

  @Test
  void the_source_that_a_plan_asks_for_brings_the_flow_it_was_planned_for() {
    long seed = 20261125;
    Random random = new Random(seed);
    for (int i = 0; i < 25; i++) {
      String flow = String.format(Locale.ROOT, "%.1f gpm", 40 + 90 * random.nextDouble());
      String length = String.format(Locale.ROOT, "%.0f ft", 60 + 300 * random.nextDouble());
      LinePlan plan = PLANNER.plan(job("flow", flow, "length", length));
      String source = String.format(Locale.ROOT, "%.6f psi", plan.hydraulics().requiredSourcePsi());
      Flowing flowing =
          PLANNER
              .flow(job("flow", flow, "length", length, "source-pressure", source))
              .orElseThrow();
      assertThat(flowing.arrives().flowGpm())
          .as("seed %d, %s over %s", seed, flow, length)
          .isCloseTo(plan.flowGpm(), within(0.1));
      assertThat(flowing.arrives().deliveredPsi()).isCloseTo(50, within(0.1));
    }
  }

  @Test
  void a_weaker_source_brings_less_and_says_what_takes_the_pressure() {
    Flowing flowing =
        PLANNER
            .flow(job("flow", "150 gpm", "length", "400 ft", "source-pressure", "150 psi"))
            .orElseThrow();
    assertThat(flowing.arrives().flowGpm()).isBetween(100.0, 150.0);
    assertThat(flowing.limitedBy()).contains("1.75 in x 50 ft");
    assertThat(flowing.profile().get(0).closedPsi()).isEqualTo(150);
  }

  @Test
  void without_a_source_there_is_no_flow_to_find() {
    assertThatThrownBy(() -> PLANNER.flow(job("flow", "150 gpm", "length", "400 ft")))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("source-pressure");
  }

  @Test
  void sizes_stand_side_by_side_with_the_winner_first() {
    Job open =
        DemoCatalogue.job(
            "from", "2.5 NH male hydrant",
            "to", "1.5 NH nozzle",
            "length", "200 ft",
            "flow", "95 gpm",
            "need", "50 psi",
            "source-pressure", "120 psi");
    List<LinePlan> sizes = PLANNER.plansBySize(open);
    assertThat(sizes)
        .extracting(plan -> FirstLeg.hose(plan).sizeIn())
        .doesNotHaveDuplicates()
        .hasSizeGreaterThan(4);
    assertThat(sizes.get(0).total()).isEqualTo(PLANNER.plan(open).total());
    assertThat(sizes)
        .filteredOn(LinePlan::feasible)
        .isSortedAccordingTo((one, other) -> one.total().compareTo(other.total()));
  }
}
