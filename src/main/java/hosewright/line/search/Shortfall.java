package hosewright.line.search;

import hosewright.line.model.Check;
import java.util.Comparator;
import java.util.List;

/**
 * How far a line that fails is from one that passes: the nearest keeps the trade's rules, then
 * fails least in what is no matter of pressure, then misses its pressures by least. What is lacking
 * in several places is lacking once: a source that is stronger by the most of it cures all.
 *
 * @param rules rules of the trade that it breaks
 * @param others other checks that fail and are not of a pressure
 * @param psi by how much it lacks pressure at the most, and has too much of it together, psi
 */
record Shortfall(int rules, int others, double psi) implements Comparable<Shortfall> {
  private static final double BEGUN_PSI = 0.46;

  private static final Comparator<Shortfall> NEAREST_FIRST =
      Comparator.comparingInt(Shortfall::rules)
          .thenComparingInt(Shortfall::others)
          .thenComparingDouble(Shortfall::psi);

  /**
   * @param failed the checks that fail and that other parts could mend
   */
  static Shortfall of(List<Check> failed) {
    int rules = 0;
    int others = 0;
    double lackedPsi = 0;
    double tooMuchPsi = 0;
    for (Check check : failed) {
      if (check.id().isOfTheTrade()) {
        rules++;
      } else if (!check.unit().equals("psi")) {
        others++;
      } else if (check.value() < check.limit()) {
        lackedPsi = Math.max(lackedPsi, check.limit() - check.value());
      } else {
        tooMuchPsi += check.value() - check.limit();
      }
    }
    return new Shortfall(rules, others, wholePsi(lackedPsi + tooMuchPsi));
  }

  /**
   * What no gauge shows is no difference: of such lines the cheaper is the nearer. Where a new psi
   * begins is a convention: near a half, far from the whole numbers at which ratings are missed.
   */
  static double wholePsi(double missedPsi) {
    return Math.floor(missedPsi + BEGUN_PSI);
  }

  @Override
  public int compareTo(Shortfall other) {
    return NEAREST_FIRST.compare(this, other);
  }
}
