package hosewright.line.search;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.job.Job;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.DemoCatalogue;
import hosewright.line.plan.Planner;
import hosewright.thread.LocalThreads;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The trade-off between price, pressure, weight and sections. */
class FrontTest {

  /** Shops with more lines than this are passed over, for the sake of time. */
  private static final int MOST_LINES = 800;

  private static final int MOST_SHOWN = 7;

  /** Of random jobs on the demo catalogue, searched for once. */
  private static final List<Front> FRONTS =
      IntStream.range(0, 12).mapToObj(seed -> shop().front(job(seed))).toList();

  private static Job job(int seed) {
    return DemoCatalogue.job(RandomJobs.answers(seed, "lines", "1"));
  }

  @Test
  void front_is_what_a_search_of_every_line_leaves_undominated_in_120_small_random_shops() {
    frontIsUndominated(120);
  }

  @Test
  @Tag("long")
  void front_is_what_a_search_of_every_line_leaves_undominated_in_400_small_random_shops() {
    frontIsUndominated(400);
  }

  private static void frontIsUndominated(int wanted) {
    int shops = 0;
    int many = 0;
    for (int seed = 0; shops < wanted; seed++) {
      RandomShop random = new RandomShop(new Random(seed));
      Job job = random.job();
      BruteForce bruteForce = new BruteForce(job, random.shop());
      Optional<Set<TradeOff>> expected = bruteForce.undominated(MOST_LINES);
      if (expected.isEmpty()) {
        continue;
      }
      shops++;
      many += expected.get().size() > 1 ? 1 : 0;

      assertThat(tradeOffs(random.shop().shop().front(job).spread(Integer.MAX_VALUE)))
          .as("seed %d: %s", seed, job)
          .isEqualTo(expected.get());
    }
    // Fronts of a single line would say little.
    assertThat(many).isGreaterThan(wanted / 20);
  }

  @Test
  void front_of_a_wye_and_of_stations_is_undominated_in_20_small_random_shops_each() {
    frontHolds(20, 150, RandomShop::wyeJob);
    frontHolds(20, 150, RandomShop::stationJob);
  }

  @Test
  @Tag("long")
  void front_of_a_wye_and_of_stations_is_undominated_in_200_small_random_shops_each() {
    frontHolds(200, MOST_LINES, RandomShop::wyeJob);
    frontHolds(200, MOST_LINES, RandomShop::stationJob);
  }

  private static void frontHolds(int wanted, int mostLines, Function<RandomShop, Job> jobOf) {
    int shops = 0;
    for (int seed = 0; shops < wanted; seed++) {
      RandomShop random = new RandomShop(new Random(seed));
      Job job = jobOf.apply(random);
      BruteForce bruteForce = new BruteForce(job, random.shop());
      Optional<Set<TradeOff>> expected = bruteForce.undominated(mostLines);
      if (expected.isEmpty() || expected.get().isEmpty()) {
        continue;
      }
      shops++;
      assertThat(tradeOffs(random.shop().shop().front(job).spread(Integer.MAX_VALUE)))
          .as("seed %d: %s", seed, job)
          .isEqualTo(expected.get());
    }
  }

  @Test
  void no_row_is_dominated_and_at_most_seven_are_shown_on_the_demo_catalogue() {
    int capped = 0;
    for (int seed = 0; seed < FRONTS.size(); seed++) {
      Front front = FRONTS.get(seed);
      List<TradeOff> all = front.spread(Integer.MAX_VALUE).stream().map(TradeOff::of).toList();
      List<TradeOff> shown = front.spread(MOST_SHOWN).stream().map(TradeOff::of).toList();

      assertThat(all).as("seed %d", seed).doesNotHaveDuplicates();
      for (TradeOff one : all) {
        assertThat(all).as("seed %d", seed).noneMatch(o -> BruteForce.dominates(o, one));
      }
      assertThat(shown).as("seed %d", seed).hasSize(Math.min(MOST_SHOWN, all.size()));
      assertThat(all).as("seed %d", seed).containsAll(shown);
      capped += all.size() > shown.size() ? 1 : 0;
    }
    assertThat(capped).isPositive();
  }

  @Test
  void rows_shown_hold_the_best_in_each_measure_and_start_with_the_plan_itself() {
    for (int seed = 0; seed < FRONTS.size(); seed++) {
      Job job = job(seed);
      Front front = FRONTS.get(seed);
      List<TradeOff> all = front.spread(Integer.MAX_VALUE).stream().map(TradeOff::of).toList();
      List<TradeOff> shown = front.spread(MOST_SHOWN).stream().map(TradeOff::of).toList();
      if (all.isEmpty()) {
        continue;
      }
      assertThat(least(shown)).as("seed %d", seed).isEqualTo(least(all));
      LinePlan plan = planner().plan(job);
      if (plan.feasible() && plan.bill().unpriced().isEmpty()) {
        assertThat(shown.get(0).cents())
            .as("seed %d", seed)
            .isEqualTo(plan.total().getAmountMinorLong());
      }
    }
  }

  private static List<Long> least(List<TradeOff> of) {
    return List.of(
        of.stream().mapToLong(TradeOff::cents).min().orElseThrow(),
        of.stream().mapToLong(TradeOff::tenthsPsi).min().orElseThrow(),
        of.stream().mapToLong(TradeOff::chargedLb).min().orElseThrow(),
        of.stream().mapToLong(TradeOff::sections).min().orElseThrow());
  }

  private static Shop shop() {
    return Shop.at(
        DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
        DemoCatalogue.get(),
        DemoCatalogue.DATE,
        CurrencyUnit.USD);
  }

  private static Planner planner() {
    return new Planner(
        DemoCatalogue.get(),
        DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
        DemoCatalogue.DATE,
        CurrencyUnit.USD,
        LocalThreads.none());
  }

  private static Set<TradeOff> tradeOffs(List<Evaluated> plans) {
    return plans.stream().map(TradeOff::of).collect(Collectors.toSet());
  }
}
