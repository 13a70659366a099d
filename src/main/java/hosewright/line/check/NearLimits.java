package hosewright.line.check;

import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import java.util.List;
import java.util.Set;

/** Which limits a plan works close to. */
public final class NearLimits {
  private static final Set<String> UNITS = Set.of("psi", "ft/s", "lbf", "ft");

  private NearLimits() {}

  /**
   * Each limit that the plan keeps within a tenth of, as "hose working pressure (262.0 of 272.0
   * psi)", and each that it passes.
   */
  public static List<String> of(Job job, List<Check> checks) {
    return checks.stream()
        .filter(check -> isNear(job, check))
        .map(
            check ->
                Checks.text(
                    "%s (%.1f against %.1f %s)",
                    check.name(), check.value(), check.limit(), check.unit()))
        .toList();
  }

  private static boolean isNear(Job job, Check check) {
    // What others teach is no limit of the plan. A surge has a caution of its own; a source that is
    // not stated is taken to
    // hold just what is needed, which says nothing about how near it is.
    if (!UNITS.contains(check.unit())
        || check.id() == CheckId.SUDDEN_CLOSURE
        || check.id() == CheckId.FRICTION_COEFFICIENTS
        || check.id() == CheckId.APPLIANCE_LOSS
        || check.id() == CheckId.HYDRANT_LOSS
        || check.id() == CheckId.DELIVERED_PRESSURE && job.supply().isEmpty()) {
      return false;
    }
    double away = Math.abs(check.value() - check.limit());
    return check.limit() == 0
        ? away <= Limit.NEAR_ZERO_PSI.value()
        : away <= Limit.NEAR_SHARE.value() * check.limit();
  }
}
