package hosewright.fleet.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

final class LevelFundingTest {

  @Test
  void a_lump_is_spread_over_the_years_as_far_as_the_overdue_allow() {
    // Ten sections due in year 1 at 100.00 each, none later, five years, six may wait:
    // 4 must be bought at once, so 400.00 a year buys all by year 3.
    int[] dueBy = {0, 10, 10, 10, 10, 10};
    long[][] price = flat(5, 10_000);
    LevelFunding.Plan plan = new LevelFunding(dueBy, new int[10], price, 6).plan();
    assertThat(plan.yearlyCents()).isEqualTo(40_000);
    assertThat(plan.years()).extracting(LevelFunding.Year::overdue).containsExactly(6, 2, 0, 0, 0);
  }

  @Test
  void money_left_over_is_kept_for_the_peak() {
    int[] dueBy = {0, 0, 0, 6};
    LevelFunding.Plan plan = new LevelFunding(dueBy, new int[6], flat(3, 10_000), 0).plan();
    assertThat(plan.yearlyCents()).isEqualTo(20_000);
    assertThat(plan.years())
        .extracting(LevelFunding.Year::carriedCents)
        .containsExactly(20_000L, 40_000L, 0L);
  }

  @Test
  void nothing_due_needs_nothing() {
    assertThat(new LevelFunding(new int[] {0, 0}, new int[0], flat(1, 1), 0).plan().yearlyCents())
        .isZero();
  }

  @Test
  void no_smaller_equal_spend_does_it_on_small_fleets() {
    againstEveryPlan(400, 1);
  }

  @Test
  @Tag("long")
  void no_smaller_equal_spend_does_it_on_many_small_fleets() {
    againstEveryPlan(40_000, 1_000_000);
  }

  private static void againstEveryPlan(int fleets, long firstSeed) {
    for (long seed = firstSeed; seed < firstSeed + fleets; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int years = 1 + random.nextInt(4);
      int sections = random.nextInt(9);
      int articles = 1 + random.nextInt(3);
      int[] dueBy = new int[years + 1];
      for (int i = 0; i < sections; i++) {
        dueBy[1 + random.nextInt(years)]++;
      }
      for (int year = 1; year <= years; year++) {
        dueBy[year] += dueBy[year - 1];
      }
      int[] article = random.ints(sections, 0, articles).toArray();
      long[][] price = new long[years + 1][articles];
      for (long[] row : price) {
        for (int a = 0; a < articles; a++) {
          row[a] = random.nextInt(1, 40);
        }
      }
      int allowed = random.nextInt(4);
      long least = new EveryPlan(dueBy, article, price, allowed).leastYearly(1, 0, 0, 0);
      LevelFunding.Plan plan = new LevelFunding(dueBy, article, price, allowed).plan();
      assertThat(plan.yearlyCents()).as("seed %d", seed).isEqualTo(least);
      keepsItsWord(plan, dueBy, allowed, seed);
    }
  }

  private static void keepsItsWord(LevelFunding.Plan plan, int[] dueBy, int allowed, long seed) {
    long brought = 0;
    long spent = 0;
    int bought = 0;
    for (LevelFunding.Year year : plan.years()) {
      brought += plan.yearlyCents();
      spent += year.spentCents();
      bought += year.bought();
      assertThat(spent).as("seed %d", seed).isLessThanOrEqualTo(brought);
      assertThat(year.carriedCents()).as("seed %d", seed).isEqualTo(brought - spent);
      assertThat(year.overdue()).as("seed %d", seed).isEqualTo(dueBy[year.year()] - bought);
      assertThat(year.overdue()).as("seed %d", seed).isBetween(0, allowed);
    }
  }

  private static long[][] flat(int years, long cents) {
    long[][] price = new long[years + 1][1];
    for (long[] row : price) {
      row[0] = cents;
    }
    return price;
  }

  /** Tries every number of purchases in every year. */
  private record EveryPlan(int[] dueBy, int[] article, long[][] price, int allowed) {
    long leastYearly(int year, int bought, long spent, long yearly) {
      if (year == dueBy.length) {
        return yearly;
      }
      long best = Long.MAX_VALUE;
      long cost = spent;
      for (int upTo = bought; upTo <= dueBy[year]; upTo++) {
        if (upTo > bought) {
          cost += price[year][article[upTo - 1]];
        }
        if (dueBy[year] - upTo <= allowed) {
          long needed = Math.max(yearly, (cost + year - 1) / year);
          best = Math.min(best, leastYearly(year + 1, upTo, cost, needed));
        }
      }
      return best;
    }
  }
}
