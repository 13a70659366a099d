package hosewright.fleet.budget;

import hosewright.fleet.budget.HoseAges.Group;
import hosewright.fleet.record.HoseKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/**
 * What may happen instead of what is expected: the fleet lived through many times over.
 *
 * <p>Each run draws a law from the fit's own uncertainty, then lets every section live, fail and be
 * replaced year by year. Sections of one kind within a year of age are taken together at their mean
 * age. The same seed gives the same runs.
 */
final class FailureSimulation {
  static final int RUNS = 500;

  private final Map<HoseKind, List<Group>> groups;
  private final Map<HoseKind, Integer> mustGo = new LinkedHashMap<>();
  private final WeibullFit fit;
  private final int years;

  FailureSimulation(HoseAges ages, WeibullFit fit, int years) {
    this.groups = ages.byYears();
    ages.mustGo().forEach((place, count) -> mustGo.merge(place.kind(), count, Integer::sum));
    this.fit = fit;
    this.years = years;
  }

  /** Failures of each kind in each year, 1 for the first, of every run. */
  List<Map<HoseKind, int[]>> runs(RandomGenerator random) {
    List<Map<HoseKind, int[]>> runs = new ArrayList<>();
    for (int run = 0; run < RUNS; run++) {
      runs.add(run(fit.drawn(random.nextGaussian(), random.nextGaussian()), random));
    }
    return runs;
  }

  private Map<HoseKind, int[]> run(Weibull law, RandomGenerator random) {
    Map<HoseKind, int[]> failures = new LinkedHashMap<>();
    groups.forEach(
        (kind, owned) ->
            failures.put(kind, live(owned, mustGo.getOrDefault(kind, 0), law, random)));
    mustGo.forEach(
        (kind, count) ->
            failures.computeIfAbsent(kind, only -> live(List.of(), count, law, random)));
    return failures;
  }

  private int[] live(List<Group> owned, int mustGo, Weibull law, RandomGenerator random) {
    int[] failures = new int[years + 1];
    failures[1] = mustGo;
    for (Group group : owned) {
      fail(failures, 1, group.meanAge(), group.sections(), law, random);
    }
    // What is bought at the end of a year fails from the next year on, and is replaced in turn.
    for (int year = 1; year < years; year++) {
      fail(failures, year + 1, 0, failures[year], law, random);
    }
    return failures;
  }

  private void fail(
      int[] failures, int from, double age, int sections, Weibull law, RandomGenerator random) {
    int alive = sections;
    for (int year = from; year <= years && alive > 0; year++) {
      double then = age + year - from;
      int failed = BinomialDraw.of(alive, law.failureBetween(then, then + 1), random);
      failures[year] += failed;
      alive -= failed;
    }
  }
}
