package hosewright.line.check;

import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.line.assembly.Assembly;
import hosewright.line.goods.Basket;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Figure;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import java.util.ArrayList;
import java.util.List;

/** Every check on a plan, in the order a reader wants them. */
public final class Checks {
  private Checks() {}

  public static List<Check> of(
      Job job, Assembly line, Hydraulics hydraulics, List<Basket.Purchase> purchases) {
    List<Check> checks = new ArrayList<>();
    checks.add(JointChecks.everyJointMates(line));
    checks.add(JointChecks.canBeMadeUp(line, job.appliance()));
    checks.add(JointChecks.fewAdapters(line));
    checks.addAll(PracticeChecks.of(job, line));
    if (hydraulics.calculated()) {
      checks.addAll(PressureChecks.of(job, line, hydraulics));
    } else {
      checks.add(
          check(
              CheckId.HYDRAULICS,
              Outcome.WARN,
              0,
              0,
              "",
              hydraulics.frictionBasis(),
              Checks.PRACTICE));
    }
    checks.addAll(ServiceChecks.of(job, line, purchases));
    checks.addAll(ConditionChecks.of(job, line, hydraulics, purchases));
    return List.copyOf(checks);
  }

  static final String PRACTICE = "common practice, no source";

  static Check check(
      CheckId id,
      Outcome outcome,
      double value,
      double limit,
      String unit,
      String note,
      String source) {
    return new Check(id, outcome, new Figure(value, limit, unit), note, source);
  }

  static Check check(Limit limit, CheckId id, Outcome outcome, double value, String note) {
    return check(id, outcome, value, limit.value(), limit.unit(), note, limit.source());
  }

  public static String text(String format, Object... values) {
    return Sentence.of(format, values);
  }
}
