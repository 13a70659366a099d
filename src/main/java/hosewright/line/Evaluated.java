package hosewright.line;

import hosewright.line.LinePlan.Check;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
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

  /** Cheapest first; among equals fewer couplings, then fewer adapters, then the lower loss. */
  private static final Comparator<Evaluated> BY_MERIT =
      Comparator.comparing(Evaluated::total)
          .thenComparingInt(plan -> plan.assembly().lay().sections())
          .thenComparingInt(plan -> plan.assembly().adapters())
          .thenComparingDouble(plan -> plan.hydraulics().requiredSourcePsi());

  /** Checks whose outcome lies in the job alone: no other choice of parts would change it. */
  private static final Set<String> OF_THE_JOB = Set.of("backflow protection", "hydrant residual");

  boolean passes() {
    return failures() == 0;
  }

  /** Whether nothing fails that another choice of parts could mend. */
  boolean bestThatCanBe() {
    return checks.stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .allMatch(check -> OF_THE_JOB.contains(check.name()));
  }

  long failures() {
    return checks.stream().filter(check -> check.outcome() == Check.Outcome.FAIL).count();
  }

  double cost() {
    return total.getAmount().doubleValue();
  }

  boolean beats(Evaluated other) {
    return BY_MERIT.compare(this, other) < 0;
  }

  boolean failsLessThan(Evaluated other) {
    return Comparator.comparingLong(Evaluated::failures)
            .thenComparing(BY_MERIT)
            .compare(this, other)
        < 0;
  }
}
