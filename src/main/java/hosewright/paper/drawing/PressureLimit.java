package hosewright.paper.drawing;

import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.LinePlan;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** The pressure no station may pass. */
public final class PressureLimit {
  private static final Set<CheckId> OF_PARTS =
      Set.of(CheckId.HOSE_WORKING_PRESSURE, CheckId.FITTING_WORKING_PRESSURE);

  private PressureLimit() {}

  /**
   * The lowest limit of the plan's working-pressure checks, psi; empty where it has none, and where
   * legs part or meet: there a check tells of the part nearest its limit, which need not be the
   * weakest on a way.
   */
  public static OptionalDouble lowestPsi(LinePlan plan) {
    return plan.asked().ofLegs().isEmpty() ? lowestPsi(plan.checks()) : OptionalDouble.empty();
  }

  /** The lowest limit of those of some checks that rate hose and fittings, psi. */
  static OptionalDouble lowestPsi(List<Check> checks) {
    return checks.stream()
        .filter(check -> OF_PARTS.contains(check.id()))
        .mapToDouble(Check::limit)
        .min();
  }
}
