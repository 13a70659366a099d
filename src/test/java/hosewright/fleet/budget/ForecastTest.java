package hosewright.fleet.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.fleet.record.HoseKind;
import hosewright.fleet.record.Sections;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class ForecastTest {
  private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

  @Test
  void every_section_falls_due_in_the_year_that_holds_the_day_it_reaches_the_limit() {
    for (long seed = 1; seed <= 40; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int limit = 5 + random.nextInt(10);
      HoseAges ages = new HoseAges(DAY);
      double[] expected = new double[13];
      for (int i = 0; i < 300; i++) {
        LocalDate made = DAY.minusDays(random.nextInt(9_000));
        ages.add(Sections.made("H-" + i, made), false);
        LocalDate reached = made.plusYears(limit);
        int year = 1;
        while (reached.isAfter(DAY.plusYears(year))) {
          year++;
        }
        for (int due = year; due <= 12; due += limit) {
          expected[due]++;
        }
      }
      Replacements demand = AgeLimitForecast.of(ages, limit, 12);
      for (int year = 1; year <= 12; year++) {
        assertThat(demand.in(year)).as("seed %d year %d", seed, year).isEqualTo(expected[year]);
      }
    }
  }

  @Test
  void the_expected_failures_are_what_many_simulated_fleets_average() {
    Weibull law = new Weibull(2.5, 11);
    HoseAges ages = new HoseAges(DAY);
    for (int i = 0; i < 3_000; i++) {
      ages.add(Sections.made("H-" + i, DAY.minusMonths(6L + 12L * (i % 15))), i % 100 == 0);
    }
    Replacements expected = SurvivalForecast.of(ages, law, 10);
    List<Map<HoseKind, int[]>> runs =
        new FailureSimulation(ages, new WeibullFit(law, 0, 0, 0, 0), 10)
            .runs(new SplittableRandom(11));
    for (int year = 1; year <= 10; year++) {
      int at = year;
      double average =
          runs.stream()
              .mapToInt(run -> run.values().stream().mapToInt(years -> years[at]).sum())
              .average()
              .orElseThrow();
      // 500 runs of some 250 failures each: the average wanders by less than one.
      assertThat(average).as("year %d", year).isCloseTo(expected.in(year), within(3.0));
    }
  }

  @Test
  void with_a_steady_hazard_a_fleet_fails_at_the_same_rate_for_ever() {
    HoseAges ages = new HoseAges(DAY);
    for (int i = 0; i < 100; i++) {
      ages.add(Sections.made("H-" + i, DAY.minusMonths(i)), false);
    }
    Replacements demand = SurvivalForecast.of(ages, new Weibull(1, 10), 8);
    double yearly = 100 * (1 - Math.exp(-0.1));
    for (int year = 1; year <= 8; year++) {
      assertThat(demand.in(year)).isCloseTo(yearly, within(1e-9));
    }
  }

  @Test
  void the_same_seed_simulates_the_same_fleets() {
    HoseAges ages = new HoseAges(DAY);
    for (int i = 0; i < 200; i++) {
      ages.add(Sections.made("H-" + i, DAY.minusMonths(i)), false);
    }
    WeibullFit fit = new WeibullFit(new Weibull(2, 9), 0, 0.1, 0.1, 0.3);
    assertThat(totals(ages, fit, 5))
        .isEqualTo(totals(ages, fit, 5))
        .isNotEqualTo(totals(ages, fit, 6));
  }

  private static List<Integer> totals(HoseAges ages, WeibullFit fit, long seed) {
    return new FailureSimulation(ages, fit, 3)
        .runs(new SplittableRandom(seed)).stream()
            .map(run -> run.values().stream().mapToInt(years -> years[2]).sum())
            .toList();
  }

  @Test
  void the_binomial_draw_has_the_mean_and_spread_of_its_law() {
    SplittableRandom random = new SplittableRandom(3);
    for (int[] of : new int[][] {{40, 10}, {40, 90}, {3_000, 2}, {20_000, 30}}) {
      double chance = of[1] / 100.0;
      double sum = 0;
      double squares = 0;
      int draws = 20_000;
      for (int i = 0; i < draws; i++) {
        double drawn = BinomialDraw.of(of[0], chance, random);
        sum += drawn;
        squares += drawn * drawn;
      }
      double mean = sum / draws;
      double variance = of[0] * chance * (1 - chance);
      assertThat(mean).isCloseTo(of[0] * chance, within(5 * Math.sqrt(variance / draws)));
      assertThat(squares / draws - mean * mean).isCloseTo(variance, within(0.05 * variance));
    }
  }
}
