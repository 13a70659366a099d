package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.job.Limit;
import hosewright.job.question.ApplianceKind;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Joining;
import hosewright.line.assembly.MakeUpOrder;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Role;
import java.util.List;
import java.util.Optional;

/** Checks on how the parts join. */
final class JointChecks {
  private JointChecks() {}

  /** How often somebody couples, in all lines. */
  private static int madeUp(List<Assembly.MadeJoint> joints) {
    return joints.stream().mapToInt(joint -> joint.count() * joint.lines()).sum();
  }

  static Check everyJointMates(Assembly line) {
    List<Assembly.MadeJoint> bad =
        line.joints().stream()
            .filter(joint -> !Joining.allowed(joint.upstream(), joint.downstream()))
            .toList();
    int joints = madeUp(line.joints());
    Optional<Assembly.MadeJoint> byName =
        line.joints().stream()
            .filter(joint -> Joining.byName(joint.upstream(), joint.downstream()))
            .findFirst();
    if (bad.isEmpty()) {
      return check(
          CheckId.JOINTS_MATE,
          byName.isPresent() ? Outcome.WARN : Outcome.PASS,
          joints,
          joints,
          "joints",
          byName.map(joint -> joint.verdict().reason()).orElse("every joint mates and seals"),
          "the mating law's own sources stand beside each joint");
    }
    Assembly.MadeJoint first = bad.get(0);
    return check(
        CheckId.JOINTS_MATE,
        Outcome.FAIL,
        joints - madeUp(bad),
        joints,
        "joints",
        text(
            "%s to %s does not join: %s",
            first.upstream(), first.downstream(), first.verdict().reason()),
        first.verdict().source());
  }

  static Check canBeMadeUp(Assembly line, ApplianceKind appliance) {
    boolean possible = MakeUpOrder.possible(line, appliance);
    boolean turning = !appliance.turnsFreely() && !MakeUpOrder.turningHose(line).isEmpty();
    String note =
        !possible
            ? "both ends are fixed and no part between them swivels: nothing can be turned"
            : turning
                ? "turn the last section onto the appliance before joining the rest"
                : "every joint can be made by a swivel or by turning a part still free";
    return check(
        CheckId.MAKE_UP_ORDER,
        possible ? (turning ? Outcome.WARN : Outcome.PASS) : Outcome.FAIL,
        possible ? 1 : 0,
        1,
        "",
        note,
        Checks.PRACTICE);
  }

  /** Adapters that follow one another without hose between them. */
  static Check fewAdapters(Assembly line) {
    int longest = 0;
    int chain = 0;
    for (Placed part : line.parts()) {
      chain = part.role() == Role.ADAPTER ? chain + 1 : 0;
      longest = Math.max(longest, chain);
    }
    boolean few = longest <= Limit.ADAPTERS.value();
    return check(
        Limit.ADAPTERS,
        CheckId.ADAPTERS_IN_A_ROW,
        few ? Outcome.PASS : Outcome.WARN,
        longest,
        few ? "short bridges" : Limit.ADAPTERS.note());
  }
}
