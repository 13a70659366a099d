package hosewright.desk.interview;

import hosewright.csv.PlainNumber;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.problem.Problem;
import hosewright.problem.RefusalException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The plan as far as the answers go, in a line or two. */
final class Sketch {
  private final Function<Job, LinePlan> planner;

  /** Planning may take long, and the same answers are looked at more than once. */
  private Map<JobField, String> lastAnswers = Map.of();

  private Standing lastStanding = new Standing("", List.of());

  Sketch(Function<Job, LinePlan> planner) {
    this.planner = planner;
  }

  /**
   * What stands so far.
   *
   * @param words in a line or two; empty before there is anything to say
   * @param problems why these answers cannot be planned together
   */
  record Standing(String words, List<Problem> problems) {}

  /**
   * What these answers come to.
   *
   * @param whole whether all is there that a plan takes
   */
  Standing of(Map<JobField, String> answers, boolean whole) {
    if (whole) {
      if (!answers.equals(lastAnswers)) {
        lastStanding = planned(answers);
        lastAnswers = Map.copyOf(answers);
      }
      return lastStanding;
    }
    boolean ends = answers.containsKey(JobField.FROM) && answers.containsKey(JobField.TO);
    return new Standing(ends ? way(answers) : "", List.of());
  }

  private Standing planned(Map<JobField, String> answers) {
    try {
      return new Standing(planned(planner.apply(JobForm.read(answers))), List.of());
    } catch (RefusalException e) {
      return new Standing("", e.problems());
    }
  }

  private static String way(Map<JobField, String> answers) {
    return "So far: "
        + answers.get(JobField.FROM)
        + " >> "
        + (answers.containsKey(JobField.LENGTH) ? answers.get(JobField.LENGTH) + " >> " : "")
        + answers.get(JobField.TO);
  }

  private static String planned(LinePlan plan) {
    String hose =
        plan.layout().firstHoseLeg().stream()
            .flatMap(leg -> leg.sectionCounts().stream())
            .map(section -> section.count() + " x " + PlainNumber.of(section.lengthFt()) + " ft")
            .collect(Collectors.joining(" and "));
    String goods =
        "%s of %s in hose%s%s, %s"
            .formatted(
                hose,
                PlainNumber.of(plan.hose().map(LinePlan.HoseChoice::sizeIn).orElse(0.0)),
                branches(plan),
                adapters(plan),
                plan.bill().headline());
    if (!plan.feasible()) {
      return "So far: NO SAFE PLAN, limited by "
          + plan.limitedBy().orElse("a check")
          + (plan.hose().isEmpty() ? "." : ". The nearest is " + goods + ".");
    }
    return plan.hydraulics().calculated()
        ? String.format(
            Locale.ROOT,
            "So far: %s; it takes %.1f psi at the source.",
            goods,
            plan.hydraulics().requiredSourcePsi())
        : "So far: " + goods + ".";
  }

  private static String branches(LinePlan plan) {
    return plan.layout()
        .branchLeg()
        .map(
            leg ->
                " and "
                    + leg.lines()
                    + " attack lines of "
                    + PlainNumber.of(leg.hose().map(Leg.Hose::sizeIn).orElse(0.0))
                    + " in")
        .orElse("");
  }

  private static String adapters(LinePlan plan) {
    int count = plan.layout().fittings();
    return switch (count) {
      case 0 -> "";
      case 1 -> " and an adapter";
      default -> " and " + count + " adapters";
    };
  }
}
