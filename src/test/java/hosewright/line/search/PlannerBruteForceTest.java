package hosewright.line.search;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.job.Conditions;
import hosewright.job.Job;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Planner;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
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
      BruteForce bruteForce = new BruteForce(job, random.shop());
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

      Optional<Long> least = bruteForce.cheapest();
      if (least.isPresent()) {
        LinePlan plan = runnerUpHolds(random, job, bruteForce, seed);
        assertThat(plan.feasible()).as("seed %d: %s", seed, job).isTrue();
        assertThat(plan.total().getAmountMinorLong()).as("seed %d", seed).isEqualTo(least.get());
      } else {
        nearestHolds(random, job, bruteForce, seed);
      }
    }
    // Shops that can serve their job must be common, or the comparison says little.
    assertThat(servedFree).isGreaterThan(free / 4);
    assertThat(servedOnTerms).isGreaterThan(SHOPS / 20);
    assertThat(looked).isGreaterThan(50L * SHOPS);
  }

  @Test
  void sections_bought_and_made_up_in_one_line_in_260_small_random_shops() {
    int mixed = holds(260, 500, RandomShop::withBench, RandomShop::job);

    assertThat(mixed).isGreaterThan(5);
  }

  @Test
  void valves_at_stations_and_the_runner_up_in_200_small_random_shops() {
    holds(200, 500, RandomShop::new, RandomShop::stationJob);
  }

  @Test
  void a_wye_to_two_attack_lines_and_the_runner_up_in_200_small_random_shops() {
    holds(200, 800, RandomShop::new, RandomShop::wyeJob);
  }

  @Test
  void lines_from_two_outlets_and_the_runner_up_in_100_small_random_shops() {
    holds(100, 800, RandomShop::new, RandomShop::outletsJob);
  }

  @Test
  void ground_that_goes_up_and_down_and_the_runner_up_in_60_small_random_shops() {
    holds(60, 250, RandomShop::new, RandomShop::routeJob);
  }

  @Test
  void many_of_one_adapter_beside_the_line_and_the_runner_up_in_200_small_random_shops() {
    holds(200, 500, RandomShop::withDeepBreaks, RandomShop::countedJob);
  }

  @Test
  @Tag("long")
  void stations_wyes_outlets_routes_and_made_up_hose_in_2000_small_random_shops_each() {
    holds(2_000, MOST_LINES, RandomShop::new, RandomShop::stationJob);
    holds(2_000, MOST_LINES, RandomShop::new, RandomShop::wyeJob);
    holds(2_000, MOST_LINES, RandomShop::new, RandomShop::outletsJob);
    holds(2_000, MOST_LINES, RandomShop::new, RandomShop::routeJob);
    holds(2_000, MOST_LINES, RandomShop::withBench, RandomShop::job);
    holds(2_000, MOST_LINES, RandomShop::withDeepBreaks, RandomShop::countedJob);
  }

  /** How many of the best plans lay sections bought coupled beside sections made up. */
  private static int holds(
      int wanted,
      int mostLines,
      Function<Random, RandomShop> shopOf,
      Function<RandomShop, Job> jobOf) {
    int shops = 0;
    int served = 0;
    int mixed = 0;
    for (int seed = 0; shops < wanted; seed++) {
      RandomShop random = shopOf.apply(new Random(seed));
      Job job = jobOf.apply(random);
      BruteForce bruteForce = new BruteForce(job, random.shop());
      Optional<Map<Double, Long>> cheapest = bruteForce.cheapestBySize(mostLines);
      // A shop that has no line at all says little: only some of those are looked at.
      if (cheapest.isEmpty() || bruteForce.lines() == 0 && seed % 20 != 0) {
        continue;
      }
      shops++;
      served += cheapest.get().isEmpty() ? 0 : 1;
      assertThat(bySize(random, job)).as("seed %d: %s", seed, job).isEqualTo(cheapest.get());
      mixed += mixes(runnerUpHolds(random, job, bruteForce, seed)) ? 1 : 0;
      if (bruteForce.cheapest().isEmpty()) {
        nearestHolds(random, job, bruteForce, seed);
      }
    }
    assertThat(served).isGreaterThan(wanted / 5);
    return mixed;
  }

  private static boolean mixes(LinePlan plan) {
    List<String> bought = plan.items().stream().map(Bill.Item::item).toList();
    return plan.feasible() && bought.containsAll(List.of("H0-0", "B"));
  }

  /** The plan; its next best that buys other goods is held against every line there is. */
  private static LinePlan runnerUpHolds(
      RandomShop random, Job job, BruteForce bruteForce, int seed) {
    Planner.Explained explained = random.shop().planner().explain(job);
    if (explained.plan().feasible() && explained.plan().bill().unpriced().isEmpty()) {
      Map<String, Integer> bought = new TreeMap<>();
      explained.plan().items().forEach(item -> bought.put(item.item(), item.quantity()));
      assertThat(explained.reasoning().runnerUp().map(rival -> rival.total().getAmountMinorLong()))
          .as("runner-up, seed %d: %s", seed, job)
          .isEqualTo(bruteForce.cheapestButFor(bought));
    }
    return explained.plan();
  }

  /**
   * Where nothing passes, no line that keeps the trade's rules and could be bought is nearer to it
   * than the one shown.
   */
  private static void nearestHolds(RandomShop random, Job job, BruteForce bruteForce, int seed) {
    Optional<Shortfall> nearest = bruteForce.nearest();
    if (nearest.isEmpty()) {
      return;
    }
    Evaluated shown = random.shop().shop().find(job).best().orElseThrow();
    if (!shown.bestThatCanBe()) {
      assertThat(shown.partsToSource()).as("nearest, seed %d: %s", seed, job).isZero();
      assertThat(shown.shortfall())
          .as("nearest, seed %d: %s", seed, job)
          .isLessThanOrEqualTo(nearest.get());
    }
  }

  /** What the planner's best plan of each size costs, where nothing has to be sourced. */
  private static Map<Double, Long> bySize(RandomShop random, Job job) {
    Map<Double, Long> found = new TreeMap<>();
    random.shop().shop().allWith(job, job.wishes().lines().orElseThrow()).stream()
        .filter(plan -> !plan.assembly().hasPartToSource())
        .forEach(
            plan ->
                found.put(
                    plan.assembly().topology().hose().sizeIn(), plan.total().getAmountMinorLong()));
    return found;
  }
}
