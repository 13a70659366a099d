package hosewright.fleet.budget;

import java.util.random.RandomGenerator;

/**
 * Draws how many of a number of sections fail.
 *
 * <p>Exact, by the waiting time between failures, while the expected number is small; where it is
 * above 200 by the normal law that a binomial then is in all but name.
 */
final class BinomialDraw {
  private static final double MANY = 200;

  private BinomialDraw() {}

  static int of(int sections, double chance, RandomGenerator random) {
    if (sections == 0 || chance <= 0) {
      return 0;
    }
    if (chance >= 1) {
      return sections;
    }
    if (chance > 0.5) {
      return sections - of(sections, 1 - chance, random);
    }
    double mean = sections * chance;
    if (mean > MANY) {
      double drawn = mean + random.nextGaussian() * Math.sqrt(mean * (1 - chance));
      return (int) Math.max(0, Math.min(sections, Math.round(drawn)));
    }
    return waiting(sections, Math.log1p(-chance), random);
  }

  private static int waiting(int sections, double logOfSound, RandomGenerator random) {
    int failures = 0;
    double place = 0;
    while (true) {
      place += Math.floor(Math.log1p(-random.nextDouble()) / logOfSound) + 1;
      if (place > sections) {
        return failures;
      }
      failures++;
    }
  }
}
