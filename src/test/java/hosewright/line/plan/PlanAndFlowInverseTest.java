package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.line.model.FirstLeg;
import hosewright.line.model.Layout;
import hosewright.line.model.LinePlan;
import hosewright.line.search.RandomJobs;
import hosewright.thread.LocalThreads;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** {@code line plan} and {@code line flow} against each other, through the planner. */
class PlanAndFlowInverseTest {
  private static final Planner PLANNER =
      new Planner(
          DemoCatalogue.get(),
          DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
          DemoCatalogue.DATE,
          CurrencyUnit.USD,
          LocalThreads.none());

  /** What states a source in {@link RandomJobs}. */
  private static final List<String> SOURCE =
      List.of("source-pressure", "static", "residual", "at", "pump-curve");

  @Test
  void the_source_a_plan_asks_for_brings_its_flow_on_25_feasible_random_jobs_by_the_planner() {
    holds(25);
  }

  @Test
  @Tag("long")
  void the_source_a_plan_asks_for_brings_its_flow_on_10000_feasible_random_jobs_by_the_planner() {
    holds(10_000);
  }

  private static void holds(int jobs) {
    int feasible = 0;
    for (int seed = 1_000; feasible < jobs; seed++) {
      assertThat(seed).as("seeds tried").isLessThan(1_000 + 20 * jobs);
      String[] answers = withoutSource(RandomJobs.answers(seed));
      LinePlan plan = PLANNER.plan(DemoCatalogue.job(answers));
      double sourcePsi = plan.hydraulics().requiredSourcePsi();
      if (!plan.feasible() || sourcePsi <= 0) {
        continue;
      }
      // The line that was planned, not the one a planner would lay from that source.
      String[] same =
          with(
              answers,
              "source-pressure",
              String.format(Locale.ROOT, "%.9f psi", sourcePsi),
              "size",
              FirstLeg.hose(plan).sizeIn() + " in",
              "lines",
              String.valueOf(FirstLeg.lines(plan)));
      Flowing flowing = PLANNER.flow(DemoCatalogue.job(same)).orElseThrow();
      if (!laid(flowing.layout()).equals(laid(plan.layout()))) {
        continue;
      }
      assertThat(flowing.arrives().flowGpm())
          .as("seed %d: %s", seed, String.join(" ", same))
          .isCloseTo(plan.flowGpm(), within(0.1));
      assertThat(flowing.arrives().deliveredPsi())
          .as("seed %d", seed)
          .isCloseTo(plan.needPsi(), within(0.1));
      feasible++;
    }
  }

  private static String[] withoutSource(String[] answers) {
    return IntStream.range(0, answers.length / 2)
        .filter(i -> !SOURCE.contains(answers[2 * i]))
        .boxed()
        .flatMap(i -> Arrays.stream(new String[] {answers[2 * i], answers[2 * i + 1]}))
        .toArray(String[]::new);
  }

  private static String[] with(String[] answers, String... more) {
    String[] all = Arrays.copyOf(answers, answers.length + more.length);
    System.arraycopy(more, 0, all, answers.length, more.length);
    return all;
  }

  /** The parts of a line without what the water does in them. */
  private static List<Object> laid(Layout layout) {
    return layout.run().stream()
        .map(part -> (Object) List.of(part.role(), part.goods(), part.ends(), part.count()))
        .toList();
  }
}
