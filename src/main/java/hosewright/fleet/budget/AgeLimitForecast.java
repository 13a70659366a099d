package hosewright.fleet.budget;

/**
 * Replacements when every section is replaced in the year it reaches an age.
 *
 * <p>Year 1 is the twelve months from the day ages are counted on, and takes all that is past the
 * limit already. A replacement is new in the month it is bought and reaches the limit in its turn.
 */
final class AgeLimitForecast {
  private AgeLimitForecast() {}

  static Replacements of(HoseAges ages, int limitYears, int years) {
    Replacements demand = new Replacements(years);
    ages.mustGo().forEach((place, count) -> repeat(demand, place, 1, count, limitYears));
    ages.counts()
        .forEach(
            (place, months) -> {
              for (int age = 0; age < months.length; age++) {
                if (months[age] > 0) {
                  repeat(demand, place, yearReached(age, limitYears), months[age], limitYears);
                }
              }
            });
    return demand;
  }

  /** The budget year in which hose of so many full months reaches the limit. */
  static int yearReached(int ageMonths, int limitYears) {
    int monthsLeft = limitYears * 12 - ageMonths;
    return Math.max(1, (monthsLeft + 11) / 12);
  }

  private static void repeat(
      Replacements demand, HoseAges.Place place, int first, int count, int limitYears) {
    for (int year = first; year <= demand.years(); year += limitYears) {
      demand.add(place, year, count);
    }
  }
}
