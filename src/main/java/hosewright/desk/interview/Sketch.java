package hosewright.desk.interview;

import hosewright.csv.PlainNumber;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The plan as far as the answers go, in a line or two. */
final class Sketch {
  private final Function<Job, LinePlan> planner;

  Sketch(Function<Job, LinePlan> planner) {
    this.planner = planner;
  }

  /** What stands so far; empty before there is anything to say. */
  String of(Map<JobField, String> answers) {
    boolean whole =
        JobField.values().stream()
            .noneMatch(field -> field.required(answers) && !answers.containsKey(field));
    if (whole) {
      try {
        return planned(planner.apply(JobForm.read(answers)));
      } catch (BadInputException e) {
        return "So far: "
            + e.problems().stream().map(Problem::sentence).collect(Collectors.joining(" "));
      }
    }
    if (!answers.containsKey(JobField.TO)) {
      return "";
    }
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
