package hosewright.line;

import hosewright.csv.ReferenceTable;
import hosewright.hydraulics.Hydrant;
import hosewright.thread.Families;
import hosewright.thread.Family;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;

/** The cautions that go with a plan, from {@code cautions.csv}. */
final class Caution {
  private static final List<CSVRecord> ROWS = ReferenceTable.rows("line/cautions.csv", row -> row);

  private Caution() {}

  /**
   * The sentences for a plan, in the order of the table, with its figures put in.
   *
   * @param checks every check that the plan will show
   */
  static List<String> forPlan(Job job, Evaluated plan, List<Check> checks) {
    Set<String> when = occasions(job, plan, checks);
    CautionFigures figures = new CautionFigures(job, plan, checks);
    List<String> sentences = new ArrayList<>();
    for (CSVRecord row : ROWS) {
      if (when.contains(row.get("when"))) {
        sentences.add(figures.putInto(row.get("text")));
      }
    }
    return sentences;
  }

  private static Set<String> occasions(Job job, Evaluated plan, List<Check> checks) {
    Set<String> when = new LinkedHashSet<>();
    when.add("always");
    add(when, "surge", warns(checks, CheckId.SUDDEN_CLOSURE));
    add(when, "reaction", plan.hydraulics().reactionLbf().isPresent());
    add(when, "hydrant", fromHydrant(job));
    add(when, "drinking", job.service().use() == Use.DRINKING);
    add(when, "backflow", hasCheck(checks, CheckId.BACKFLOW_PROTECTION));
    add(when, "air gap", hasCheck(checks, CheckId.AIR_GAP));
    add(when, "permanent", anySeal(plan, Verdict.Seal.THREAD));
    add(when, "measure", anyThreadToMeasure(plan));
    add(when, "other fluid", !job.service().isWater());
    add(when, "temperature", deratedAtUnknownTemperature(job, plan));
    add(when, "near limit", !NearLimits.of(job, checks).isEmpty());
    add(
        when,
        "made up",
        plan.assembly().topology().legs().stream().anyMatch(leg -> leg.hose().madeUp()));
    add(when, "local thread", warns(checks, CheckId.LOCAL_THREAD));
    add(when, "crossing", job.accessories().contains("ramp"));
    add(when, "design ratio", job.service().use() != Use.FIRE && CautionFigures.rated(job, plan));
    add(when, "suction", job.run().suction().isPresent());
    add(when, "drain", plan.hydraulics().calculated());
    return when;
  }

  private static void add(Set<String> when, String occasion, boolean holds) {
    if (holds) {
      when.add(occasion);
    }
  }

  private static boolean fromHydrant(Job job) {
    return job.source() == SourceKind.HYDRANT
        || job.supply().filter(Hydrant.class::isInstance).isPresent();
  }

  private static boolean hasCheck(List<Check> checks, CheckId id) {
    return checks.stream().anyMatch(check -> check.id() == id);
  }

  private static boolean warns(List<Check> checks, CheckId id) {
    return checks.stream()
        .anyMatch(check -> check.id() == id && check.outcome() != Check.Outcome.PASS);
  }

  private static boolean anySeal(Evaluated plan, Verdict.Seal seal) {
    return plan.assembly().joints().stream().anyMatch(joint -> joint.verdict().seal() == seal);
  }

  private static boolean anyThreadToMeasure(Evaluated plan) {
    return plan.assembly().hasPartToSource()
        || plan.assembly().joints().stream()
            .flatMap(joint -> Families.find(joint.upstream().family()).stream())
            .anyMatch(Family::regional);
  }

  private static boolean deratedAtUnknownTemperature(Job job, Evaluated plan) {
    return job.service().temperatureF().isEmpty()
        && plan.assembly().parts().stream().anyMatch(part -> !part.rating().derating().isEmpty());
  }
}
