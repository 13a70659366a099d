package hosewright.job;

import hosewright.hydraulics.Demand;
import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What must hold between the answers of a job that are each right by themselves. */
final class JobLimits {
  private final Job job;
  private final List<Problem> problems = new ArrayList<>();

  private JobLimits(Job job) {
    this.job = job;
  }

  /** Every answer that does not go with the others. */
  static List<Problem> problemsOf(Job job) {
    JobLimits limits = new JobLimits(job);
    limits.delivery();
    limits.rise();
    limits.stations();
    limits.tip();
    return limits.problems;
  }

  private void delivery() {
    job.date()
        .filter(date -> job.conditions().deliverBy().filter(date::isAfter).isPresent())
        .ifPresent(
            date -> add(JobField.DELIVER_BY, "no earlier than the day the prices are of, " + date));
  }

  private void rise() {
    double attackFt = job.attack().map(attack -> attack.neededFt(job.run().slack())).orElse(0.0);
    double wholeFt = job.run().neededFt() + attackFt;
    if (Math.abs(job.run().riseFt()) > wholeFt) {
      add(JobField.RISE, "no more than the hose is long, " + Math.round(wholeFt) + " ft");
    }
  }

  /** A device stands somewhere between the ends of the hose that starts at the source. */
  private void stations() {
    double neededFt = job.run().neededFt();
    if (job.stationsFt().stream().anyMatch(stationFt -> stationFt >= neededFt)) {
      add(
          JobField.ACCESSORIES,
          "a station over 0 and under the "
              + Math.round(neededFt)
              + (job.attack().isPresent() ? " ft of hose to the wye" : " ft of hose to lay"));
    }
  }

  /**
   * Flow, need and tip state one thing twice: a smooth bore passes one flow at one pressure, so a
   * tip that tells another story than the two is a slip in one of the three.
   */
  private void tip() {
    if (job.tipIn().isEmpty()) {
      return;
    }
    Demand.SmoothBore tip = new Demand.SmoothBore(job.tipIn().getAsDouble());
    double wantedGpm = job.flowEachGpm();
    double flowsGpm = tip.flowGpm(job.needPsi());
    if (Math.abs(flowsGpm - wantedGpm) <= Limit.TIP_FLOW_SHARE.value() * wantedGpm) {
      return;
    }
    String allowed =
        String.format(
            Locale.ROOT,
            "one that goes with flow and need: it flows %.0f gpm at the %.1f psi of need, and takes"
                + " %.1f psi for the %.0f gpm of flow (%s)",
            flowsGpm,
            job.needPsi(),
            tip.needPsi(wantedGpm),
            wantedGpm,
            Demand.SmoothBore.LAW);
    problems.add(
        new Problem(
            JobField.TIP.word(),
            job.answers().text(JobField.TIP),
            allowed,
            job.needPsi() > 0 ? passing(wantedGpm) : ""));
  }

  /** The bore that passes a flow at the pressure needed. */
  private String passing(double gpm) {
    double flowOfAnInch = new Demand.SmoothBore(1).flowGpm(job.needPsi());
    return String.format(Locale.ROOT, "%.2f in", Math.sqrt(gpm / flowOfAnInch));
  }

  private void add(JobField field, String allowed) {
    problems.add(new Problem(field.word(), job.answers().text(field), allowed, ""));
  }
}
