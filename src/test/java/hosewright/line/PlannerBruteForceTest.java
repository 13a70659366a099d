package hosewright.line;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The planner against a search that looks at every line there is. */
class PlannerBruteForceTest {
  private static final int SHOPS = 2_000;

  /** Shops with more lines than this are passed over, for the sake of time. */
  private static final int MOST_LINES = 2_000;

  @Test
  void planner_finds_the_least_cost_for_each_hose_size_in_2000_small_random_shops() {
    int shops = 0;
    int free = 0;
    int servedFree = 0;
    int servedOnTerms = 0;
    long looked = 0;
    for (int seed = 0; shops < SHOPS; seed++) {
      RandomShop random = new RandomShop(new Random(seed));
      Job job = random.job();
      Catalogue catalogue = random.shop().catalogue();
      BruteForce bruteForce =
          new BruteForce(job, catalogue, catalogue.listPricesOn(SmallShop.DATE));
      Optional<Map<Double, Long>> cheapest = bruteForce.cheapestBySize(MOST_LINES);
      if (cheapest.isEmpty()) {
        continue;
      }
      Map<Double, Long> expected = cheapest.get();
      shops++;
      boolean onTerms = !job.conditions().equals(Conditions.NONE);
      free += onTerms ? 0 : 1;
      servedFree += onTerms || expected.isEmpty() ? 0 : 1;
      servedOnTerms += onTerms && !expected.isEmpty() ? 1 : 0;
      looked += bruteForce.lines();

      assertThat(bySize(random, job)).as("seed %d: %s", seed, job).isEqualTo(expected);

      Optional<Long> least = expected.values().stream().min(Long::compare);
      if (least.isPresent()) {
        LinePlan plan = random.shop().planner().plan(job);
        assertThat(plan.feasible()).as("seed %d: %s", seed, job).isTrue();
        assertThat(plan.total().getAmountMinorLong()).as("seed %d", seed).isEqualTo(least.get());
      }
    }
    // Shops that can serve their job must be common, or the comparison says little.
    assertThat(servedFree).isGreaterThan(free / 4);
    assertThat(servedOnTerms).isGreaterThan(SHOPS / 20);
    assertThat(looked).isGreaterThan(50L * SHOPS);
  }

  /** What the planner's best plan of each size costs, where nothing has to be sourced. */
  private static Map<Double, Long> bySize(RandomShop random, Job job) {
    Map<Double, Long> found = new TreeMap<>();
    random.shop().planner().allWith(job, job.wishes().lines().orElseThrow()).stream()
        .filter(plan -> !plan.assembly().hasPartToSource())
        .forEach(
            plan ->
                found.put(
                    plan.assembly().frame().hose().sizeIn(), plan.total().getAmountMinorLong()));
    return found;
  }
}
