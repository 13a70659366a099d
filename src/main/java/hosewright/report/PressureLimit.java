package hosewright.report;

import hosewright.line.LinePlan;
import hosewright.line.LinePlan.Check;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The pressure no station may pass. */
final class PressureLimit {
  private PressureLimit() {}

  /** The lowest limit of the plan's working-pressure checks, psi; empty where it has none. */
  static OptionalDouble lowestPsi(LinePlan plan) {
    return lowestPsi(plan.checks());
  }

  /** The same of these checks. */
  static OptionalDouble lowestPsi(List<Check> checks) {
    return checks.stream()
        .filter(check -> check.unit().equals("psi"))
        .filter(check -> check.name().toLowerCase(Locale.ROOT).contains("working pressure"))
        .mapToDouble(Check::limit)
        .min();
  }
}
