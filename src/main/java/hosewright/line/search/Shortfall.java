package hosewright.line.search;

import hosewright.line.model.Check;
import java.util.Comparator;
import java.util.List;

/**
 * How far a line that fails is from one that passes: the nearest keeps the trade's rules, then
 * fails least in what is no matter of pressure, then lacks the least pressure.
 *
 * @param rules rules of the trade that it breaks
 * @param others other checks that fail and are not of a pressure
 * @param psi by how much it misses the limits of its pressures, together, psi
 */
record Shortfall(int rules, int others, double psi) implements Comparable<Shortfall> {
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
    double psi = 0;
    for (Check check : failed) {
      if (check.id().isOfTheTrade()) {
        rules++;
      } else if (check.unit().equals("psi")) {
        psi += Math.abs(check.limit() - check.value());
      } else {
        others++;
      }
    }
    // What no gauge shows is no difference: of such lines the cheaper is the nearer.
    return new Shortfall(rules, others, Math.round(psi));
  }

  @Override
  public int compareTo(Shortfall other) {
    return NEAREST_FIRST.compare(this, other);
  }
}
