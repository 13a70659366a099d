package hosewright.line;

import hosewright.line.LinePlan.Check;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.Money;

/** A whole plan with its price, its hydraulics and its checks. */
record Evaluated(
    Assembly assembly,
    List<GasketCount> gaskets,
    List<Basket.Purchase> purchases,
    List<String> unpriced,
    Money total,
    LineHydraulicsResult hydraulics,
    List<Check> checks) {

  /**
   * Cheapest first; among equals fewer couplings, then fewer adapters, then the lower loss; at last
   * by name, so that the same plan wins however it was searched for.
   */
  private static final Comparator<Evaluated> BY_MERIT =
      Comparator.comparing(Evaluated::total)
          .thenComparingInt(plan -> plan.assembly().lays().stream().mapToInt(Lay::sections).sum())
          .thenComparingInt(plan -> plan.assembly().adapters())
          .thenComparingDouble(plan -> plan.hydraulics().requiredSourcePsi())
          .thenComparing(plan -> plan.assembly().spelledOut());

  /** Checks whose outcome lies in the job alone: no other choice of parts would change it. */
  private static final Set<String> OF_THE_JOB =
      Set.of("backflow protection", "hydrant residual", ConditionChecks.BUDGET);

  boolean passes() {
    return failures() == 0;
  }

  /** Whether nothing fails that another choice of parts could mend. */
  boolean bestThatCanBe() {
    return mendableFailures().isEmpty();
  }

  long failures() {
    return checks.stream().filter(check -> check.outcome() == Check.Outcome.FAIL).count();
  }

  boolean overBudget() {
    return checks.stream()
        .anyMatch(
            check ->
                check.name().equals(ConditionChecks.BUDGET)
                    && check.outcome() == Check.Outcome.FAIL);
  }

  double cost() {
    return total.getAmount().doubleValue();
  }

  /** Whether the same items are bought, in the same numbers. */
  boolean buysTheSame(Evaluated other) {
    return total.equals(other.total) && bought().equals(other.bought());
  }

  /** How many of each item are bought, by item number. */
  Map<String, Integer> bought() {
    Map<String, Integer> bought = new TreeMap<>();
    purchases.forEach(purchase -> bought.put(purchase.item().number(), purchase.bought()));
    return bought;
  }

  boolean beats(Evaluated other) {
    return BY_MERIT.compare(this, other) < 0;
  }

  /** What fails and another choice of parts could mend, named, in the order of the checks. */
  List<String> mendableFailures() {
    return checks.stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .map(Check::name)
        .filter(name -> !OF_THE_JOB.contains(name))
        .toList();
  }

  boolean failsLessThan(Evaluated other) {
    return Comparator.comparingLong(Evaluated::failures)
            .thenComparing(BY_MERIT)
            .compare(this, other)
        < 0;
  }
}
