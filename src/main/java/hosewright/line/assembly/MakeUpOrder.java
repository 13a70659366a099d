package hosewright.line.assembly;

import hosewright.job.Ends;
import hosewright.job.question.ApplianceKind;
import hosewright.line.model.Role;
import hosewright.thread.End;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether hands can make every joint of a line.
 *
 * <p>A threaded joint is made by a swivel, or by turning one of its two parts while that part is
 * still free. Parts joined without a swivel turn as one, so such a run can be made up from its
 * fixed end outwards, unless it is fixed at both ends.
 */
public final class MakeUpOrder {
  private MakeUpOrder() {}

  /**
   * True when some order makes every joint: common practice, no source.
   *
   * <p>Lines side by side close a ring between wye and siamese, where nothing is free to turn any
   * more when the last of them is made: each needs a swivel of its own. So do attack lines that end
   * at appliances which do not turn.
   */
  public static boolean possible(Assembly line, ApplianceKind appliance) {
    List<Assembly.MadeJoint> joints = line.joints();
    if (line.topology().lines() > 1
        || line.topology().legs().size() > 1 && !appliance.turnsFreely()) {
      return joints.stream().anyMatch(joint -> joint.lines() > 1 && !needsTurning(joint));
    }
    return appliance.turnsFreely() || joints.stream().anyMatch(joint -> !needsTurning(joint));
  }

  /**
   * Whether one line between two ends can be made up whatever bridges its gaps: it ends where
   * things turn freely, or some end of its own needs no turning.
   */
  public static boolean everPossible(Topology topology, Ends ends) {
    return ends.appliance().turnsFreely()
        || turnsItself(ends.from())
        || turnsItself(ends.to())
        || topology.legs().stream()
            .anyMatch(leg -> turnsItself(leg.inlet()) || turnsItself(leg.outlet()));
  }

  /** Whether a part of a bridge makes a joint that needs no turning. */
  public static boolean eases(Placed part) {
    return Stream.of(part.upstream(), part.downstream())
        .flatMap(Optional::stream)
        .anyMatch(MakeUpOrder::turnsItself);
  }

  private static boolean turnsItself(End end) {
    return end.swivel() || !end.threaded();
  }

  /** Sections that must be turned whole, because no swivel helps at one of their joints. */
  public static List<Assembly.MadeJoint> turningHose(Assembly line) {
    return line.joints().stream()
        .filter(MakeUpOrder::needsTurning)
        .filter(
            joint ->
                joint.upstreamPart().role() == Role.HOSE
                    && joint.downstreamPart().role() == Role.APPLIANCE)
        .toList();
  }

  private static boolean needsTurning(Assembly.MadeJoint joint) {
    boolean threaded = joint.upstream().threaded() && joint.downstream().threaded();
    return threaded && !joint.upstream().swivel() && !joint.downstream().swivel();
  }
}
