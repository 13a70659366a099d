package hosewright.line;

import hosewright.thread.Verdict;
import java.util.List;

/**
 * Whether hands can make every joint of a line.
 *
 * <p>A threaded joint is made by a swivel, or by turning one of its two parts while that part is
 * still free. Parts joined without a swivel turn as one, so such a run can be made up from its
 * fixed end outwards, unless it is fixed at both ends.
 */
final class MakeUpOrder {
  private MakeUpOrder() {}

  /** True when some order makes every joint: common practice, no source. */
  static boolean possible(Assembly line, ApplianceKind appliance) {
    return appliance.turnsFreely()
        || line.joints().stream().anyMatch(joint -> !needsTurning(joint));
  }

  /** Sections that must be turned whole, because no swivel helps at one of their joints. */
  static List<Assembly.MadeJoint> turningHose(Assembly line) {
    return line.joints().stream()
        .filter(MakeUpOrder::needsTurning)
        .filter(
            joint ->
                joint.upstreamPart().role() == Placed.Role.HOSE
                    && joint.downstreamPart().role() == Placed.Role.APPLIANCE)
        .toList();
  }

  private static boolean needsTurning(Assembly.MadeJoint joint) {
    boolean threaded =
        joint.verdict().seal() == Verdict.Seal.THREAD
            || joint.verdict().seal() == Verdict.Seal.GASKET
                && joint.upstream().threaded()
                && joint.downstream().threaded();
    return threaded && !joint.upstream().swivel() && !joint.downstream().swivel();
  }
}
