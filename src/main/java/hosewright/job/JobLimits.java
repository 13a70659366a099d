package hosewright.job;

import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;

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

  private void add(JobField field, String allowed) {
    problems.add(new Problem(field.word(), job.answers().text(field), allowed, ""));
  }
}
