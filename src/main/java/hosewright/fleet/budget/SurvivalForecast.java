package hosewright.fleet.budget;

/**
 * Expected replacements when every section is replaced once it fails.
 *
 * <p>A section known to be sound at its age fails in each year with the chance the law gives it
 * then. A replacement is new at the end of the year it is bought in, and may fail in its turn.
 */
final class SurvivalForecast {
  private final Weibull law;
  private final int years;

  /** Replacements expected in each further year of one new section, the first at 1. */
  private final double[] ofNew;

  private SurvivalForecast(Weibull law, int years) {
    this.law = law;
    this.years = years;
    this.ofNew = new double[years + 1];
    fill(ofNew, firstFailures(0));
  }

  static Replacements of(HoseAges ages, Weibull law, int years) {
    SurvivalForecast forecast = new SurvivalForecast(law, years);
    double[][] ofAge = new double[HoseAges.OLDEST_MONTHS + 1][];
    Replacements demand = new Replacements(years);
    ages.counts()
        .forEach(
            (place, months) -> {
              for (int age = 0; age < months.length; age++) {
                if (months[age] > 0) {
                  if (ofAge[age] == null) {
                    ofAge[age] = forecast.ofAge(HoseAges.middleYears(age));
                  }
                  forecast.add(demand, place, months[age], ofAge[age]);
                }
              }
            });
    ages.mustGo()
        .forEach(
            (place, count) -> {
              demand.add(place, 1, count);
              for (int year = 2; year <= years; year++) {
                demand.add(place, year, count * forecast.ofNew[year - 1]);
              }
            });
    return demand;
  }

  /** Replacements expected in each year, the first at 1, of one section of that age in years. */
  double[] ofAge(double age) {
    double[] expected = new double[years + 1];
    fill(expected, firstFailures(age));
    return expected;
  }

  private void add(Replacements demand, HoseAges.Place place, int count, double[] each) {
    for (int year = 1; year <= years; year++) {
      demand.add(place, year, count * each[year]);
    }
  }

  /** The chance that a section sound at an age first fails in each year. */
  private double[] firstFailures(double age) {
    double[] chance = new double[years + 1];
    double alive = 1;
    for (int year = 1; year <= years; year++) {
      double fails = law.failureBetween(age + year - 1, age + year);
      chance[year] = alive * fails;
      alive *= 1 - fails;
    }
    return chance;
  }

  private void fill(double[] expected, double[] first) {
    for (int year = 1; year <= years; year++) {
      expected[year] = first[year];
      for (int earlier = 1; earlier < year; earlier++) {
        expected[year] += first[earlier] * ofNew[year - earlier];
      }
    }
  }
}
