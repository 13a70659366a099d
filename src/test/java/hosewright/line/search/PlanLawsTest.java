package hosewright.line.search;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.job.Job;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.FirstLeg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Part;
import hosewright.line.model.SectionCount;
import hosewright.line.plan.DemoCatalogue;
import hosewright.line.water.PlanHydraulics;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What holds of every plan, over random jobs on the demo catalogue. */
class PlanLawsTest {
  private static final int JOBS = 16;

  private static final List<LinePlan> PLANS =
      IntStream.range(0, JOBS)
          .mapToObj(seed -> DemoCatalogue.plan(RandomJobs.answers(seed)))
          .toList();

  private static void everyFeasiblePlan(BiConsumer<String, LinePlan> law) {
    int feasible = 0;
    for (int seed = 0; seed < JOBS; seed++) {
      if (PLANS.get(seed).feasible()) {
        law.accept("seed " + seed, PLANS.get(seed));
        feasible++;
      }
    }
    assertThat(feasible).isGreaterThan(JOBS / 3);
  }

  @Test
  void every_joint_of_a_feasible_plan_mates_or_goes_by_one_name() {
    everyFeasiblePlan(
        (seed, plan) -> {
          List<End[]> joints = joints(plan.layout().run());
          for (int i = 0; i < joints.size(); i++) {
            End up = joints.get(i)[0];
            End down = joints.get(i)[1];
            Verdict verdict = Mating.of(up, down);
            boolean byName =
                verdict.outcome() == Verdict.Outcome.MEASURE && Mating.sameByName(up, down);
            assertThat(verdict.mates() || byName).as("%s: %s to %s", seed, up, down).isTrue();
            boolean atAnEnd = i == 0 || i == joints.size() - 1;
            assertThat(verdict.removable() || byName || atAnEnd)
                .as("%s: permanent joint of %s to %s", seed, up, down)
                .isTrue();
          }
        });
  }

  /** The ends that meet, from source to appliance, like sections taken apart. */
  private static List<End[]> joints(List<Part> run) {
    List<End[]> joints = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      Part part = run.get(i);
      for (int like = 1; like < part.count(); like++) {
        joints.add(new End[] {part.downstream().orElseThrow(), part.upstream().orElseThrow()});
      }
      if (i + 1 < run.size()) {
        End next = run.get(i + 1).upstream().orElseThrow();
        joints.add(new End[] {part.downstream().orElseThrow(), next});
      }
    }
    return joints;
  }

  @Test
  void total_is_the_sum_of_the_items() {
    everyFeasiblePlan(
        (seed, plan) -> {
          Money sum = Money.zero(CurrencyUnit.USD);
          for (Bill.Item item : plan.items()) {
            Money extended = item.unitPrice().orElseThrow().multipliedBy(item.quantity());
            assertThat(item.extended()).as("%s: %s", seed, item).contains(extended);
            sum = sum.plus(extended);
          }
          assertThat(plan.total()).as(seed).isEqualTo(sum);
        });
  }

  /** Counted from the drawing of one line, part by part. */
  @Test
  void each_gasketed_end_that_is_bought_has_a_gasket_and_each_kind_a_tenth_and_one_at_least_more() {
    everyFeasiblePlan(
        (seed, plan) -> {
          Map<String, Integer> all = new HashMap<>();
          int bought = 0;
          List<End[]> joints = joints(plan.layout().run());
          for (int i = 0; i < joints.size(); i++) {
            for (int half = 0; half < 2; half++) {
              End end = joints.get(i)[half];
              if (end.carriesGasket()) {
                all.merge(end.sizeIn() + " " + end.family(), 1, Integer::sum);
                boolean owned = i == 0 && half == 0 || i == joints.size() - 1 && half == 1;
                bought += owned ? 0 : 1;
              }
            }
          }
          int spares = all.values().stream().mapToInt(count -> Math.max(1, (count + 9) / 10)).sum();
          Bill.Gaskets gaskets = plan.bill().gaskets();
          if (FirstLeg.lines(plan) == 1) {
            assertThat(gaskets.fitted() + gaskets.bought()).as(seed).isEqualTo(bought);
            assertThat(gaskets.spare()).as(seed).isEqualTo(spares);
          }
        });
  }

  @Test
  void every_gasket_billed_is_one_that_no_part_of_its_joint_brings() {
    GasketLawTest.holds(JOBS, PLANS::get);
  }

  @Test
  void laid_length_covers_the_need() {
    everyFeasiblePlan(
        (seed, plan) -> {
          double laidFt = 0;
          for (SectionCount sections : FirstLeg.sections(plan)) {
            laidFt += sections.lengthFt() * sections.count() / FirstLeg.lines(plan);
          }
          assertThat(laidFt).as(seed).isEqualTo(FirstLeg.hose(plan).laidFt());
          assertThat(laidFt).as(seed).isGreaterThanOrEqualTo(FirstLeg.hose(plan).neededFt() - 1e-6);
        });
  }

  /** One line only: more lines are weighed only when a single one fails. */
  @Test
  void a_longer_line_is_never_cheaper() {
    int compared = 0;
    for (int seed = 0; seed < JOBS; seed++) {
      String slack = seed % 2 == 0 ? "15 %" : "60 %";
      LinePlan far = DemoCatalogue.plan(RandomJobs.answers(seed, "lines", "1", "slack", slack));
      if (far.feasible() && far.bill().unpriced().isEmpty()) {
        LinePlan near = DemoCatalogue.plan(RandomJobs.answers(seed, "lines", "1"));
        assertThat(near.feasible()).as("seed %d", seed).isTrue();
        assertThat(near.total().isGreaterThan(far.total()))
            .as("seed %d: %s for less, %s for more", seed, near.total(), far.total())
            .isFalse();
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(JOBS / 4);
  }

  @Test
  void more_flow_through_one_line_never_takes_less_pressure_at_the_source() {
    int compared = 0;
    for (int seed = 0; seed < 16; seed++) {
      Job job = DemoCatalogue.job(RandomJobs.answers(seed));
      Shop shop =
          Shop.at(
              DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
              DemoCatalogue.get(),
              DemoCatalogue.DATE,
              CurrencyUnit.USD);
      for (Evaluated plan : shop.allWith(job, 1)) {
        double lastPsi = plan.hydraulics().requiredSourcePsi();
        for (int more = 1; more <= 20; more++) {
          double flowGpm = job.flowGpm() * (1 + 0.1 * more);
          Job greater = DemoCatalogue.job(RandomJobs.answers(seed, "flow", flowGpm + " gpm"));
          double psi = PlanHydraulics.of(greater, plan.assembly()).requiredSourcePsi();
          assertThat(psi).as("seed %d at %.1f gpm", seed, flowGpm).isGreaterThanOrEqualTo(lastPsi);
          lastPsi = psi;
        }
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(40);
  }

  @Test
  void every_job_comes_to_an_answer_that_passes_or_says_what_fails() {
    for (int seed = 0; seed < JOBS; seed++) {
      LinePlan plan = PLANS.get(seed);
      boolean fails = plan.checks().stream().anyMatch(c -> c.outcome() == Check.Outcome.FAIL);
      assertThat(plan.feasible())
          .as("seed %d", seed)
          .isEqualTo(!fails && !plan.layout().run().isEmpty());
      assertThat(plan.limitedBy().isPresent()).as("seed %d", seed).isEqualTo(!plan.feasible());
    }
  }
}
