package hosewright.desk;

import hosewright.intake.JobFile;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.layout.LayoutForm;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job with the words it is asked in, which a quote keeps.
 *
 * @param job of one line, else what holds for all legs
 * @param layout the legs, where they are listed
 * @param text as a job file has it
 */
public record WrittenJob(Job job, Optional<LayoutJob> layout, String text) {

  /**
   * The job that answers ask for.
   *
   * @throws hosewright.problem.BadInputException naming every answer that cannot be used
   */
  public static WrittenJob of(Map<JobField, String> answers) {
    return of(new LayoutText(answers, List.of()));
  }

  /**
   * The job that answers and legs ask for.
   *
   * @throws hosewright.problem.BadInputException naming every answer that cannot be used, and the
   *     leg it stands in
   */
  public static WrittenJob of(LayoutText asked) {
    String text = JobFile.write(asked);
    if (asked.legs().isEmpty()) {
      return new WrittenJob(JobForm.read(asked.answers()), Optional.empty(), text);
    }
    LayoutJob layout = LayoutForm.read(asked);
    return new WrittenJob(layout.whole(), Optional.of(layout), text);
  }
}
